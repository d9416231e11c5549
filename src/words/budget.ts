import type { ContributionInput } from '../core/findings'
import type { Budget, BudgetPart, Improvement } from '../core/uncertainty/budget'
import { differenceUnitText, lengthUnit, mmPerInch, unitText } from './length-unit'
import { inHundredthsOfMicrons, inTenthsOfMicrons, length, percent, plain, tenthsOfMicrons } from './numbers'
import { words } from './words'

/** A part of a budget, worded. */
export interface BudgetRow {
  readonly kind: string
  readonly name: string
  /** Two standard uncertainties would mislead where ν is small: the standard uncertainty itself, µm. */
  readonly amount: string
  /** Its distribution, what shares it, and the input behind it. */
  readonly detail: string
  readonly share: number
  readonly shareText: string
}

/** The parts that make a hundredth of the variance or more, the largest first. */
export function budgetRows({ parts }: Budget): readonly BudgetRow[] {
  const said = words.budget
  return parts
    .filter(({ share }) => share >= 0.01)
    .map((part) => ({
      kind: part.kind,
      name: part.assumed ? `${said.kinds[part.kind]} (${said.assumed})` : said.kinds[part.kind],
      amount: tenthsOfMicrons(part.u),
      detail: detailOf(part),
      share: part.share,
      shareText: percent(part.share),
    }))
}

function detailOf({ distribution, degreesOfFreedom, scope, input, u }: BudgetPart): string {
  const { distributions, scopes, inputs } = words.budget
  const form =
    distribution === 'normal' && Number.isFinite(degreesOfFreedom)
      ? distributions.student(plain(degreesOfFreedom, 1))
      : distributions[distribution]
  const behind = input && inputs[input.unit](...inputFigures(input, u))
  return [form, scopes[scope], ...(behind === undefined ? [] : [behind])].join(' · ')
}

/** The input's standard uncertainty and its sensitivity, in the units of their sentence. */
function inputFigures({ u, unit }: ContributionInput, effectMm: number): [string, string] {
  const sensitivity = u > 0 ? effectMm / u : 0
  if (unit === '1/K') return [plain(u * 1e6, 2), length(sensitivity, 0)]
  if (unit === 'K') return [plain(u, 2), inHundredthsOfMicrons(sensitivity)]
  return [length(u, 2), `${sensitivityFigure(sensitivity)} ${differenceUnitText()}/${unitText()}`]
}

/** µm for each mm, or inches for each inch. */
function sensitivityFigure(ratio: number): string {
  return lengthUnit() === 'inch' ? plain(ratio, 5) : plain(ratio * 1000, 2)
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
  const finest = lengthUnit() === 'inch' ? mmPerInch / 1e6 : 1e-4
  return `± ${inTenthsOfMicrons(Math.ceil(expandedMm / finest - 1e-6) * finest)}`
}
