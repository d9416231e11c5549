import type { LimitPair } from '../findings'
import type { Bore, Spec } from '../measured'
import { specOfBore } from './spec-of-bore'

/**
 * The pair of limits a bore is judged by and drawn between: the smallest new size and the wear limit
 * where there is a wear limit, else its grade, else the new band (the union of the grades where the
 * manual gives only those), all as the bore's oversize moves them. Undefined where the manual gives none.
 */
export function limitPair(ofStandardSize: Spec, bore: Bore): LimitPair | undefined {
  const spec = specOfBore(ofStandardSize, bore)
  const band = newBand(spec)
  const grade = spec.grades?.find((g) => g.name === bore.grade)
  if (spec.wearLimitMm !== undefined) {
    const smallest = grade?.minMm ?? band.minMm
    const newMax = grade?.maxMm ?? band.maxMm
    return {
      kind: 'wear',
      ...(smallest === undefined ? {} : { minMm: smallest }),
      maxMm: spec.wearLimitMm,
      ...(newMax === undefined ? {} : { newMaxMm: newMax }),
    }
  }
  if (grade) return { kind: 'grade', gradeName: grade.name, minMm: grade.minMm, maxMm: grade.maxMm }
  if (band.minMm === undefined && band.maxMm === undefined) return undefined
  return { kind: 'band', ...band }
}

/** The new band of a spec: as given, else from the smallest to the largest of its grades, mm. */
export function newBand(spec: Spec): { minMm?: number; maxMm?: number } {
  const minima = (spec.grades ?? []).map((g) => g.minMm)
  const maxima = (spec.grades ?? []).map((g) => g.maxMm)
  const min = spec.newMinMm ?? (minima.length > 0 ? Math.min(...minima) : undefined)
  const max = spec.newMaxMm ?? (maxima.length > 0 ? Math.max(...maxima) : undefined)
  return { ...(min === undefined ? {} : { minMm: min }), ...(max === undefined ? {} : { maxMm: max }) }
}
