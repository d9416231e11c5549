/**
 * Probability that Student's t is above t, for t from 0 to 1e150 and a positive number of degrees of freedom
 * ν; infinite is the normal distribution. Absolute error below 1e-15, relative error below 3e-14 down to a
 * probability of 1e-30, so that small chances keep their digits.
 *
 * Near the middle it is ½ less the integral of the density from 0 to t, a series of positive terms; further
 * out a continued fraction that converges alike at every ν. Both are written in 1/ν, and at 1/ν = 0 become
 * the series and the fraction (Laplace's) of the normal distribution. Source: NIST Digital Library of
 * Mathematical Functions 8.17(ii), the incomplete beta function as a hypergeometric one, and 15.7, Gauss's
 * fraction for that; joined to the density by own derivation.
 */
export function studentTail(t: number, degreesOfFreedom: number): number {
  const inverse = 1 / degreesOfFreedom
  const density = studentDensity(t, inverse)
  if (t * t < Math.min(4, degreesOfFreedom)) return 0.5 - density * middleOverDensity(t, inverse)
  return density === 0 ? 0 : density * tailOverDensity(t, inverse)
}

function tailOverDensity(t: number, inverse: number): number {
  // What further levels would add is lost in rounding; the most are needed at t² = 4 and ν = ∞.
  let below = 0
  for (let k = Math.ceil(12 + 312 / Math.max(4, t * t)); k > 0; k--) {
    below = (k * (1 + (k - 1) * inverse)) / (t * (1 + 2 * k * inverse) + below)
  }
  return (1 + inverse * t * t) / (t + below)
}

function middleOverDensity(t: number, inverse: number): number {
  const ratio = (t * t) / (1 + inverse * t * t)
  let term = t
  let sum = t
  for (let n = 1; term > sum * 1e-17; n++) {
    term *= (ratio * (1 + (2 * n - 1) * inverse)) / (2 * n + 1)
    sum += term
  }
  return sum
}

function studentDensity(t: number, inverse: number): number {
  const fall = inverse === 0 ? (t * t) / 2 : (Math.log1p(inverse * t * t) * (1 / inverse + 1)) / 2
  return topOfDensity(inverse) * Math.exp(-fall)
}

/**
 * The density at 0, Γ((ν+1)/2)/(√(νπ)·Γ(ν/2)). Relative error below 1e-15. Source: the logarithm's asymptotic
 * series from DLMF 5.11.8 with h = ½ less the same with h = 0; below ν = 40 reached from ν + 2, ν + 4 and so
 * on by Γ(z+1) = z·Γ(z).
 */
function topOfDensity(inverse: number): number {
  let x = inverse
  let factor = 1 / Math.sqrt(2 * Math.PI)
  while (x > 1 / 40) {
    factor *= Math.sqrt(1 + 2 * x) / (1 + x)
    x /= 1 + 2 * x
  }
  const s = x * x
  return factor * Math.exp(-x * (1 / 4 - s * (1 / 24 - s * (1 / 20 - s * (17 / 112 - (s * 31) / 36)))))
}
