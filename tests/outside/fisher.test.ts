import { describe, expect, it } from 'vitest'
import { fisherCdf, fisherQuantile } from '../../src/core/statistics/fisher'
import { meanRangeDivisor, rangeOfNormal } from '../../src/core/statistics/range-of-normal'
import { studentCdf } from '../../src/core/statistics/student'

describe('Fisher’s F', () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.3, upper 5 % and 2.5 % points, from memory.
  it.each([
    [0.95, 1, 1, 161.448],
    [0.95, 2, 10, 4.103],
    [0.95, 5, 20, 2.711],
    [0.95, 10, 10, 2.978],
    [0.95, 4, 60, 2.525],
  ])('has at %s with %s and %s degrees of freedom the printed point %s', (p, above, below, point) => {
    expect(Math.abs(fisherQuantile(p, above, below) - point)).toBeLessThanOrEqual(0.00051)
  })

  it('is the square of Student’s t for one degree above', () => {
    for (const nu of [1, 2, 7, 60, 400]) {
      for (const t of [0.01, 0.5, 1, 3, 12]) {
        expect(fisherCdf(t * t, 1, nu)).toBeCloseTo(2 * studentCdf(t, nu) - 1, 12)
      }
    }
  })

  it('is 1 − (1 + 2x/ν)^(−ν/2) for two degrees above, and turned over with its degrees', () => {
    for (const x of [0.001, 0.3, 1, 4, 90]) {
      for (const nu of [1, 9, 78, 500]) {
        expect(fisherCdf(x, 2, nu)).toBeCloseTo(1 - (1 + (2 * x) / nu) ** (-nu / 2), 12)
        expect(fisherCdf(x, 18, nu)).toBeCloseTo(1 - fisherCdf(1 / x, nu, 18), 12)
      }
    }
  })

  it('has a probability that its own quantile finds back, and refuses what it has no form for', () => {
    for (const [above, below] of [
      [1, 1],
      [2, 78],
      [9, 18],
      [499, 3],
    ] as const) {
      for (const p of [0.025, 0.5, 0.975]) {
        expect(fisherCdf(fisherQuantile(p, above, below), above, below)).toBeCloseTo(p, 8)
      }
    }
    expect(() => fisherCdf(1, 0, 5)).toThrow(RangeError)
    expect(() => fisherCdf(1, 5, 2.5)).toThrow(RangeError)
  })
})

describe('the range of normal values', () => {
  // d2 and d3 as every table of control-chart factors prints them, from memory.
  it.each([
    [2, 1.128, 0.853],
    [3, 1.693, 0.888],
    [4, 2.059, 0.88],
    [5, 2.326, 0.864],
    [10, 3.078, 0.797],
    [25, 3.931, 0.708],
  ])('of %s has the printed d2 %s and d3 %s', (m, d2, d3) => {
    const { mean, deviation } = rangeOfNormal(m)
    expect(Math.abs(mean - d2)).toBeLessThanOrEqual(0.00051)
    expect(Math.abs(deviation - d3)).toBeLessThanOrEqual(0.00051)
  })

  it('of two has the mean 2/√π and the variance 2 − 4/π', () => {
    expect(rangeOfNormal(2).mean).toBeCloseTo(2 / Math.sqrt(Math.PI), 6)
    expect(rangeOfNormal(2).deviation).toBeCloseTo(Math.sqrt(2 - 4 / Math.PI), 6)
  })

  it('has d2* of 1.41 for one pair and 1.91 for one three, and nears d2 with more groups', () => {
    // Duncan, Quality Control and Industrial Statistics, appendix D3, from memory.
    expect(meanRangeDivisor(2, 1)).toBeCloseTo(1.41, 2)
    expect(meanRangeDivisor(3, 1)).toBeCloseTo(1.91, 2)
    expect(meanRangeDivisor(3, 1e9)).toBeCloseTo(rangeOfNormal(3).mean, 6)
  })
})
