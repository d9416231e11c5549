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

/** A generator of 32 bits of state (mulberry32, public domain); ample for some ten million draws. */
export function seededRandom(seed: number): SeededRandom {
  let state = seed >>> 0
  const even = () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), state | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
  const unitNormal = () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even())
  return {
    even,
    rectangular: (halfWidth) => (2 * even() - 1) * halfWidth,
    normal: (standardDeviation) => standardDeviation * unitNormal(),
    chiSquared: (degreesOfFreedom) => {
      let sum = 0
      for (let i = 0; i < degreesOfFreedom; i++) sum += unitNormal() ** 2
      return sum
    },
  }
}
