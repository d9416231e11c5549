import { describe, expect, it } from 'vitest'
import { chiSquaredCdf, chiSquaredQuantile } from '../../src/core/statistics/chi-squared'

describe('chi-squared', () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4, from memory; printed with three decimals.
  it.each([
    [1, 0.001, 5.024],
    [5, 0.831, 12.833],
    [9, 2.7, 19.023],
    [10, 3.247, 20.483],
    [20, 9.591, 34.17],
    [30, 16.791, 46.979],
    [100, 74.222, 129.561],
  ])('has the printed 2.5 %% and 97.5 %% points for %s degrees of freedom', (nu, low, high) => {
    expect(Math.abs(chiSquaredQuantile(0.025, nu) - low)).toBeLessThanOrEqual(0.00051)
    expect(Math.abs(chiSquaredQuantile(0.975, nu) - high)).toBeLessThanOrEqual(0.00051)
  })

  // Six decimals, computed with scipy 1.17.1 (scipy.stats.chi2.ppf).
  it.each([
    [1, 0.5, 0.454936],
    [2, 0.025, 0.050636],
    [19, 0.025, 8.906516],
    [49, 0.975, 70.222414],
    [199, 0.025, 161.826182],
    [199, 0.975, 239.959682],
  ])('agrees with scipy for %s degrees of freedom at %s', (nu, p, value) => {
    expect(Math.abs(chiSquaredQuantile(p, nu) - value)).toBeLessThanOrEqual(5.1e-7)
  })

  it('is 1 − e^(−x/2) for two degrees of freedom', () => {
    for (const x of [0, 0.1, 1, 5, 50, 1500])
      expect(chiSquaredCdf(x, 2)).toBeCloseTo(1 - Math.exp(-x / 2), 14)
  })

  it('refuses what it has no form for', () => {
    for (const nu of [0, 2.5, 501]) expect(() => chiSquaredCdf(1, nu)).toThrow(RangeError)
    expect(() => chiSquaredCdf(-1, 2)).toThrow(RangeError)
  })
})
