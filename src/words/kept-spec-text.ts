import type { Spec } from '../core/measured'
import { size, sizeWithUnit } from './numbers'
import { words } from './words'

/** The limits of a spec in one line, to tell it from others; rules and shares are left to the job. */
export function keptSpecText(spec: Spec, bores: number): string {
  const said = words.keptSpecs
  const { newMinMm, newMaxMm, grades = [], wearLimitMm, ovalityLimitMm, taperLimitMm } = spec
  const parts = [
    bandText(newMinMm, newMaxMm),
    grades.length > 0 ? said.grades(grades.map(({ name }) => name)) : undefined,
    wearLimitMm === undefined ? undefined : said.wear(sizeWithUnit(wearLimitMm)),
    ovalityLimitMm === undefined ? undefined : said.ovality(sizeWithUnit(ovalityLimitMm)),
    taperLimitMm === undefined ? undefined : said.taper(sizeWithUnit(taperLimitMm)),
    said.bores(bores),
  ]
  return parts.filter((part) => part !== undefined).join(', ')
}

function bandText(minMm: number | undefined, maxMm: number | undefined): string | undefined {
  const said = words.keptSpecs
  if (minMm !== undefined && maxMm !== undefined) return said.band(size(minMm), sizeWithUnit(maxMm))
  if (minMm !== undefined) return said.bandFrom(sizeWithUnit(minMm))
  return maxMm === undefined ? undefined : said.bandTo(sizeWithUnit(maxMm))
}
