import type { Flaw, Problem } from '../core/problem'
import { inShownUnit, lengthUnit, mmPerInch } from './length-unit'
import { words } from './words'

/** What is wrong and how to mend it, in a sentence or two, without the place. */
export function problemText(problem: Flaw): string {
  // Each wording takes the flaw of its own code; the compiler cannot follow that through the table.
  const wording = words.problems[problem.code] as (flaw: Flaw) => string
  return inShownUnit(wording(lengthUnit() === 'inch' ? flawInInches(problem) : problem))
}

/** Lengths of a flaw as they are typed; what a file holds is read before its job is in hand, in mm. */
function flawInInches(flaw: Flaw): Flaw {
  const inches = (mm: number) => Number((mm / mmPerInch).toFixed(4))
  switch (flaw.code) {
    case 'out-of-range': {
      if (flaw.unit !== 'mm' && flaw.unit !== 'µm') return flaw
      const per = flaw.unit === 'mm' ? 1 : 1000
      const shown = (value: number) => Number((value / per / mmPerInch).toFixed(6))
      return { ...flaw, found: shown(flaw.found), least: shown(flaw.least), most: shown(flaw.most) }
    }
    case 'duplicate-value':
      return flaw.unit === 'mm' ? { ...flaw, value: inches(flaw.value) } : flaw
    case 'low-above-high':
      return /Mm$/.test(flaw.lowField) ? { ...flaw, low: inches(flaw.low), high: inches(flaw.high) } : flaw
    case 'deeper-than-bore':
      return { ...flaw, depthMm: inches(flaw.depthMm), lengthMm: inches(flaw.lengthMm) }
    case 'duplicate-station':
    case 'unreachable-station':
      return { ...flaw, depthMm: inches(flaw.depthMm) }
    case 'off-level':
      return { ...flaw, depthMm: inches(flaw.depthMm), levelsMm: flaw.levelsMm.map(inches) }
    default:
      return flaw
  }
}

/** Where a problem is: the path in the job, and the line of the file where that is known. */
export function problemPlace({ path, line, column }: Problem): string {
  const { problemPlace: said } = words
  const inText =
    line === undefined ? undefined : column === undefined ? said.line(line) : said.lineColumn(line, column)
  if (path === '') return inText ?? said.wholeFile
  return inText === undefined ? path : said.pathAndLine(path, inText)
}
