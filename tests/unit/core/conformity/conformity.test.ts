import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { conformity, type Doubtful, doubtEdges } from '../../../../src/core/conformity/conformity'
import type { LimitPair } from '../../../../src/core/findings'
import { studentQuantile } from '../../../../src/core/statistics/student'
import { runCount } from '../../../proof/run-count'

const seed = 20260107
const numRuns = runCount({ quick: 200, full: 10_000 })
const doubtful = fc.record({
  value: fc.double({ min: -0.05, max: 0.08, noNaN: true }),
  standardUncertainty: fc.double({ min: 0.0005, max: 0.02, noNaN: true }),
  degreesOfFreedom: fc.oneof(fc.integer({ min: 1, max: 200 }), fc.constant(Number.POSITIVE_INFINITY)),
})
const limits = { min: 0, max: 0.03 }
const band: LimitPair = { kind: 'band', minMm: 0, maxMm: 0.03 }

describe(`conformity (seed ${seed})`, () => {
  it('has three probabilities that make one, and a verdict where one of them reaches 95 %', () => {
    fc.assert(
      fc.property(doubtful, (y) => {
        const c = conformity(y, limits)
        expect(c.probabilityInside + c.probabilityAbove + c.probabilityBelow).toBeCloseTo(1, 12)
        const most = Math.max(c.probabilityInside, c.probabilityAbove, c.probabilityBelow)
        expect(c.leanProbability).toBe(most)
        expect(c.verdict).toBe(most >= 0.95 ? c.lean : 'too-close')
      }),
      { seed, numRuns },
    )
  })

  it('is settled by the U it names, and by no larger one', () => {
    fc.assert(
      fc.property(doubtful, (y) => {
        const { verdict, settledByExpandedMm: settled, lean } = conformity(y, limits)
        if (verdict !== 'too-close') expect(settled).toBeUndefined()
        if (settled === undefined) return
        const withExpanded = (expanded: number): Doubtful => ({
          ...y,
          standardUncertainty: expanded / studentQuantile(0.975, y.degreesOfFreedom),
        })
        expect(conformity(withExpanded(settled * 0.9999), limits).verdict).toBe(lean)
        expect(conformity(withExpanded(settled * 1.0001), limits).verdict).toBe('too-close')
      }),
      { seed, numRuns },
    )
  })

  it('changes its verdict exactly at the edges that the picture draws', () => {
    fc.assert(
      fc.property(doubtful, (y) => {
        const edges = doubtEdges(y, band)
        const at = (value: number) => conformity({ ...y, value }, limits).verdict
        const step = 1e-5 * y.standardUncertainty
        expect(at(edges.aboveFirmMm + step)).toBe('above')
        expect(at(edges.aboveFirmMm - step)).not.toBe('above')
        expect(at(edges.belowFirmMm - step)).toBe('below')
        expect(at(edges.belowFirmMm + step)).not.toBe('below')
        if (edges.insideFromMm > edges.insideToMm) {
          expect(at(0.015)).toBe('too-close')
          return
        }
        expect(at(Math.min(edges.insideFromMm + step, 0.015))).toBe('inside')
        expect(at(edges.insideFromMm - step)).toBe('too-close')
        expect(at(Math.max(edges.insideToMm - step, 0.015))).toBe('inside')
        expect(at(edges.insideToMm + step)).toBe('too-close')
      }),
      { seed, numRuns },
    )
  })
})

describe('conformity at its edges', () => {
  it('is too close exactly on a limit, and no smaller doubt would settle it', () => {
    const found = conformity({ value: 0.03, standardUncertainty: 0.001, degreesOfFreedom: 20 }, { max: 0.03 })
    expect(found).toMatchObject({ verdict: 'too-close', probabilityAbove: 0.5 })
    expect(found).not.toHaveProperty('settledByExpandedMm')
  })

  it('knows without doubt on which side a value without doubt is', () => {
    const sure = { standardUncertainty: 0, degreesOfFreedom: Number.POSITIVE_INFINITY }
    expect(conformity({ value: 0.03, ...sure }, limits).verdict).toBe('inside')
    expect(conformity({ value: 0.0301, ...sure }, limits).verdict).toBe('above')
    expect(conformity({ value: -0.0001, ...sure }, limits).verdict).toBe('below')
  })

  it('draws beside a wear limit no doubt inside the smallest new size', () => {
    const y = { value: 0, standardUncertainty: 0.001, degreesOfFreedom: 20 }
    const edges = doubtEdges(y, { kind: 'wear', minMm: 0, maxMm: 0.05 })
    expect(edges.insideFromMm).toBe(edges.belowFirmMm)
    expect(edges.belowFirmMm).toBeLessThan(0)
    expect(doubtEdges(y, { kind: 'wear', maxMm: 0.05 }).insideFromMm).toBe(Number.NEGATIVE_INFINITY)
  })
})
