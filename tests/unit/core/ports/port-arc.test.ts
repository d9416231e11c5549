import { describe, expect, it } from 'vitest'
import { portArc, portEdges } from '../../../../src/core/ports/port-arc'

const port = { id: 'p', name: 'exhaust', fromDepthMm: 29, toDepthMm: 55, fromDegrees: 315, toDegrees: 45 }

describe('a port by its width and its middle', () => {
  it('is a quarter of the way round for a quarter of the circumference', () => {
    const { widthMm, centreDegrees } = portArc(port, 54)
    expect(widthMm).toBeCloseTo((Math.PI * 54) / 4, 12)
    expect(centreDegrees).toBe(0)
  })

  it('gives its edges back, also across 0°', () => {
    expect(portEdges(portArc(port, 54), 54)).toEqual({ fromDegrees: 315, toDegrees: 45 })
    const other = { ...port, fromDegrees: 62, toDegrees: 100 }
    expect(portArc(other, 54).centreDegrees).toBe(81)
    expect(portEdges(portArc(other, 54), 54)).toEqual({ fromDegrees: 62, toDegrees: 100 })
  })

  it('is wider in degrees in a smaller bore', () => {
    // 10 mm on a circumference of 100 mm is a tenth of it, 36°: own arithmetic.
    expect(portEdges({ widthMm: 10, centreDegrees: 0 }, 100 / Math.PI)).toEqual({
      fromDegrees: 342,
      toDegrees: 18,
    })
  })

  it.each([0, -3, 200, Number.NaN])('refuses a width of %d mm in a bore of 54 mm', (widthMm) => {
    expect(() => portEdges({ widthMm, centreDegrees: 0 }, 54)).toThrow(RangeError)
  })
})
