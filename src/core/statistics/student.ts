import cdfOf from '@stdlib/stats-base-dists-t-cdf'
import quantileOf from '@stdlib/stats-base-dists-t-quantile'
import { normalCdf, normalDensity } from './normal'

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
    degreesOfFreedom === Number.POSITIVE_INFINITY ? normalQuantile(p) : quantileOf(p, degreesOfFreedom)
  remembered.set(key, value)
  return value
}

/** The library goes astray at huge ν; at 10¹⁰ it is right to 1e-9, and one step of Newton's method does the rest. */
function normalQuantile(p: number): number {
  const near = quantileOf(p, 1e10)
  return near - (normalCdf(near) - p) / normalDensity(near)
}
