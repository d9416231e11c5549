import { boreFactor, type StationParts } from '../conformity/bore-verdict'
import { type Doubtful, probabilities, proof } from '../conformity/conformity'

/** One of several values with its doubt, mm. */
export interface JudgedValue extends StationParts {
  readonly valueMm: number
  readonly standardUncertaintyMm: number
}

/** Which of several values is judged, and what it may not do. */
export interface ExtremeAsked {
  readonly of: 'largest' | 'smallest'
  readonly mayNot: 'exceed' | 'undercut'
  readonly limitMm: number
}

/** How the largest or the smallest of several values stands to one limit. */
export interface JudgedExtreme {
  readonly provenPast: boolean
  readonly provenWithin: boolean
  /** Probability that it is past the limit, from the value that decides. */
  readonly probabilityPast: number
}

/**
 * Whether the largest or the smallest of several true values is past a limit. Where one value past the limit is
 * enough (a largest that may not exceed, a smallest that may not undercut): past when some value is past by the
 * bore's factor on u, within when every value is within with 95 %, as a bore is judged. The other way about all
 * must be past, which each proves by itself (an intersection of hypotheses needs no factor), and one that is within
 * by the factor is enough to be within. Source: as for `boreVerdict`; own derivation of the second case.
 */
export function judgedExtreme(values: readonly JudgedValue[], asked: ExtremeAsked): JudgedExtreme {
  const isOneEnough = (asked.of === 'largest') === (asked.mayNot === 'exceed')
  const past = values.map((value) => chanceOf(value, asked))
  const within = past.map((chance) => 1 - chance)
  const all = (chances: readonly number[]) => chances.every((chance) => chance >= proof)
  return {
    provenPast: isOneEnough ? someBeyond(values, past, asked) : all(past),
    provenWithin: isOneEnough ? all(within) : someBeyond(values, within, asked),
    probabilityPast: isOneEnough ? Math.max(...past) : Math.min(...past),
  }
}

function chanceOf(value: JudgedValue, { mayNot, limitMm }: ExtremeAsked): number {
  const { valueMm, standardUncertaintyMm, degreesOfFreedom } = value
  const doubtful: Doubtful = { value: valueMm, standardUncertainty: standardUncertaintyMm, degreesOfFreedom }
  return mayNot === 'exceed'
    ? probabilities(doubtful, { max: limitMm }).above
    : probabilities(doubtful, { min: limitMm }).below
}

/** Whether some value lies on its side of the limit by the factor for all of them; the factor is costly. */
function someBeyond(
  values: readonly JudgedValue[],
  chances: readonly number[],
  { limitMm }: ExtremeAsked,
): boolean {
  const likely = values.filter((_, index) => (chances[index] ?? 0) >= proof)
  if (likely.length === 0) return false
  const factor = boreFactor(values)
  return likely.some((value) => Math.abs(value.valueMm - limitMm) >= factor * value.standardUncertaintyMm)
}
