import { describe, expect, it } from 'vitest'
import { studentCdf, studentQuantile } from '../../src/core/statistics/student'

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
