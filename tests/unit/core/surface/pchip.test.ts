import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type MonotoneCubic, pchip, periodicPchip, valueAt } from '../../../../src/core/surface/pchip'
import { runCount } from '../../../proof/run-count'

const seed = 20240611
const numRuns = runCount({ quick: 300, full: 20_000 })

describe('a monotone cubic along a line', () => {
  it('is the straight line through two points', () => {
    const curve = pchip([2, 6], [10, 30])
    expect([2, 3, 4, 5, 6].map((x) => valueAt(curve, x))).toEqual([10, 15, 20, 25, 30])
  })

  it('is constant through one point', () => {
    expect([-1, 3, 9].map((x) => valueAt(pchip([3], [54.012]), x))).toEqual([54.012, 54.012, 54.012])
  })

  it('is held constant before the first and past the last point', () => {
    const curve = pchip([0, 1, 3], [5, 2, 4])
    expect([-10, 0, 3, 40].map((x) => valueAt(curve, x))).toEqual([5, 5, 4, 4])
  })

  it('turns flat at a change of sign and at the foot of a plateau', () => {
    const curve = pchip([0, 1, 2, 3, 4], [0, 2, 1, 1, 3])
    expect(Array.from(curve.slopes.slice(1, 4))).toEqual([0, 0, 0])
  })

  it('takes at most three secants as its slope at an end whose neighbour turns, and no slope of the other sign', () => {
    expect(pchip([0, 10, 10.1], [0, 1, -99]).slopes[0]).toBeCloseTo(0.3, 12)
    expect(pchip([0, 1, 2], [0, 1, 11]).slopes[0]).toBe(0)
  })

  it.each([
    ['no point', [], []],
    ['knots that stand still', [1, 1], [0, 0]],
    ['knots that fall', [2, 1], [0, 0]],
    ['a knot that is no number', [0, Number.NaN], [0, 0]],
    ['a value that is no number', [0, 1], [0, Number.NaN]],
    ['an infinite value', [0, 1], [0, Number.POSITIVE_INFINITY]],
    ['more knots than values', [0, 1], [0]],
  ])('refuses %s', (_, knots, values) => {
    expect(() => pchip(knots, values)).toThrow(/^pchip: expected/)
  })
})

describe('a monotone cubic around a turn', () => {
  it('has zero slopes through two points, so that it passes half-way between them', () => {
    const curve = periodicPchip([0, 90], [54.02, 54.01], 180)
    expect(Array.from(curve.slopes)).toEqual([0, 0])
    expect(valueAt(curve, 45)).toBeCloseTo(54.015, 12)
    expect(valueAt(curve, 135)).toBeCloseTo(54.015, 12)
  })

  it('is constant through one point', () => {
    expect([0, 17, 200].map((x) => valueAt(periodicPchip([30], [54], 180), x))).toEqual([54, 54, 54])
  })

  it('refuses knots that span a whole period', () => {
    expect(() => periodicPchip([0, 90, 180], [1, 2, 1], 180)).toThrow(/within one period/)
  })
})

const values = (count: number) =>
  fc.array(fc.integer({ min: -40, max: 40 }), { minLength: count, maxLength: count })
const steps = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 8 })
const points = steps
  .chain((widths) => fc.tuple(fc.constant(widths), values(widths.length)))
  .map(([widths, heights]) => {
    let x = 0
    const knots = widths.map((width) => {
      x += width
      return x
    })
    return { knots, values: heights, period: x + 7 }
  })
const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 20, maxLength: 20 })

function eachCurve(
  check: (curve: MonotoneCubic, p: { knots: number[]; values: number[] }, at: number[]) => void,
) {
  fc.assert(
    fc.property(points, shares, (p, at) => {
      check(pchip(p.knots, p.values), p, at)
      check(periodicPchip(p.knots, p.values, p.period), p, at)
    }),
    { seed, numRuns },
  )
}

describe(`every monotone cubic (seed ${seed})`, () => {
  it('passes through its points exactly, in any turn', () => {
    eachCurve((curve, p) => {
      p.knots.forEach((knot, i) => {
        expect(valueAt(curve, knot)).toBe(p.values[i])
        if (curve.period) expect(valueAt(curve, knot - 3 * curve.period)).toBe(p.values[i])
      })
    })
  })

  it('stays within the two points on either side and runs one way between them', () => {
    eachCurve((curve, p, at) => {
      const count = curve.period ? p.knots.length : p.knots.length - 1
      for (let i = 0; i < count; i++) {
        const from = p.knots[i] ?? 0
        const to = p.knots[i + 1] ?? (p.knots[0] ?? 0) + (curve.period ?? 0)
        const heights = [p.values[i] ?? 0, p.values[(i + 1) % p.values.length] ?? 0]
        const between = [...at]
          .sort((a, b) => a - b)
          .map((share) => valueAt(curve, from + share * (to - from)))
        for (const y of between) {
          expect(y).toBeGreaterThanOrEqual(Math.min(...heights))
          expect(y).toBeLessThanOrEqual(Math.max(...heights))
        }
        const way = Math.sign((heights[1] ?? 0) - (heights[0] ?? 0))
        between.forEach((y, k) => {
          if (k > 0) expect(way * (y - (between[k - 1] ?? 0))).toBeGreaterThanOrEqual(-1e-12)
        })
      }
    })
  })

  it('is turned over with its points: reversed knots and negated values give the same curve', () => {
    eachCurve((curve, p, at) => {
      const knots = p.knots.map((knot) => -knot).reverse()
      const heights = p.values.map((value) => -value).reverse()
      const mirrored = curve.period ? periodicPchip(knots, heights, curve.period) : pchip(knots, heights)
      for (const share of at) {
        const x = (p.knots[0] ?? 0) + share * 200
        expect(valueAt(mirrored, -x)).toBeCloseTo(-valueAt(curve, x), 10)
      }
    })
  })

  it('moves with its values, by a large offset too', () => {
    eachCurve((curve, p, at) => {
      const raised = p.values.map((value) => value + 54_000)
      const moved = curve.period ? periodicPchip(p.knots, raised, curve.period) : pchip(p.knots, raised)
      for (const share of at) {
        expect(valueAt(moved, share * 400)).toBeCloseTo(valueAt(curve, share * 400) + 54_000, 8)
      }
    })
  })
})
