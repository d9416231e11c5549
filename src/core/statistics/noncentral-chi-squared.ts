/**
 * Probability that a noncentral chi-squared variable with two degrees of freedom and noncentrality λ is at
 * most x: the square of the length of a normal vector in the plane of mean length √λ. x and λ not negative;
 * x + λ up to 1400, beyond which e^(−λ/2) leaves the range of doubles and it throws. Absolute error below
 * 1e-12.
 * Source: Johnson, Kotz & Balakrishnan, Continuous Univariate Distributions, vol. 2 (1995), chapter 29:
 * the mixture Σ Poisson(k; λ/2)·P(χ²_{2+2k} ≤ x), the second factor 1 − Σ_{j≤k} Poisson(j; x/2).
 */
export function noncentralChiSquared2(x: number, lambda: number): number {
  if (!(x >= 0 && lambda >= 0 && x + lambda <= 1400)) {
    throw new RangeError(`noncentralChiSquared2: x ${x}, noncentrality ${lambda}`)
  }
  let weight = Math.exp(-lambda / 2)
  let term = Math.exp(-x / 2)
  let above = term
  let sum = weight * (1 - above)
  let rest = 1 - weight
  for (let k = 1; rest > 1e-15 && k < 5000; k++) {
    weight *= lambda / 2 / k
    term *= x / 2 / k
    above += term
    sum += weight * Math.max(0, 1 - above)
    rest -= weight
  }
  return sum
}
