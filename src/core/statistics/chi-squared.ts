import { quantileOfDistribution } from './root'
import { studentTail } from './student-tail'

/** Beyond this the closed form would leave the range of doubles. */
const mostFreedom = 500

/**
 * Probability that χ² with a whole number of degrees of freedom ν from 1 to 500 is at most x ≥ 0, absolute error
 * below 1e-12; throws outside. Source: Abramowitz & Stegun, Handbook of Mathematical Functions (1964), 26.4.4
 * and 26.4.5: a finite sum, with the normal distribution in front of it where ν is odd.
 */
export function chiSquaredCdf(x: number, degreesOfFreedom: number): number {
  const nu = degreesOfFreedom
  if (!(Number.isInteger(nu) && nu >= 1 && nu <= mostFreedom && x >= 0)) {
    throw new RangeError(`chiSquaredCdf: x ${x}, degrees of freedom ${nu}`)
  }
  // Where e^(−x/2) has left the range of doubles, what is above has too.
  if (x > 1400) return 1
  const isOdd = nu % 2 === 1
  let term = isOdd ? Math.sqrt((2 * x) / Math.PI) * Math.exp(-x / 2) : Math.exp(-x / 2)
  let above = isOdd ? 2 * studentTail(Math.sqrt(x), Number.POSITIVE_INFINITY) : 0
  for (let k = isOdd ? 1 : 0; k <= nu - 2; k += 2) {
    above += term
    term *= x / (k + 2)
  }
  return Math.max(0, 1 - above)
}

/** The x at which `chiSquaredCdf` reaches p, 0 < p < 1, accurate to 1e-9 of ν. */
export function chiSquaredQuantile(p: number, degreesOfFreedom: number): number {
  const nu = degreesOfFreedom
  return quantileOfDistribution((x) => chiSquaredCdf(x, nu), p, nu / 2, 2 * nu, nu * 1e-10)
}
