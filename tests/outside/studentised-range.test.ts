import quantileOfLibrary from '@stdlib/stats-base-dists-studentized-range-quantile'
import { describe, expect, it } from 'vitest'
import { normalCdf, normalCdfTabulated } from '../../src/core/statistics/normal'
import { studentisedRangeCdf, studentisedRangeQuantile } from '../../src/core/statistics/studentised-range'
import reference from './data/studentised-range.json' with { type: 'json' }

const infinite = Number.POSITIVE_INFINITY

/** Values from scipy 1.17.1; the script that wrote them lies beside them. */
const rows = reference.quantiles.map(({ p, m, nu, q }) => ({ p, m, nu: nu ?? infinite, q }))

describe('the studentised range against scipy 1.17.1', () => {
  it.each([...new Set(rows.map((row) => row.nu))])('agrees to 1e-4 at ν = %s, for 2 to 40 values', (nu) => {
    const own = rows.filter((row) => row.nu === nu)
    expect(own.length).toBeGreaterThan(30)
    for (const { p, m, q } of own) {
      expect(Math.abs(studentisedRangeQuantile(p, m, nu) - q), `p ${p}, ${m} values`).toBeLessThan(1e-4)
    }
  })

  it('agrees with tables to their two decimals: 3.63 for 4 values and 4.53 at ν = 8, at 0.95', () => {
    // Printed tables of the studentised range, from memory.
    expect(studentisedRangeQuantile(0.95, 4, infinite)).toBeCloseTo(3.63, 2)
    expect(studentisedRangeQuantile(0.95, 4, 8)).toBeCloseTo(4.53, 2)
  })

  it('is √2 times Student for two values', () => {
    // t_0.975 from GUM (JCGM 100:2008) table G.2 with more digits.
    expect(studentisedRangeQuantile(0.95, 2, infinite)).toBeCloseTo(Math.SQRT2 * 1.959963985, 6)
    expect(studentisedRangeQuantile(0.95, 2, 8)).toBeCloseTo(Math.SQRT2 * 2.306004135, 6)
  })

  it('agrees to 0.005 with the approximate routine of @stdlib, a second library', () => {
    for (const nu of [8, 10, 20, 42]) {
      for (const m of [2, 4, 8, 16]) {
        const library = quantileOfLibrary(0.95, m, nu)
        expect(Math.abs(studentisedRangeQuantile(0.95, m, nu) - library), `${m}, ν ${nu}`).toBeLessThan(0.005)
      }
    }
  })

  it('has a probability that its own quantile finds back', () => {
    for (const { p, m, nu } of rows) {
      expect(studentisedRangeCdf(studentisedRangeQuantile(p, m, nu), m, nu)).toBeCloseTo(p, 5)
    }
  })
})

describe('the normal distribution against scipy 1.17.1', () => {
  it('agrees to 1e-15, and tabulated to 3e-10', () => {
    for (const [z, p] of reference.normal) {
      if (z === undefined || p === undefined) throw new Error('a row without two numbers')
      expect(Math.abs(normalCdf(z) - p)).toBeLessThan(1e-15)
      expect(Math.abs(normalCdfTabulated(z) - p)).toBeLessThan(3e-10)
    }
  })

  it('stays within 3e-10 between the rows of its table', () => {
    let worst = 0
    for (let z = -9.5; z <= 9.5; z += 0.00137) {
      worst = Math.max(worst, Math.abs(normalCdfTabulated(z) - normalCdf(z)))
    }
    expect(worst).toBeLessThan(3e-10)
  })
})
