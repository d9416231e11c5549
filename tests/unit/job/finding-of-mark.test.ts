import { describe, expect, it } from 'vitest'
import type { ScanMark } from '../../../src/core/scan/scan-marks'
import { findingOfMark, isRecorded } from '../../../src/job/finding-of-mark'

const place = { fromDepthMm: 17, toDepthMm: 59, fromDegrees: 42.5, toDegrees: 52.5 }
const mark: ScanMark = {
  ...place,
  sign: 'smaller',
  shape: 'streak',
  acrossDegrees: 10,
  acrossMm: 5.2,
  alongMm: 42,
  peak: { depthMm: 38, angleDegrees: 50 },
  peakPlace: place,
  heightUm: -16,
  doubtUm: 0.5,
  expandedUm: 1.7,
  evidence: 28,
  besideOpening: false,
}
const made = { id: 'f1', scanId: 's1', note: 'In the scan.' }

describe('a mark of a scan as a surface finding', () => {
  it('names the scan and keeps the place; a narrow groove is a scratch, anything else a scuff', () => {
    expect(findingOfMark(mark, place, made)).toEqual({ ...made, ...place, kind: 'scuff', shape: 'streak' })
    const groove = { ...mark, sign: 'larger' as const, acrossMm: 1 }
    expect(findingOfMark(groove, place, made).kind).toBe('scratch')
    expect(findingOfMark({ ...mark, shape: 'band' }, place, made)).toMatchObject({
      kind: 'scuff',
      shape: 'patch',
    })
  })

  it('is recorded once for each place and scan', () => {
    const findings = [findingOfMark(mark, place, made)]
    expect(isRecorded(findings, 's1', place)).toBe(true)
    expect(isRecorded(findings, 's2', place)).toBe(false)
    expect(isRecorded(findings, 's1', { ...place, toDegrees: 53 })).toBe(false)
  })
})
