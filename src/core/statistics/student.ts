import cdfOf from '@stdlib/stats-base-dists-t-cdf'
import quantileOf from '@stdlib/stats-base-dists-t-quantile'
import { normalCdf } from './normal'

/** The quantile of the standard normal distribution at 0.95 and 0.975, to full double precision. */
const normalQuantiles: ReadonlyMap<number, number> = new Map([
  [0.95, 1.6448536269514722],
  [0.975, 1.959963984540054],
])

/**
 * Probability that Student's t with `degreesOfFreedom` (positive, may be infinite) is at most x.
 * Accurate to 1e-14. Source: Student's distribution, GUM (JCGM 100:2008) G.3.
 */
export function studentCdf(x: number, degreesOfFreedom: number): number {
  if (!(degreesOfFreedom > 0)) throw new RangeError(`studentCdf: degrees of freedom ${degreesOfFreedom}`)
  if (degreesOfFreedom === Number.POSITIVE_INFINITY) return normalCdf(x)
  return cdfOf(x, degreesOfFreedom)
}

const remembered = new Map<string, number>()

/**
 * The value that Student's t stays below with probability p: t_p,ν, one-sided.
 * The two-sided 95 % factor is `studentQuantile(0.975, ν)`. Accurate to 1e-10.
 * Source: GUM (JCGM 100:2008) table G.2, which gives the two-sided values.
 */
export function studentQuantile(p: number, degreesOfFreedom: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`studentQuantile: probability ${p}`)
  if (!(degreesOfFreedom > 0)) throw new RangeError(`studentQuantile: degrees of freedom ${degreesOfFreedom}`)
  const key = `${p} ${degreesOfFreedom}`
  const known = remembered.get(key)
  if (known !== undefined) return known
  const value =
    degreesOfFreedom === Number.POSITIVE_INFINITY
      ? (normalQuantiles.get(p) ?? quantileOf(p, 1e15))
      : quantileOf(p, degreesOfFreedom)
  remembered.set(key, value)
  return value
}
