import type { Place, ShapeFinding, StationFinding } from '../findings'
import type { OvalityRule, TaperRule } from '../measured'
import { judgeRange, rangeInterval } from './range-interval'

/** A pair of stations whose difference is the figure of a rule, and what it was chosen among. */
export interface ChosenPair<Rule extends OvalityRule | TaperRule> {
  readonly rule: Rule
  /** The figure is `first` less `second`. */
  readonly first: StationFinding
  readonly second: StationFinding
  /** All stations of the groups it was chosen from, the most in one group, and how many groups. */
  readonly among: readonly StationFinding[]
  readonly m: number
  readonly groups: number
  /** `size`: the interval is that of the range, its sign put back; `signed`: not cut at 0. */
  readonly kind: 'size' | 'signed'
  /** Judge the figure as signed, or by its size. */
  readonly judged: 'signed' | 'size'
  /**
   * The figure as judged is never less, in the mean, than what its true extreme pair reads, so that the error
   * of that pair alone bounds it from below.
   */
  readonly widest: boolean
  readonly limitMm: number | undefined
}

/** The finding of a rule that rests on a largest and a smallest. */
export function rangeFinding<Rule extends OvalityRule | TaperRule>(c: ChosenPair<Rule>): ShapeFinding<Rule> {
  const value = c.first.diameterMm - c.second.diameterMm
  const w = c.kind === 'size' ? Math.abs(value) : value
  const interval = rangeInterval(w, c.among, c.m, c.groups, c.kind === 'signed')
  const mirrored = c.kind === 'size' && value < 0
  const [larger, smaller] = value < 0 ? [c.second, c.first] : [c.first, c.second]
  return {
    known: true,
    rule: c.rule,
    valueMm: value,
    lowMm: mirrored ? -interval.high : interval.low,
    highMm: mirrored ? -interval.low : interval.high,
    interval: 'range',
    larger: place(larger),
    smaller: place(smaller),
    ...(c.limitMm === undefined
      ? {}
      : {
          limitMm: c.limitMm,
          ...judgeRange(c.judged === 'size' ? Math.abs(w) : w, interval, c.limitMm, c.widest),
        }),
  }
}

/** Where a station is. */
export function place({ depthMm, axisDegrees }: Place): Place {
  return { depthMm, axisDegrees }
}
