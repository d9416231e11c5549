import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { choleskyFactor, solvedBy } from '../../../../src/core/statistics/cholesky'
import { wallCorrelation } from '../../../../src/core/surface/wall-correlation'

const seed = 20260502

describe('Cholesky’s factor', () => {
  it('is that of a textbook example in whole numbers (a common one, from memory)', () => {
    const { lower } = choleskyFactor(Float64Array.of(4, 12, -16, 12, 37, -43, -16, -43, 98), 3)
    expect([...lower]).toEqual([2, 0, 0, 6, 1, 0, -8, 5, 3])
  })

  it('solves for what a matrix was multiplied by', () => {
    const factor = choleskyFactor(Float64Array.of(4, 12, -16, 12, 37, -43, -16, -43, 98), 3)
    // K·(1, −2, 3) by hand.
    const solved = solvedBy(factor, [4 - 24 - 48, 12 - 74 - 129, -16 + 86 + 294])
    ;[1, -2, 3].forEach((expected, i) => {
      expect(solved[i]).toBeCloseTo(expected, 9)
    })
    expect(() => solvedBy(factor, [1])).toThrow('expected 3 values, got 1')
  })

  it(`is had of the correlations of any places at ragged levels and axes, and refused of one taken twice (seed ${seed})`, () => {
    const places = fc.uniqueArray(
      fc.tuple(fc.integer({ min: 0, max: 900 }), fc.integer({ min: 0, max: 179 })),
      { minLength: 2, maxLength: 40, selector: ([depth, axis]) => depth * 180 + axis },
    )
    fc.assert(
      fc.property(places, (found) => {
        const correlations = (of: readonly (readonly [number, number])[]) =>
          Float64Array.from(
            of.flatMap(([depth, axis]) =>
              of.map(([other, otherAxis]) =>
                wallCorrelation((depth - other) / 10, ((axis - otherAxis) * Math.PI) / 180, Math.PI),
              ),
            ),
          )
        expect(() => choleskyFactor(correlations(found), found.length)).not.toThrow()
        const twice = [...found, ...found.slice(0, 1)]
        expect(() => choleskyFactor(correlations(twice), twice.length)).toThrow('positive definite')
        const { lower } = choleskyFactor(correlations(twice), twice.length, true)
        expect(lower.every(Number.isFinite)).toBe(true)
        expect(lower[lower.length - 1]).toBe(0)
      }),
      { seed, numRuns: 60 },
    )
  })

  it('is refused of a matrix that is not positive definite, or not as large as said', () => {
    expect(() => choleskyFactor(Float64Array.of(1, 2, 2, 1), 2)).toThrow('positive definite')
    expect(() => choleskyFactor(Float64Array.of(1, 2, 2, 1), 2, true)).toThrow('positive definite')
    expect(() => choleskyFactor(Float64Array.of(1, 2), 2)).toThrow('expected 2 × 2 entries')
  })
})
