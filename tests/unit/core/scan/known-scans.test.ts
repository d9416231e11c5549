import { describe, expect, it } from 'vitest'
import { fitKnownScans, knownBores } from '../../../proof/known-scans'

describe('12 simulated scans whose axis and form are known; the full count runs with the proof', () => {
  it.each([
    ['ports, 14 levels of 72', 41],
    ['ports and smears, 14 levels of 72', 42],
  ])('have the axis and the zones that the fits state: %s (seed %i)', (name, seed) => {
    const bore = knownBores[name]
    if (!bore) throw new Error(`no bore ${name}`)
    const found = fitKnownScans(bore, 12, seed)
    expect(found.axisRmsUm).toBeLessThan(0.25)
    expect(found.axisWorstUm).toBeLessThan(0.6)
    expect(found.axisHeld).toBeGreaterThan(0.8)
    if (bore.smeared) return
    expect(found.roundnessHeld).toBeGreaterThan(0.9)
    expect(found.zoneHeld).toBeGreaterThan(0.9)
    expect(found.cylindricityHeld).toBeGreaterThan(0.8)
  })
})
