import { describe, expect, it } from 'vitest'
import {
  bisquareInfluence,
  bisquareWeight,
  huberWeight,
  robustSigma,
} from '../../../../src/core/scan/robust-weights'
import { seededRandom } from '../../../proof/seeded-random'

describe('robust weights', () => {
  it('are whole near nothing and fall as their functions say', () => {
    expect(huberWeight(1.3)).toBe(1)
    expect(huberWeight(-2.69)).toBeCloseTo(0.5, 12)
    expect(bisquareWeight(0)).toBe(1)
    expect(bisquareWeight(4.685 / 2)).toBeCloseTo(0.5625, 12)
    expect(bisquareWeight(-4.7)).toBe(0)
  })

  // Beaton and Tukey (1974), Holland and Welsch (1977), from memory: these bends have 95 % efficiency on normal errors.
  it('cost a twentieth of what normal errors tell, by quadrature', () => {
    const influence = { huber: [0, 0], bisquare: [0, 0] }
    for (let t = -9; t < 9; t += 0.001) {
      const density = (0.001 * Math.exp((-t * t) / 2)) / Math.sqrt(2 * Math.PI)
      const { psi, slope } = bisquareInfluence(t)
      influence.bisquare[0] = (influence.bisquare[0] ?? 0) + density * psi * psi
      influence.bisquare[1] = (influence.bisquare[1] ?? 0) + density * slope
      influence.huber[0] = (influence.huber[0] ?? 0) + density * (t * huberWeight(t)) ** 2
      influence.huber[1] = (influence.huber[1] ?? 0) + density * (huberWeight(t) === 1 ? 1 : 0)
    }
    for (const [squares = 0, slope = 0] of Object.values(influence))
      expect(slope ** 2 / squares).toBeCloseTo(0.95, 2)
  })

  it('have an influence that is the weight times the residual, and its slope', () => {
    for (const t of [-3, -0.4, 0, 1, 2.5, 4.6, 5]) {
      const { psi, slope } = bisquareInfluence(t)
      expect(psi).toBeCloseTo(t * bisquareWeight(t), 12)
      const step = 1e-6
      const rise = (t + step) * bisquareWeight(t + step) - (t - step) * bisquareWeight(t - step)
      expect(slope).toBeCloseTo(rise / (2 * step), 6)
    }
  })
})

describe('the robust standard deviation', () => {
  it('is 1.4826 times the middle absolute value, as a plain sort finds it, 200 cases from seed 121', () => {
    const random = seededRandom(121)
    for (let i = 0; i < 200; i++) {
      const values = Float64Array.from({ length: 1 + (i % 40) }, () => Math.round(random.normal(4)))
      const sorted = Array.from(values, Math.abs).sort((a, b) => a - b)
      const scratch = new Float64Array(values.length)
      expect(robustSigma(values, scratch)).toBeCloseTo(1.4826022185 * (sorted[values.length >> 1] ?? 0), 8)
    }
  })

  it('is that of a plain sort for many values too, with many alike, in order and in reverse, 30 cases from seed 123', () => {
    const random = seededRandom(123)
    for (let i = 0; i < 30; i++) {
      const coarse = i % 3 === 0 ? 1 : 1000
      const drawn = Float64Array.from(
        { length: 1000 + 977 * i },
        () => Math.round(random.normal(4) * coarse) / coarse,
      )
      const sorted = drawn.map(Math.abs).sort()
      const values = i % 4 === 1 ? drawn.toSorted() : i % 4 === 2 ? drawn.toSorted().reverse() : drawn
      const sigma = robustSigma(values, new Float64Array(values.length))
      expect(sigma).toBeCloseTo(1.4826022185 * (sorted[values.length >> 1] ?? 0), 8)
    }
  })

  it('leaves missing values out and is not moved by a third of them standing far off, seed 122', () => {
    const random = seededRandom(122)
    const values = Float64Array.from({ length: 9000 }, (_, i) =>
      i % 3 === 0 ? 500 : i % 50 === 0 ? Number.NaN : random.normal(2),
    )
    const sigma = robustSigma(values, new Float64Array(9000))
    expect(sigma).toBeGreaterThan(2)
    // Half of the values lie below the three-quarter point of those that are left.
    expect(sigma).toBeLessThan(3.5)
    expect(() => robustSigma(Float64Array.of(Number.NaN), new Float64Array(1))).toThrow(RangeError)
  })
})
