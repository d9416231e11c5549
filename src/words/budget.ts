import type { Budget, Improvement } from '../core/uncertainty/budget'
import { doubtInMicrons, percent, plain } from './numbers'
import { words } from './words'

/** A part of a budget, worded. */
export interface BudgetRow {
  readonly kind: string
  readonly name: string
  /** Two standard uncertainties would mislead where ν is small: the standard uncertainty itself, µm. */
  readonly amount: string
  readonly share: number
  readonly shareText: string
}

/** The parts that make a hundredth of the variance or more, the largest first. */
export function budgetRows({ parts }: Budget): readonly BudgetRow[] {
  const said = words.budget
  return parts
    .filter(({ share }) => share >= 0.01)
    .map(({ kind, u, share, assumed }) => ({
      kind,
      name: assumed ? `${said.kinds[kind]} (${said.assumed})` : said.kinds[kind],
      amount: plain(u * 1000, 1),
      share,
      shareText: percent(share),
    }))
}

/** Which part is the largest. */
export function largestPart({ parts }: Budget): string | undefined {
  const [first] = parts
  if (!first) return undefined
  const said = words.budget
  const say = first.share > 0.5 ? said.mostly : said.shared
  return say(said.kinds[first.kind], percent(first.share))
}

/** What would shrink the doubt, from what to what, the best first. */
export function improvementTexts({ expandedMm, improvements }: Budget): readonly string[] {
  if (improvements.length === 0) return [words.budget.nothing]
  return improvements.map((one: Improvement) =>
    words.budget.improve[one.kind](doubtToTenths(expandedMm), doubtToTenths(one.expandedMm)),
  )
}

/** ± 6.8 µm; whole microns would hide what an improvement is worth. */
export function doubtToTenths(expandedMm: number): string {
  const um = Math.ceil(expandedMm * 10_000 - 1e-6) / 10
  return doubtInMicrons(expandedMm) === 0 ? '± 0 µm' : `± ${plain(um, 1)} µm`
}
