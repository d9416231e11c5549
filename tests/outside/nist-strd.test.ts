import { describe, expect, it } from 'vitest'
import { scatter, standardDeviation } from '../../src/core/statistics/scatter'
import { straightLine } from '../../src/core/statistics/straight-line'
import reference from './data/nist-strd.json' with { type: 'json' }

function expectRelative(found: number, certified: number, tolerance: number): void {
  expect(Math.abs(found / certified - 1)).toBeLessThanOrEqual(tolerance)
}

/** The first value is the mean; then 500 pairs a tenth below and above it. */
function numAcc(mean: number): number[] {
  const tenths = Math.round(mean * 10)
  return [mean, ...Array.from({ length: 1000 }, (_, i) => (tenths + (i % 2 === 0 ? -1 : 1)) / 10)]
}

describe('mean and standard deviation against the NIST Statistical Reference Datasets', () => {
  // The scatter of repeats in a survey and that of a gauge check run through these functions.
  it.each(Object.entries(reference.univariate))('agree with the certified values of %s', (_, set) => {
    expectRelative(scatter(set.data).mean, set.mean, 1e-14)
    expectRelative(standardDeviation(set.data), set.deviation, 1e-12)
  })

  // 10000000.1 has no double of its own: what is left over comes from the values, not from the arithmetic.
  it.each([
    ['NumAcc2', 1.2, 1e-12],
    ['NumAcc3', 1_000_000.2, 1e-9],
    ['NumAcc4', 10_000_000.2, 1e-8],
  ])('agree with the certified 0.1 of %s, built as NIST describes it', (_, mean, tolerance) => {
    const values = numAcc(mean)
    expect(values).toHaveLength(1001)
    expectRelative(scatter(values).mean, mean, 1e-14)
    expectRelative(standardDeviation(values), 0.1, tolerance)
  })
})

describe('a straight line against the NIST Statistical Reference Datasets', () => {
  // The drift over the order of a gauge check runs through this function.
  it('agrees with the certified values of Norris in ten digits', () => {
    const { rows_y_x: rows, intercept, slope, residualDeviation } = reference.norris
    const line = straightLine(
      rows.map(([, x]) => x ?? Number.NaN),
      rows.map(([y]) => y ?? Number.NaN),
    )
    expect(rows).toHaveLength(36)
    expectRelative(line.intercept, intercept[0] ?? 0, 1e-10)
    expectRelative(line.interceptDeviation, intercept[1] ?? 0, 1e-10)
    expectRelative(line.slope, slope[0] ?? 0, 1e-10)
    expectRelative(line.slopeDeviation, slope[1] ?? 0, 1e-10)
    expectRelative(line.residualDeviation, residualDeviation, 1e-10)
    expect(line.degreesOfFreedom).toBe(34)
  })
})
