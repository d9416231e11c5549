import { risingRoot } from './root'
import { studentTail } from './student-tail'

/**
 * Probability that Student's t with `degreesOfFreedom` (positive, may be infinite) is at most x.
 * Absolute error below 1e-15. Source: Student's distribution, GUM (JCGM 100:2008) G.3.
 */
export function studentCdf(x: number, degreesOfFreedom: number): number {
  if (!(degreesOfFreedom > 0)) throw new RangeError(`studentCdf: degrees of freedom ${degreesOfFreedom}`)
  const tail = studentTail(Math.abs(x), degreesOfFreedom)
  return x < 0 ? tail : 1 - tail
}

const remembered = new Map<string, number>()

/**
 * The value that Student's t stays below with probability p: t_p,ν, one-sided.
 * The two-sided 95 % factor is `studentQuantile(0.975, ν)`. For ν of 0.5 or more and a chance beyond it of
 * 1e-12 or more: error below 1e-12, or below 1e-12 of the value where that is more than 1.
 * Source: GUM (JCGM 100:2008) table G.2, which gives the two-sided values.
 */
export function studentQuantile(p: number, degreesOfFreedom: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`studentQuantile: probability ${p}`)
  if (!(degreesOfFreedom > 0)) throw new RangeError(`studentQuantile: degrees of freedom ${degreesOfFreedom}`)
  const key = `${p} ${degreesOfFreedom}`
  const known = remembered.get(key)
  if (known !== undefined) return known
  const value = p < 0.5 ? -exceededWith(p, degreesOfFreedom) : exceededWith(1 - p, degreesOfFreedom)
  remembered.set(key, value)
  return value
}

/** Solved on the logarithm of the tail, which is nearly straight within the bracket. */
function exceededWith(chance: number, degreesOfFreedom: number): number {
  let low = 0
  let high = 1
  while (studentTail(high, degreesOfFreedom) > chance) {
    low = high
    high *= 2
  }
  const rise = (t: number) => -Math.log(studentTail(t, degreesOfFreedom))
  return risingRoot(rise, -Math.log(chance), low, high, 1e-13 * high)
}
