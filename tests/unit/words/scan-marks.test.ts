import { describe, expect, it } from 'vitest'
import type { MarkPattern, ScanMark, ScanMarks } from '../../../src/core/scan/scan-marks'
import {
  cleanedLines,
  scanMarkLines,
  scanMarkParts,
  scanMarkPlace,
  scanPatternText,
} from '../../../src/words/scan-marks'

const place = { fromDepthMm: 17.04, toDepthMm: 59, fromDegrees: 358.26, toDegrees: 4.5 }
const mark: ScanMark = {
  ...place,
  sign: 'smaller',
  shape: 'streak',
  acrossDegrees: 6.24,
  acrossMm: 3.267,
  alongMm: 41.96,
  peak: { depthMm: 38, angleDegrees: 0 },
  peakPlace: place,
  heightUm: -16.3,
  doubtUm: 0.5,
  expandedUm: 1.7,
  evidence: 28,
  besideOpening: false,
}

function found(marks: readonly ScanMark[], patterns: readonly MarkPattern[] = [], loneValues = 0): ScanMarks {
  const map = {
    rows: 0,
    columns: 0,
    values: new Float64Array(),
    rowEdgesMm: [],
    columnEdges: [],
    sigma: 0.9,
    misfit: 0.2,
  }
  return { marks, patterns, loneValues, sigmaUm: 0.9, threshold: 5.2, leastHeightUm: 1.62, map }
}

describe('marks of a scan in words', () => {
  it('give place, height with its doubt and size', () => {
    expect(scanMarkPlace(mark)).toBe('17 to 59 mm, 358.3° to 4.5°')
    expect(scanMarkParts(mark)).toEqual([
      'reads smaller by 16 ± 2 µm on the radius',
      '3.3 mm wide, 42 mm long',
    ])
    expect(scanMarkParts({ ...mark, within: 0, sign: 'larger', heightUm: 7 })).toEqual([
      'reads larger by 7 ± 2 µm on the radius',
      '3.3 mm wide, 42 mm long',
      'along mark 1',
    ])
    expect(scanMarkParts({ ...mark, besideOpening: true }).at(-1)).toContain('chamfer')
    expect(scanMarkPlace({ ...mark, fromDegrees: 0, toDegrees: 360 })).toBe('17 to 59 mm, all round')
  })

  it('say from which height on a mark would have shown where there is none, and of lone values', () => {
    expect(scanMarkLines(found([], [], 2), true)).toEqual([
      'Nothing stands out of the smooth form. A mark of three angles by three levels would have shown from about 1.7 µm on.',
      '2 values stand out alone: as a rule dirt on the wall or on the probe.',
    ])
  })

  it('name each pattern as something to check, with its usual causes, and call none of them the cause', () => {
    const bridge = { fromDegrees: 355, toDegrees: 5 }
    const patterns: MarkPattern[] = [
      { kind: 'one-side', atDegrees: 359.7, marks: [0] },
      { kind: 'both-sides', atDegrees: [2, 181], marks: [0] },
      { kind: 'four-corners', atDegrees: [50, 145, 215, 310], pinDegrees: [97.5, 262.5], marks: [0] },
      { kind: 'all-round', marks: [0] },
      { kind: 'bridge', sign: 'smaller', bridge, marks: [0] },
      { kind: 'bridge', sign: 'larger', bridge: { ...bridge, ports: ['left', 'right'] }, marks: [0] },
      { kind: 'band', marks: [0] },
    ]
    const texts = patterns.map((pattern) => scanPatternText(pattern))
    expect(texts.map(({ name }) => name)).toEqual([
      'On one side, about 0°.',
      'On both sides, about 2° and 181°.',
      'Four corners, at 50°, 145°, 215° and 310°: either side of the pin bosses, if the pin lies along about 98° and 263°.',
      'All round the bore.',
      'The wall between the two ports from 355° to 5° stands proud.',
      'The wall between “left” and “right” lies back.',
      'A band around the bore.',
    ])
    for (const { causes } of texts) expect(causes).toMatch(/^Usual with|^A bridge that lies back may/)
    for (const { causes } of texts) expect(causes).toMatch(/Check|See what the manual|Look at/)
    expect(scanMarkLines(found([mark], patterns), true).join(' ')).toContain(
      'A pattern is no proof of a cause.',
    )
  })

  it('tell the sign rule of a plated wall, and defer to the manual before anything is cleaned', () => {
    const lines = scanMarkLines(found([mark]), true).join(' ')
    expect(lines).toContain('On a plated wall what reads smaller may be metal of the piston stuck on it')
    expect(lines).toContain('go by the service manual')
    expect(scanMarkLines(found([mark]), false).join(' ')).not.toContain('plated')
  })

  it('say what became of each mark when the bore was cleaned', () => {
    const groove: ScanMark = { ...mark, sign: 'larger', heightUm: 9 }
    const before = (um: number) => ({ um, expandedUm: 1 })
    const lines = cleanedLines(found([mark, groove, mark]), found([mark]), {
      marks: [
        { mark: 0, fate: 'gone', before: before(-16), after: before(0.2), now: [] },
        { mark: 1, fate: 'as-before', before: before(9), after: before(9), now: [0] },
        { mark: 2, fate: 'not-seen', before: before(-16), now: [] },
      ],
      fresh: [0],
      sameZero: 'taken',
    })
    expect(lines[0]).toBe(
      '1 streak along the stroke, 17 to 59 mm, 358.3° to 4.5°: went away: it was stuck on, or loose (−16 µm before, 0 µm ± 1 µm after).',
    )
    expect(lines[1]).toContain('stayed: a groove, or wear')
    expect(lines[2]).toContain('cannot be compared')
    expect(lines[3]).toMatch(/^Only in the second scan: 1 streak/)
    expect(lines[4]).toContain('taken for granted')
    expect(cleanedLines(found([]), found([]), { turnedDegrees: 8 })).toEqual([
      'The ports of the second scan lie 8° further clockwise, so nothing is compared. Give both scans the same 0°.',
    ])
  })
})
