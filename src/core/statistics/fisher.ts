import { quantileOfDistribution } from './root'

/** ln Γ(n/2) for n = 1, 2, 3 and so on, grown as far as it was asked for. */
const logGammaOfHalves = [Number.NaN, Math.log(Math.PI) / 2, 0]

function logGammaOfHalf(n: number): number {
  for (let k = logGammaOfHalves.length; k <= n; k++) {
    logGammaOfHalves.push((logGammaOfHalves[k - 2] ?? 0) + Math.log(k / 2 - 1))
  }
  return logGammaOfHalves[n] ?? Number.NaN
}

/** So small a denominator of the continued fraction is taken for none. */
const tiny = 1e-300

/** The continued fraction of the incomplete beta function by Lentz's method, for x below (a + 1)/(a + b + 2). */
function continuedFraction(x: number, a: number, b: number): number {
  const away = (value: number) => (Math.abs(value) < tiny ? tiny : value)
  let c = 1
  let d = 1 / away(1 - ((a + b) * x) / (a + 1))
  let fraction = d
  for (let m = 1; m <= 10_000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    d = 1 / away(1 + even * d)
    c = away(1 + even / c)
    fraction *= d * c
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    d = 1 / away(1 + odd * d)
    c = away(1 + odd / c)
    fraction *= d * c
    if (Math.abs(d * c - 1) < 1e-15) return fraction
  }
  throw new Error(`continuedFraction: no end at x ${x}, a ${a}, b ${b}`)
}

/**
 * Probability that Fisher's F, a ratio of two independent mean squares of one variance with ν₁ and ν₂ degrees of
 * freedom (whole numbers from 1 to 1000), is at most x; throws for others. Absolute error below 1e-12. Source: NIST
 * Digital Library of Mathematical Functions, 8.17.22, the continued fraction of the incomplete beta function.
 */
export function fisherCdf(x: number, above: number, below: number): number {
  for (const nu of [above, below]) {
    if (!(Number.isInteger(nu) && nu >= 1 && nu <= 1000))
      throw new RangeError(`fisherCdf: degrees of freedom ${nu}`)
  }
  if (!(x > 0)) return 0
  if (x === Number.POSITIVE_INFINITY) return 1
  const share = (above * x) / (above * x + below)
  const rest = below / (above * x + below)
  const [a, b] = [above / 2, below / 2]
  const front = Math.exp(
    logGammaOfHalf(above + below) -
      logGammaOfHalf(above) -
      logGammaOfHalf(below) +
      a * Math.log(share) +
      b * Math.log(rest),
  )
  return share < (a + 1) / (a + b + 2)
    ? (front * continuedFraction(share, a, b)) / a
    : 1 - (front * continuedFraction(rest, b, a)) / b
}

/** The x at which `fisherCdf` reaches p, 0 < p < 1, accurate to 1e-9 and to 1e-9 of itself. */
export function fisherQuantile(p: number, above: number, below: number): number {
  return quantileOfDistribution((x) => fisherCdf(x, above, below), p, 0.5, 2, 1e-10)
}
