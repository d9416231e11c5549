import { proof } from '../conformity/conformity'
import type { Side, Verdict } from '../findings'
import { type JudgedValue, judgedExtreme } from './judged-extreme'

/** How the least and the most of several values stand to a window. */
export interface WindowStanding {
  readonly verdict: Verdict
  readonly lean: Side
  readonly leanProbability: number
}

/** Which of the values the least is and which the most: the smallest and the largest, or one of them for both. */
export interface WindowEnds {
  readonly least: 'smallest' | 'largest'
  readonly most: 'smallest' | 'largest'
}

/** Limits of a window, mm; either may be absent. */
export interface Window {
  readonly minMm?: number | undefined
  readonly maxMm?: number | undefined
}

const open = { provenPast: false, provenWithin: true, probabilityPast: 0 }

/**
 * The least of several values against a window's smallest and the most against its largest: above or below where an
 * end is past by its rule, inside where both are within and the chances of the two leave 95 % together, else too
 * close to call. Source: as for `judgedExtreme`; the sum of two chances bounds that of either (Bonferroni).
 */
export function judgedWindow(
  values: readonly JudgedValue[],
  { least, most }: WindowEnds,
  { minMm, maxMm }: Window,
): WindowStanding {
  const below =
    minMm === undefined ? open : judgedExtreme(values, { of: least, mayNot: 'undercut', limitMm: minMm })
  const above =
    maxMm === undefined ? open : judgedExtreme(values, { of: most, mayNot: 'exceed', limitMm: maxMm })
  const chances = {
    inside: Math.max(0, 1 - below.probabilityPast - above.probabilityPast),
    below: below.probabilityPast,
    above: above.probabilityPast,
  }
  const past = chances.above >= chances.below ? 'above' : 'below'
  const lean: Side = chances.inside >= chances[past] ? 'inside' : past
  const isInside = below.provenWithin && above.provenWithin && chances.inside >= proof
  const verdict = above.provenPast ? 'above' : below.provenPast ? 'below' : isInside ? 'inside' : 'too-close'
  return { verdict, lean, leanProbability: chances[lean] }
}
