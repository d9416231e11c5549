/** Random numbers that are the same for the same seed. */
export interface SeededDraws {
  /** Even between 0 and 1. */
  even(): number
  /** Normal with mean 0 and standard deviation 1. */
  normal(): number
  /** Rectangular with mean 0 and standard deviation 1: even between −√3 and √3. */
  rectangular(): number
  /** √(χ²_ν/ν), the ratio of an estimated standard deviation to the true one; 1 for ν = ∞. */
  deviationRatio(degreesOfFreedom: number): number
}

/**
 * Draws from a generator of 32 bits of state (mulberry32, public domain): ample for some ten million numbers,
 * not for secrets. Normal numbers by Box & Muller (1958); χ² as a sum of squares.
 */
export function seededDraws(seed: number): SeededDraws {
  let state = seed >>> 0
  const even = () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), state | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
  const normal = () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even())
  return {
    even,
    normal,
    rectangular: () => (2 * even() - 1) * Math.sqrt(3),
    deviationRatio(nu) {
      if (!Number.isFinite(nu)) return 1
      let sum = 0
      for (let i = 0; i < nu; i++) sum += normal() ** 2
      return Math.sqrt(sum / nu)
    },
  }
}
