import { describe, expect, it } from 'vitest'
import { findingOf, first, measuredBore, onlyScaleDoubt } from '../unit/core/measured-bore'

/**
 * ISO 286-1:2010 table 1: IT7 over 50 up to and including 80 mm is 30 µm, so that H7 of 80 mm is 80.000 to
 * 80.030; two stored tables of IT grades agree.
 */
const h7 = { newMinMm: 80, newMaxMm: 80.03 }

describe('a bore of 80 mm H7 (ISO 286-1:2010) measured with u = 0.001 mm at one station', () => {
  it.each([
    [80.0, 'too-close'],
    [80.005, 'inside'],
    [80.0283, 'inside'],
    [80.03, 'too-close'],
    [80.0317, 'above'],
    [79.9983, 'below'],
  ])('is at %s mm judged %s', (size, verdict) => {
    const finding = findingOf(
      measuredBore({ levelsMm: [30], axesDegrees: [0], rows: [[size]] }, { ...onlyScaleDoubt(1), spec: h7 }),
    )
    const station = first(finding.stations)
    expect(station.standardUncertaintyMm).toBeCloseTo(0.001, 8)
    expect(station.conformity?.verdict).toBe(verdict)
    expect(finding.verdict).toMatchObject({ known: true, verdict })
    expect(finding.pair).toEqual({ kind: 'band', minMm: 80, maxMm: 80.03 })
  })
})
