import type { Spec } from '../core/measured'
import { size, sizeWithUnit } from './numbers'
import { paperWords } from './paper-words'

/** The limits of size as they were entered, in a line; those of shape and clearance stand beside their figures. */
export function limitsLine({ newMinMm, newMaxMm, grades = [], wearLimitMm }: Spec): string {
  const said = paperWords.sizes
  const parts = [
    ...band(newMinMm, newMaxMm),
    ...grades.map(({ name, minMm, maxMm }) => said.grade(name, size(minMm), sizeWithUnit(maxMm))),
    ...(wearLimitMm === undefined ? [] : [said.wear(sizeWithUnit(wearLimitMm))]),
  ]
  if (parts.length === 0) return said.none
  const [first = '', ...rest] = parts
  return `${[first.charAt(0).toUpperCase() + first.slice(1), ...rest].join('; ')}. ${paperWords.source}`
}

function band(minMm: number | undefined, maxMm: number | undefined): string[] {
  const said = paperWords.sizes
  if (minMm !== undefined && maxMm !== undefined) return [said.band(size(minMm), sizeWithUnit(maxMm))]
  if (minMm !== undefined) return [said.from(sizeWithUnit(minMm))]
  return maxMm === undefined ? [] : [said.to(sizeWithUnit(maxMm))]
}
