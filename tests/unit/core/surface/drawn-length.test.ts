import { describe, expect, it } from 'vitest'
import { drawnLengthOfScan } from '../../../../src/core/surface/drawn-length'

describe('how long the wall of a scan is drawn', () => {
  const scanned = [4, 40, 84]

  it('is the length of the bore, and never less than was scanned', () => {
    expect(drawnLengthOfScan({ lengthMm: 95 }, 95, scanned)).toBe(95)
    expect(drawnLengthOfScan({ lengthMm: 60 }, 60, scanned)).toBe(84)
  })

  it('is 10 mm past the deepest place that is recorded where the length is not known', () => {
    expect(drawnLengthOfScan({}, 10, scanned)).toBe(94)
    expect(drawnLengthOfScan({}, 98, scanned)).toBe(98)
  })
})
