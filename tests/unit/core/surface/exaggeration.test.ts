import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  diametersShown,
  drawnDiameter,
  exaggerationEnd,
  exaggerationOf,
  isoStep,
  middleOf,
} from '../../../../src/core/surface/exaggeration'
import { runCount } from '../../../proof/run-count'
import { inventedCylinder, made } from './invented-cylinder'

const seed = 20240612
const numRuns = runCount({ quick: 500, full: 50_000 })

describe('the middle diameter', () => {
  const { finding } = made({
    spots: [
      { depthMm: 8, axisDegrees: 0, diameterMm: 54.02 },
      { depthMm: 8, axisDegrees: 90, diameterMm: 54.04 },
      { depthMm: 40, axisDegrees: 90, diameterMm: 60, counted: false },
    ],
  })

  it('is the middle of the pair, whatever was read', () => {
    expect(middleOf({ kind: 'wear', minMm: 54, maxMm: 54.05 }, [finding])).toBeCloseTo(54.025, 12)
    expect(middleOf({ kind: 'band', minMm: 54, maxMm: 54.012 }, [])).toBeCloseTo(54.006, 12)
  })

  it('is the middle of one limit and the counted readings where the other limit is missing', () => {
    expect(middleOf({ kind: 'wear', maxMm: 54.06 }, [finding])).toBeCloseTo(54.04, 12)
  })

  it('is the middle of the counted readings where there are no limits', () => {
    expect(middleOf(undefined, [finding])).toBeCloseTo(54.03, 12)
  })

  it('is not known without limits and readings', () => {
    expect(middleOf(undefined, [])).toBeUndefined()
  })
})

describe('the diameters shown', () => {
  it('are every limit and every counted reading', () => {
    const { finding } = inventedCylinder({
      pair: { kind: 'wear', minMm: 54, maxMm: 54.05, newMaxMm: 54.012 },
    })
    const shown = diametersShown([finding])
    expect(shown).toHaveLength(24)
    expect(shown.slice(0, 3)).toEqual([54, 54.05, 54.012])
  })
})

describe('the exaggeration', () => {
  it('of the invented cylinder, 54.000 to the wear limit 54.050, is 500: its shell stands 12.5 of 16.2 mm out', () => {
    const { finding } = inventedCylinder()
    expect(exaggerationOf(54.025, diametersShown([finding]))).toBe(500)
  })

  it('is inclusive: 0.015 mm on 50 mm at 1000 is 0.30 of the diameter exactly', () => {
    expect(exaggerationOf(50, [49.985, 50.015])).toBe(1000)
    expect(exaggerationOf(50, [50.0150001])).toBe(500)
  })

  it('falls below 1 where a slip puts a reading far off', () => {
    expect(exaggerationOf(54, [104])).toBe(0.2)
  })

  it('is 1 where nothing differs from the middle, and so is the end of the slider', () => {
    for (const diameters of [[], [54], [54, 54 + 1e-9]]) {
      expect(exaggerationOf(54, diameters)).toBe(1)
      expect(exaggerationEnd(54, diameters)).toBe(1)
    }
  })

  it('ends where the furthest wall is drawn at 0.2 or 1.8 of the radius', () => {
    const end = exaggerationEnd(54, [53.99, 54.005])
    expect(drawnDiameter(54, end, 53.99) / 54).toBeCloseTo(0.2, 9)
    expect(drawnDiameter(54, exaggerationEnd(54, [54.01]), 54.01) / 54).toBeCloseTo(1.8, 9)
  })

  it('draws the middle as it is, and everything as it is at 1', () => {
    expect(drawnDiameter(54, 500, 54)).toBe(54)
    expect(drawnDiameter(54, 1, 54.02)).toBeCloseTo(54.02, 12)
    expect(drawnDiameter(54, 500, 54.02)).toBeCloseTo(64, 9)
  })

  it.each([0, -1, Number.NaN])('refuses a middle of %d mm', (middle) => {
    expect(() => exaggerationOf(middle, [54])).toThrow(RangeError)
  })

  it(`is always the largest round factor that fits, and below the end of the slider (seed ${seed})`, () => {
    const middles = fc.double({ min: 5, max: 500, noNaN: true })
    const spreads = fc.double({ min: 2e-5, max: 20, noNaN: true })
    fc.assert(
      fc.property(middles, spreads, (middle, spread) => {
        const factor = exaggerationOf(middle, [middle, middle + spread])
        const digit = Number(factor.toExponential()[0])
        const next = digit === 2 ? 2.5 : 2
        expect(factor * spread).toBeLessThanOrEqual(0.3 * middle * (1 + 1e-6))
        expect(factor * next * spread).toBeGreaterThan(0.3 * middle * (1 - 1e-6))
        expect(factor).toBeLessThan(exaggerationEnd(middle, [middle + spread]))
        expect([1, 2, 5]).toContain(digit)
      }),
      { seed, numRuns },
    )
  })
})

describe('the step of the iso-lines', () => {
  it.each([
    [24, 2],
    [50, 5],
    [80, 10],
    [8, 1],
    [1700, 200],
  ])('over %d µm is %d µm', (span, step) => {
    expect(isoStep(span)).toBe(step)
  })

  it.each([7, 3, 0.9, 1e-12, 0])(
    'is 1 µm over %d µm: lines closer than a gauge can prove would show a form that nobody measured',
    (span) => {
      expect(isoStep(span)).toBe(1)
    },
  )

  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('refuses a span of %d', (span) => {
    expect(() => isoStep(span)).toThrow(RangeError)
  })

  it(`is a whole number of µm and gives about 6 to 12 lines from 5.3 µm on, never under 5.3 or over 13.5 (seed ${seed})`, () => {
    fc.assert(
      fc.property(fc.double({ min: 5.31, max: 1e5, noNaN: true }), (span) => {
        expect(isoStep(span) % 1).toBe(0)
        const lines = span / isoStep(span)
        expect(lines).toBeGreaterThan(5.3)
        expect(lines).toBeLessThan(13.5)
      }),
      { seed, numRuns },
    )
  })
})
