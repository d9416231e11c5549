import { chiSquaredQuantile } from '../statistics/chi-squared'
import { fisherQuantile } from '../statistics/fisher'

/** A mean square of an analysis of variance. */
export interface MeanSquare {
  readonly meanSquare: number
  readonly degreesOfFreedom: number
}

/** A mean square times a factor. */
export interface WeightedSquare {
  readonly of: MeanSquare
  readonly factor: number
}

/** A variance with its two-sided 95 % interval. */
export interface VarianceInterval {
  readonly estimate: number
  readonly low: number
  readonly high: number
}

const inTail = 0.025

/** Several sums of mean squares as one, each mean square once. */
export function addSquares(...sums: readonly (readonly WeightedSquare[] | undefined)[]): WeightedSquare[] {
  const factors = new Map<MeanSquare, number>()
  for (const { of, factor } of sums.flatMap((sum) => sum ?? [])) {
    factors.set(of, (factors.get(of) ?? 0) + factor)
  }
  return [...factors].map(([of, factor]) => ({ of, factor }))
}

/**
 * The interval of a sum of mean squares with positive factors: the estimate less √Σ(G·f·MS)² and more √Σ(H·f·MS)²,
 * G = 1 − ν/χ²_0.975 and H = ν/χ²_0.025 − 1; for one mean square exactly that of χ². For normal errors; it holds
 * the truth in 95 of 100 cases very nearly. Source: Graybill & Wang, Journal of the American Statistical
 * Association 75 (1980), 869, from memory; held by simulation in the tests.
 */
export function intervalOfSum(squares: readonly WeightedSquare[]): VarianceInterval {
  let estimate = 0
  let below = 0
  let above = 0
  for (const { factor, of } of squares) {
    const nu = of.degreesOfFreedom
    const part = factor * of.meanSquare
    estimate += part
    below += ((1 - nu / chiSquaredQuantile(1 - inTail, nu)) * part) ** 2
    above += ((nu / chiSquaredQuantile(inTail, nu) - 1) * part) ** 2
  }
  return {
    estimate,
    low: Math.max(0, estimate - Math.sqrt(below)),
    high: estimate + Math.sqrt(above),
  }
}

/**
 * The interval of a component (MS₁ − MS₂)/n, cut at 0: from ν₁·(MS₁ − F_0.975·MS₂)/(n·χ²_0.975) to
 * ν₁·(MS₁ − F_0.025·MS₂)/(n·χ²_0.025), F with ν₁ and ν₂ degrees of freedom and χ² with ν₁. For normal errors; a
 * little wide. Source: Williams, Biometrika 49 (1962), 278, from memory; held by simulation in the tests.
 */
export function intervalOfComponent(one: MeanSquare, other: MeanSquare, times: number): VarianceInterval {
  const { meanSquare, degreesOfFreedom: nu } = one
  const end = (p: number) => {
    const excess = meanSquare - fisherQuantile(p, nu, other.degreesOfFreedom) * other.meanSquare
    return Math.max(0, (nu * excess) / (times * chiSquaredQuantile(p, nu)))
  }
  const estimate = Math.max(0, (meanSquare - other.meanSquare) / times)
  return { estimate, low: end(1 - inTail), high: end(inTail) }
}

/**
 * Effective degrees of freedom of a sum of mean squares, a whole number of 1 or more. Source: Satterthwaite,
 * Biometrics Bulletin 2 (1946), 110; GUM (JCGM 100:2008) G.4.1. Infinite where the sum is 0.
 */
export function freedomOfSum(squares: readonly WeightedSquare[]): number {
  const parts = squares.map(({ factor, of }) => ({
    part: factor * of.meanSquare,
    degreesOfFreedom: of.degreesOfFreedom,
  }))
  const sum = parts.reduce((total, { part }) => total + part, 0)
  const below = parts.reduce((total, { part, degreesOfFreedom: nu }) => total + (part * part) / nu, 0)
  return below > 0 ? Math.max(1, Math.floor((sum * sum) / below + 1e-9)) : Number.POSITIVE_INFINITY
}
