import { seededDraws } from '../../src/core/statistics/seeded-draws'

/** Random numbers that are the same for the same seed. */
export interface SeededRandom {
  /** Even between 0 and 1. */
  even(): number
  /** Even within ± a half-width. */
  rectangular(halfWidth: number): number
  /** Normal with mean 0. */
  normal(standardDeviation: number): number
  /** Chi-squared. */
  chiSquared(degreesOfFreedom: number): number
}

/** The draws of core with the figures that tests give: half-widths and standard deviations. */
export function seededRandom(seed: number): SeededRandom {
  const { even, normal } = seededDraws(seed)
  return {
    even,
    rectangular: (halfWidth) => (2 * even() - 1) * halfWidth,
    normal: (standardDeviation) => standardDeviation * normal(),
    chiSquared: (degreesOfFreedom) => {
      let sum = 0
      for (let i = 0; i < degreesOfFreedom; i++) sum += normal() ** 2
      return sum
    },
  }
}
