import { describe, expect, it } from 'vitest'
import { findingOf, first, measuredBore, onlyScaleDoubt } from '../unit/core/measured-bore'

const radiusMm = 40
const amplitudeMm = 0.01
const radians = (degrees: number) => (degrees * Math.PI) / 180

/** The support function of a curve of constant width: h(φ) = R + a·cos 3φ, R ≥ 8a. Standard geometry. */
function support(degrees: number): number {
  return radiusMm + amplitudeMm * Math.cos(radians(3 * degrees))
}

/** Distance from the centre of the curve's point with that normal: √(h² + h′²). */
function distance(degrees: number): number {
  const slope = -3 * amplitudeMm * Math.sin(radians(3 * degrees))
  return Math.hypot(support(degrees), slope)
}

describe('a bore of constant width, a counterexample of plane geometry to measuring with two contacts', () => {
  const axesDegrees = Array.from({ length: 36 }, (_, i) => i * 5)
  const widths = axesDegrees.map((axis) => support(axis) + support(axis + 180))
  const finding = findingOf(
    measuredBore({ levelsMm: [20], axesDegrees, rows: [widths] }, onlyScaleDoubt(0.1)),
  )

  it('has 80.000 mm across every axis', () => {
    for (const station of finding.stations) expect(station.diameterMm).toBeCloseTo(80, 10)
  })

  it('is 0.020 mm out of round all the same (ISO 12181-1:2011, a difference of radii)', () => {
    const radii = Array.from({ length: 3600 }, (_, i) => distance(i / 10))
    expect(Math.max(...radii) - Math.min(...radii)).toBeCloseTo(0.02, 4)
  })

  it('shows no out-of-round in its diameters, and a note says that two contacts see even lobes only', () => {
    const found = first(finding.ovality)
    expect(found.known && found.valueMm).toBeCloseTo(0, 10)
    expect(finding.notes.map((note) => note.code)).toContain('two-contacts-see-even-lobes-only')
  })
})
