import { describe, expect, it } from 'vitest'
import { rangeOfMany, scanRange } from '../../../../src/core/scan/range-of-many'
import { studentisedRangeQuantile } from '../../../../src/core/statistics/studentised-range'
import { runCount } from '../../../proof/run-count'
import { seededRandom } from '../../../proof/seeded-random'

describe('the range of many errors', () => {
  it('is never below that of independent ones, and not much above it', () => {
    for (const [m, nu] of [
      [16, Number.POSITIVE_INFINITY],
      [36, 50],
      [64, 20],
    ] as const) {
      const exact = studentisedRangeQuantile(0.95, m, nu)
      expect(rangeOfMany(m, nu)).toBeGreaterThan(exact)
      expect(rangeOfMany(m, nu)).toBeLessThan(1.25 * exact)
    }
    expect(rangeOfMany(1, 50)).toBe(0)
  })

  it('is exceeded in one scan of twenty at most, of 360 values and of errors that hang together, from seed 94', () => {
    const random = seededRandom(94)
    const runs = runCount({ quick: 400, full: 20_000 })
    let apart = 0
    let together = 0
    for (let i = 0; i < runs; i++) {
      const values = new Float64Array(360).map(() => random.normal(1))
      const smooth = values.map((v, k) => (v + (values[(k + 1) % 360] ?? 0)) / Math.SQRT2)
      const spread = (all: Float64Array) => Math.max(...all) - Math.min(...all)
      if (spread(values) > rangeOfMany(360, Number.POSITIVE_INFINITY)) apart++
      if (spread(smooth) > rangeOfMany(360, Number.POSITIVE_INFINITY)) together++
    }
    const most = 0.05 + 3 * Math.sqrt((0.05 * 0.95) / runs)
    expect(apart / runs).toBeLessThanOrEqual(most)
    expect(together / runs).toBeLessThanOrEqual(most)
  })

  it('makes an interval that never ends below nothing', () => {
    expect(scanRange(2, 360, 1, 50).lowUm).toBe(0)
    const { lowUm, valueUm, highUm } = scanRange(40, 360, 1, Number.POSITIVE_INFINITY)
    expect(lowUm).toBeCloseTo(40 - rangeOfMany(360, Number.POSITIVE_INFINITY), 12)
    expect(valueUm).toBe(40)
    // t = 1.645 at ν = ∞, on the difference of two.
    expect(highUm).toBeCloseTo(40 + 1.644854 * Math.SQRT2, 5)
  })
})
