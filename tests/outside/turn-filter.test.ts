import { describe, expect, it } from 'vitest'
import { filterTurn, turnKernel } from '../../src/core/scan/turn-filter'

describe('the Gaussian filter around the turn against ISO 16610-21', () => {
  // ISO 16610-21:2011, from memory: a filter is named after the wave of which it lets 50 % of the amplitude through.
  it.each([15, 50, 150])('lets half of %i undulations per revolution through', (cutOff) => {
    const angles = Array.from({ length: 3600 }, (_, i) => i / 10)
    const radii = Float64Array.from(angles, (angle) => 10 * Math.cos((cutOff * angle * Math.PI) / 180))
    const { values } = filterTurn(turnKernel(angles, cutOff), radii)
    expect(values[0]).toBeCloseTo(5, 4)
  })
})
