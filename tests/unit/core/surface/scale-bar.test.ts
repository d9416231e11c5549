import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drawnDiameter } from '../../../../src/core/surface/exaggeration'
import { scaleBar } from '../../../../src/core/surface/scale-bar'

const seed = 20240704
const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('the scale bar', () => {
  it('is 10 drawn mm long for 20 µm drawn 500 times', () => {
    // 0.020 mm × 500 = 10 mm; 4 pixels to the mm; 50 µm would take 100 pixels and 90 are free.
    expect(scaleBar(500, 4, 90)).toEqual({ micrometres: 20, lengthPx: 40 })
  })

  it(`is as long as its change of the diameter moves the walls apart, round, and fits, seed ${seed}`, () => {
    fc.assert(
      fc.property(positive(1, 20_000), positive(0.2, 40), (exaggeration, pixelsPerMm) => {
        const { micrometres, lengthPx } = scaleBar(exaggeration, pixelsPerMm, 90)
        const apart =
          drawnDiameter(54, exaggeration, 54 + micrometres / 1000) - drawnDiameter(54, exaggeration, 54)
        expect(Math.abs(lengthPx - apart * pixelsPerMm)).toBeLessThan(1e-6 * lengthPx + 1e-6)
        expect(lengthPx).toBeLessThanOrEqual(90 * (1 + 1e-12))
        expect(lengthPx).toBeGreaterThan(90 / 2.5 - 1e-9)
        const digit = micrometres / 10 ** Math.floor(Math.log10(micrometres) + 1e-9)
        expect([1, 2, 5].some((round) => Math.abs(digit - round) < 1e-6)).toBe(true)
      }),
      { seed },
    )
  })
})
