import { describe, expect, it } from 'vitest'
import { canProveInside, conformity, insideMargin } from '../../src/core/conformity/conformity'
import { normalCdf } from '../../src/core/statistics/normal'

const degreesOfFreedom = Number.POSITIVE_INFINITY

describe('conformance probability, JCGM 106:2012 clause 7 (inputs from memory)', () => {
  it('is 0.92 for a breakdown voltage of −5.47 V, u 0.05 V, against an upper limit of −5.40 V', () => {
    const y = { value: -5.47, standardUncertainty: 0.05, degreesOfFreedom }
    expect(conformity(y, { max: -5.4 }).probabilityInside).toBeCloseTo(0.919243, 6)
  })

  it('is 0.99 for a container that bursts at 509.7 kPa, u 8.6 kPa, against a lower limit of 490 kPa', () => {
    const y = { value: 509.7, standardUncertainty: 8.6, degreesOfFreedom }
    const found = conformity(y, { min: 490 })
    expect(found.probabilityInside).toBeCloseTo(0.98901, 6)
    expect(found.verdict).toBe('inside')
  })

  it('is 99.9 % sure of speeding past 100 km/h from a reading of 107 km/h on, u 2 % of it', () => {
    const at = (value: number) =>
      conformity({ value, standardUncertainty: 0.02 * value, degreesOfFreedom }, { max: 100 })
        .probabilityAbove
    expect(at(106.5876095)).toBeCloseTo(0.999, 8)
    expect(at(107)).toBeGreaterThan(0.999)
    expect(at(106)).toBeLessThan(0.999)
  })
})

describe('a bore 80 H7, 80.000 to 80.030 mm (ISO 286-1), u = 0.001 mm', () => {
  // Probabilities computed with scipy 1.17.1.
  it.each([
    [80.0, 0.5, 'too-close'],
    [80.005, 0.9999997133, 'inside'],
    [80.0283, 0.9554345372, 'inside'],
    [80.03, 0.5, 'too-close'],
    [80.0317, 0.0445654628, 'above'],
  ])(
    'is at %s mm within the band with the probability that the normal distribution gives',
    (value, p, verdict) => {
      const found = conformity(
        { value, standardUncertainty: 0.001, degreesOfFreedom },
        { min: 80, max: 80.03 },
      )
      expect(found.probabilityInside).toBeCloseTo(p, 8)
      expect(found.verdict).toBe(verdict)
    },
  )
})

describe('how far inside a narrow band a reading must lie for 95 %', () => {
  // Width over u against the margin in u: Φ(g) − Φ(g − T) = 0.95, solved with scipy 1.17.1.
  it.each([
    [20, 1.644853627],
    [10, 1.644853627],
    [8, 1.644853628],
    [6, 1.6449181169],
    [5, 1.6487665239],
    [4, 1.7962127206],
    [3.92, 1.9539376843],
  ])('is for a band of %s u the margin that proves it', (width, margin) => {
    expect(canProveInside(1, degreesOfFreedom, width)).toBe(true)
    expect(insideMargin(1, degreesOfFreedom, width)).toBeCloseTo(margin, 6)
    const at = (value: number) =>
      conformity({ value, standardUncertainty: 1, degreesOfFreedom }, { min: 0, max: width }).verdict
    expect(at(margin + 1e-5)).toBe('inside')
    expect(at(margin - 1e-4)).toBe('too-close')
  })

  it.each([3, 3.5, 3.9])('cannot be reached by any reading in a band of %s u', (width) => {
    expect(canProveInside(1, degreesOfFreedom, width)).toBe(false)
    expect(insideMargin(1, degreesOfFreedom, width)).toBeUndefined()
    const middle = conformity(
      { value: width / 2, standardUncertainty: 1, degreesOfFreedom },
      { min: 0, max: width },
    )
    expect(middle.verdict).toBe('too-close')
  })

  it('is at best 0.866386 in the middle of a band of 3 u', () => {
    const middle = conformity({ value: 1.5, standardUncertainty: 1, degreesOfFreedom }, { min: 0, max: 3 })
    expect(middle.probabilityInside).toBeCloseTo(0.866386, 6)
  })
})

describe('the default of ISO 14253-1:2017', () => {
  it('is a probability of 95 %, a guard band of 1.65 u beside a wide tolerance', () => {
    // 1.65 u and "≥ 95 %": as a public calibration procedure quotes p. 16 of ISO 14253-1:2017.
    expect(normalCdf(1.65)).toBeCloseTo(0.9505285, 7)
    const at = (value: number) =>
      conformity({ value, standardUncertainty: 1, degreesOfFreedom }, { max: 0 }).verdict
    expect(at(-1.65)).toBe('inside')
    expect(at(-1.64)).toBe('too-close')
    expect(at(1.64)).toBe('too-close')
    expect(at(1.65)).toBe('above')
  })
})
