import { describe, expect, it } from 'vitest'
import { pchip, periodicPchip, valueAt } from '../../src/core/surface/pchip'
import published from './data/monotone-interpolation.json'

describe('the monotone cubic', () => {
  it.each(published.sets)(
    'agrees with PchipInterpolator of SciPy 1.17.1 to 1e-12 on the points $name',
    ({ x, y, slopes, at, expected }) => {
      const curve = pchip(x, y)
      at.forEach((place, i) => {
        expect(valueAt(curve, place)).toBeCloseTo(expected[i] ?? Number.NaN, 12)
      })
      slopes.forEach((slope, i) => {
        expect(curve.slopes[i]).toBeCloseTo(slope, 12)
      })
    },
  )

  it('is the one with slopes by weighted harmonic mean: 11.7696 at 10 on AKIMA3, where other monotone cubics give 11.8750 and 11.1913', () => {
    const set = published.sets.find(({ name }) => name === 'AKIMA3')
    expect(valueAt(pchip(set?.x ?? [], set?.y ?? []), 10)).toBeCloseTo(11.76955013, 8)
  })

  it.each([
    ['RPN14', 0, 0.999994],
    ['AKIMA3', 10, 85],
  ])('does not overshoot the points %s, where a natural cubic does', (wanted, smallest, largest) => {
    const set = published.sets.find(({ name }) => name === wanted)
    const curve = pchip(set?.x ?? [], set?.y ?? [])
    for (let x = 2; x <= 21; x += 0.01) {
      expect(valueAt(curve, x)).toBeGreaterThanOrEqual(smallest)
      expect(valueAt(curve, x)).toBeLessThanOrEqual(largest)
    }
  })
})

describe('the periodic monotone cubic', () => {
  it.each(published.periodic.sets)(
    'agrees to 1e-12 with PchipInterpolator of SciPy 1.10.1 on three turns of $name',
    ({ x, y, slopes, at, expected }) => {
      const curve = periodicPchip(x, y, published.periodic.period)
      at.forEach((place, i) => {
        expect(valueAt(curve, place)).toBeCloseTo(expected[i] ?? Number.NaN, 12)
        expect(valueAt(curve, place + 360)).toBeCloseTo(expected[i] ?? Number.NaN, 12)
      })
      slopes.forEach((slope, i) => {
        expect(curve.slopes[i]).toBeCloseTo(slope, 12)
      })
    },
  )
})
