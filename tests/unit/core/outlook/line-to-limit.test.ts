import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { covarianceInverse } from '../../../../src/core/outlook/covariance-inverse'
import { lineToLimit } from '../../../../src/core/outlook/line-to-limit'
import { runCount } from '../../../proof/run-count'

const z = 1.6448536269514722
const seed = 6001

function two(
  h: readonly [number, number],
  w: readonly [number, number],
  u: readonly [number, number],
  limit: number,
  c = 0,
) {
  const covariance = [
    [u[0] ** 2, c],
    [c, u[1] ** 2],
  ]
  return lineToLimit({ hours: h, sizes: w, covariance, limit, factor: z })
}

describe('two sizes and a limit (own computation)', () => {
  it('10 to 11 µm in 500 h, each ± u of 2, limit 50: the slope says nothing, and the earliest is 3,237 h ahead', () => {
    const found = two([0, 500], [10, 11], [2, 2], 50)
    expect(found.g).toBeCloseTo(21.6, 1)
    expect((found.earliest ?? 0) - 500).toBeCloseTo(3237, 0)
    expect(found.now).toBe(false)
    expect([found.expected, found.latest]).toEqual([undefined, undefined])
  })

  it('54.004 to 54.0299 in 185 h, limit 54.050: the line says 144 h more, the bound 88 h', () => {
    const line = two([0, 185], [54.004, 54.0299], [1e-7, 1e-7], 54.05)
    expect((line.expected ?? 0) - 185).toBeCloseTo(143.6, 1)
    const doubtful = two([0, 185], [54.004, 54.0299], [0.0024, 0.0034], 54.05, 0)
    expect(doubtful.earliest).toBeLessThan(line.expected ?? 0)
    expect(doubtful.latest).toBeGreaterThan(line.expected ?? 0)
  })

  it('solve the quadratic equation of the two sizes, whatever they share', () => {
    const [h1, h2, w1, w2, limit, u1, u2, c] = [100, 400, 8, 20, 60, 2.5, 2, 3] as const
    const found = two([h1, h2], [w1, w2], [u1, u2], limit, c)
    const x = ((found.earliest ?? 0) - h2) / (h2 - h1)
    const [d, rest] = [w2 - w1, limit - w2]
    const equation =
      (d * d - z * z * (u1 * u1 + u2 * u2 - 2 * c)) * x * x -
      2 * (rest * d + z * z * (u2 * u2 - c)) * x +
      (rest * rest - z * z * u2 * u2)
    expect(equation).toBeCloseTo(0, 6)
    expect(rest - x * d).toBeGreaterThanOrEqual(0)
  })

  it('are now where the last is within its bound of the limit', () => {
    expect(two([0, 500], [10, 47], [2, 2], 50).now).toBe(true)
    expect(two([0, 500], [10, 46], [2, 2], 50).now).toBe(false)
  })

  it('give no time where the wear has shrunk beyond doubt', () => {
    const found = two([0, 500], [30, 10], [1, 1], 50)
    expect([found.earliest, found.expected, found.latest, found.now]).toEqual([
      undefined,
      undefined,
      undefined,
      false,
    ])
  })

  it('refuse a time of no length, and doubt that is no covariance', () => {
    expect(() => two([5, 5], [1, 2], [1, 1], 5)).toThrow(RangeError)
    expect(() => two([0, 5], [1, 2], [1, 1], 5, 1)).toThrow(/positive definite/)
  })
})

describe('many sizes', () => {
  it('of which the middle one is off leave a misfit: 93 against 5.99 for four sizes ± 3 µm (own computation)', () => {
    // Sizes on two lines, slow and then fast, in µm: what they leave over of one line, in units of 3 µm squared.
    const hours = [0, 1000, 2000, 3000]
    const sizes = [0, 5, 10, 60]
    const covariance = hours.map((_, i) => hours.map((__, j) => (i === j ? 9 : 0)))
    const found = lineToLimit({ hours, sizes, covariance, limit: 200, factor: z })
    // Residuals of the least-squares line 18.5·x/1000 − 9: 9, −4.5, −18, 13.5.
    expect(found.misfit).toBeCloseTo((9 ** 2 + 4.5 ** 2 + 18 ** 2 + 13.5 ** 2) / 9, 9)
    expect(found.slope * 1000).toBeCloseTo(18.5, 9)
  })

  it(`give the same hours in any unit of size, and later hours for a later start, seed ${seed}`, () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.5, max: 50, noNaN: true }), { minLength: 2, maxLength: 6 }),
        fc.double({ min: 0.001, max: 1000, noNaN: true }),
        fc.double({ min: -500, max: 500, noNaN: true }),
        (steps, scale, later) => {
          const hours = steps.map((_, i) => i * 100 + 7 * i * i)
          const sizes = steps.map((_, i) => steps.slice(0, i + 1).reduce((sum, step) => sum + step, 0))
          const covariance = hours.map((_, i) => hours.map((__, j) => (i === j ? 4 + i : 1)))
          const limit = 400
          const one = lineToLimit({ hours, sizes, covariance, limit, factor: z })
          const other = lineToLimit({
            hours: hours.map((h) => h + later),
            sizes: sizes.map((size) => size * scale),
            covariance: covariance.map((row) => row.map((v) => v * scale * scale)),
            limit: limit * scale,
            factor: z,
          })
          expect(other.earliest === undefined).toBe(one.earliest === undefined)
          if (one.earliest !== undefined && one.earliest < 1e6) {
            expect(Math.abs((other.earliest ?? 0) - later - one.earliest)).toBeLessThan(
              1e-4 * (1 + one.earliest),
            )
          }
          expect(Math.abs(other.misfit - one.misfit)).toBeLessThan(1e-6 * (1 + one.misfit))
        },
      ),
      { seed, numRuns: runCount({ quick: 200, full: 5000 }) },
    )
  })

  it('have the inverse of their covariance to twelve digits', () => {
    const covariance = [
      [4, 1, 0.5],
      [1, 5, 1],
      [0.5, 1, 6],
    ]
    const inverse = covarianceInverse(covariance)
    covariance.forEach((row, i) => {
      row.forEach((_, j) => {
        const product = row.reduce((sum, value, k) => sum + value * (inverse[k]?.[j] ?? 0), 0)
        expect(product).toBeCloseTo(i === j ? 1 : 0, 12)
      })
    })
  })
})
