import cdfOfLibrary from '@stdlib/stats-base-dists-t-cdf'
import quantileOfLibrary from '@stdlib/stats-base-dists-t-quantile'
import { describe, expect, it } from 'vitest'
import { studentCdf, studentQuantile } from '../../src/core/statistics/student'
import { studentTail } from '../../src/core/statistics/student-tail'
import { seededRandom } from '../proof/seeded-random'
import reference from './data/student-tail.json' with { type: 'json' }

const infinite = Number.POSITIVE_INFINITY

describe("Student's t against GUM (JCGM 100:2008) table G.2", () => {
  // Printed with two decimals; the percentages are two-sided.
  it.each([
    [68.27, 1, 1.84],
    [95, 1, 12.71],
    [99.73, 5, 5.51],
    [90, 20, 1.72],
    [95.45, infinite, 2.0],
    [99.73, 1, 235.8],
    [90, 10, 1.81],
    [95, 20, 2.09],
    [99.73, 2, 19.21],
    [99, 11, 3.11],
    [99, 16, 2.92],
  ])('has the printed factor for %s %% and %s degrees of freedom', (percent, nu, printed) => {
    const t = studentQuantile(0.5 + percent / 200, nu)
    expect(Math.abs(t - printed)).toBeLessThanOrEqual(printed > 100 ? 0.051 : 0.0051)
  })

  // Four decimals, computed with scipy 1.17.1 (scipy.stats.t.ppf).
  it.each([
    [90, 8, 1.8595],
    [95, 8, 2.306],
    [90, 16, 1.7459],
    [95, 16, 2.1199],
    [90, 50, 1.6759],
    [95, 50, 2.0086],
    [90, infinite, 1.6449],
    [95, infinite, 1.96],
  ])('has to four decimals the factor for %s %% and %s degrees of freedom', (percent, nu, value) => {
    expect(studentQuantile(0.5 + percent / 200, nu)).toBeCloseTo(value, 4)
  })

  it.each([1, 2, 8, 16, 50, infinite])('finds back the probability of its own quantile at ν = %s', (nu) => {
    for (const p of [0.6, 0.9, 0.95, 0.975, 0.995])
      expect(studentCdf(studentQuantile(p, nu), nu)).toBeCloseTo(p, 10)
  })
})

/** Values from mpmath 1.3.0 with 60 digits; the script that wrote them lies beside them. */
const chances = reference.rows.map(([nu, t, chance]) => {
  if (nu === undefined || typeof t !== 'number' || typeof chance !== 'number') throw new Error('a broken row')
  return { nu: nu ?? infinite, t, chance }
})

describe("the chance beyond a value of Student's t against mpmath 1.3.0", () => {
  it.each([...new Set(chances.map((row) => row.nu))])(
    'has an error below 1e-15, and of its own size below 3e-14, at ν = %s',
    (nu) => {
      const own = chances.filter((row) => row.nu === nu)
      expect(own.length).toBeGreaterThan(15)
      for (const { t, chance } of own) {
        const error = Math.abs(studentTail(t, nu) - chance)
        expect(error, `t ${t}`).toBeLessThan(1e-15)
        expect(error / chance, `t ${t}`).toBeLessThan(3e-14)
        expect(Math.abs(studentCdf(t, nu) - (1 - chance)), `t ${t}`).toBeLessThan(1e-15)
        expect(studentCdf(-t, nu), `t ${t}`).toBe(t === 0 ? 0.5 : studentTail(t, nu))
      }
    },
  )
})

describe("Student's t against @stdlib, a second library, at 500 random places (seed 17)", () => {
  const random = seededRandom(17)
  const places = Array.from({ length: 500 }, () => ({
    nu: 10 ** (4.3 * random.even() - 0.3),
    p: 1 - 10 ** (-0.301 - 6 * random.even()),
  }))

  it('has the same quantiles to 1e-12, on both sides', () => {
    for (const { nu, p } of places) {
      const t = quantileOfLibrary(p, nu)
      const error = Math.abs(studentQuantile(p, nu) - t)
      expect(error, `p ${p}, ν ${nu}`).toBeLessThan(1e-12 * Math.max(1, t))
      expect(studentQuantile(1 - p, nu)).toBe(-studentQuantile(p, nu))
    }
  })

  it('has the same probabilities to 1e-14', () => {
    for (const { nu, p } of places) {
      const t = quantileOfLibrary(p, nu)
      expect(Math.abs(studentCdf(t, nu) - cdfOfLibrary(t, nu)), `t ${t}, ν ${nu}`).toBeLessThan(1e-14)
    }
  })
})
