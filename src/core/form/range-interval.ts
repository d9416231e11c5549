import type { StationFinding } from '../findings'
import { studentQuantile } from '../statistics/student'
import { studentisedRangeQuantile } from '../statistics/studentised-range'

/** A largest less smallest, chosen among `m` stations of each of `groups` groups. */
export interface RangeInterval {
  readonly low: number
  readonly high: number
  /** At or above this range a limit is exceeded beyond doubt, and at or below it is kept, mm of margin. */
  readonly marginAbove: number
  readonly marginInside: number
}

/**
 * The 95 % interval of a figure made of a largest and a smallest, mm: w ± Q·s, with Q the studentised
 * range at 0.95^(1/g) for m stations and the individual part s, the largest among them; errors that the
 * stations share drop out. ν is the smallest among the stations. A plain U would hold the truth of a round
 * bore in 80 % at four stations and in 15 % at sixteen. `signed` figures are not cut at 0.
 *
 * Judged against a limit L: above when w − Q·s ≥ L; inside when w + t_0.95,ν·√2·s ≤ L, the error of the
 * true extreme pair alone. Own derivation; Q as in the studentised-range procedure for the largest
 * difference of means. That pair reads no more than w only where w is the widest difference there is; a
 * largest less another largest, or a figure whose wrong sign makes it look small, needs Q·s on this side too.
 */
export function rangeInterval(
  w: number,
  stations: readonly StationFinding[],
  m: number,
  groups: number,
  signed: boolean,
): RangeInterval {
  const s = Math.max(...stations.map((x) => x.individualMm))
  const freedom = Math.min(...stations.map((x) => x.individualDegreesOfFreedom))
  const q = studentisedRangeQuantile(0.95 ** (1 / groups), m, freedom)
  const low = w - q * s
  return {
    low: signed ? low : Math.max(0, low),
    high: w + q * s,
    marginAbove: q * s,
    marginInside: studentQuantile(0.95, freedom) * Math.SQRT2 * s,
  }
}

/** The verdict of a range on a limit; `w` as judged (signed, or its size), `widest` if none could be wider. */
export function judgeRange(
  w: number,
  interval: RangeInterval,
  limitMm: number,
  widest: boolean,
): { verdict: 'inside' | 'above' | 'too-close'; lean: 'inside' | 'above' } {
  const marginInside = widest ? interval.marginInside : interval.marginAbove
  const verdict =
    w - interval.marginAbove >= limitMm ? 'above' : w + marginInside <= limitMm ? 'inside' : 'too-close'
  return { verdict, lean: w > limitMm ? 'above' : 'inside' }
}
