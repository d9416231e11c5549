import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  isWithinSurface,
  middleOfSurface,
  surfaceWidthDegrees,
} from '../../../../src/core/surface-findings/surface-place'

const across0 = { fromDepthMm: 10, toDepthMm: 30, fromDegrees: 350, toDegrees: 10 }

describe('the place of a surface finding', () => {
  it('reaches clockwise across 0°, all round where its ends are a turn apart, and nowhere where they are one', () => {
    expect(surfaceWidthDegrees(across0)).toBe(20)
    expect(surfaceWidthDegrees({ ...across0, fromDegrees: 10, toDegrees: 350 })).toBe(340)
    expect(surfaceWidthDegrees({ ...across0, fromDegrees: 0, toDegrees: 360 })).toBe(360)
    expect(surfaceWidthDegrees({ ...across0, fromDegrees: 90, toDegrees: 90 })).toBe(0)
  })

  it('has its middle at 0° where it lies across 0°, and half way down', () => {
    expect(middleOfSurface(across0)).toEqual({ depthMm: 20, angleDegrees: 0 })
    expect(middleOfSurface({ ...across0, fromDegrees: -20, toDegrees: 10 }).angleDegrees).toBe(355)
  })

  it('holds its edges and what lies between them, on both sides of 0°, and nothing past them', () => {
    for (const angle of [350, 355, 0, 5, 10, 370, -10]) expect(isWithinSurface(across0, 10, angle)).toBe(true)
    for (const angle of [349, 11, 180]) expect(isWithinSurface(across0, 20, angle)).toBe(false)
    expect(isWithinSurface(across0, 30.1, 0)).toBe(false)
    expect(isWithinSurface(across0, 31, 12, 1, 2)).toBe(true)
  })

  it('is the same place when it is turned together with what is asked (100 places, seed 41)', () => {
    const angle = fc.integer({ min: -360, max: 360 })
    const turn = fc.integer({ min: -2, max: 2 })
    fc.assert(
      fc.property(angle, fc.integer({ min: 0, max: 359 }), angle, turn, (from, width, asked, turns) => {
        const place = { ...across0, fromDegrees: from, toDegrees: from + width }
        const turned = { ...place, fromDegrees: from + 90, toDegrees: from + width + 90 }
        const inside = isWithinSurface(place, 20, asked)
        expect(isWithinSurface(turned, 20, asked + 90 + 360 * turns)).toBe(inside)
        expect(inside).toBe((((asked - from) % 360) + 360) % 360 <= width)
      }),
      { seed: 41, numRuns: 100 },
    )
  })
})
