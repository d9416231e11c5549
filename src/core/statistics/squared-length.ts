/**
 * The p quantile of the squared length of a normal vector in the plane, in units of an estimated variance with ν
 * degrees of freedom: 2·F_p(2, ν) = ν·((1 − p)^(−2/ν) − 1), in the limit of ν = ∞ the χ² with two degrees,
 * −2·ln(1 − p) (5.99 at 95 %). Own derivation: the distribution function of F(2, ν) is 1 − (1 + 2x/ν)^(−ν/2).
 */
export function squaredLengthQuantile(p: number, degreesOfFreedom: number): number {
  if (degreesOfFreedom > 1e6) return -2 * Math.log(1 - p)
  return degreesOfFreedom * ((1 - p) ** (-2 / degreesOfFreedom) - 1)
}
