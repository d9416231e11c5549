import { describe, expect, it } from 'vitest'
import { fitScan } from '../../../../src/core/scan/fit-scan'
import { markPatterns } from '../../../../src/core/scan/mark-patterns'
import { marksOf } from '../../../../src/core/scan/marks'
import type { ScanMark } from '../../../../src/core/scan/scan-marks'
import { type PlantedMark, portedBore, simulatedScan } from '../../../proof/simulated-scan'

function markAt(atDegrees: number, more: Partial<ScanMark> = {}): ScanMark {
  const fromDegrees = (atDegrees + 355) % 360
  const toDegrees = (atDegrees + 5) % 360
  const place = { fromDepthMm: 20, toDepthMm: 60, fromDegrees, toDegrees }
  return {
    ...place,
    sign: 'smaller',
    shape: 'streak',
    acrossDegrees: 10,
    acrossMm: 5.2,
    alongMm: 40,
    peak: { depthMm: 40, angleDegrees: atDegrees },
    peakPlace: place,
    heightUm: -10,
    doubtUm: 0.5,
    expandedUm: 1,
    evidence: 20,
    besideOpening: false,
    ...more,
  }
}

const kinds = (marks: readonly ScanMark[]) => markPatterns(marks).map(({ kind }) => kind)

describe('patterns of marks', () => {
  it('are none without marks', () => {
    expect(markPatterns([])).toEqual([])
  })

  it('tell one side from both sides', () => {
    expect(kinds([markAt(0)])).toEqual(['one-side'])
    expect(markPatterns([markAt(350), markAt(20)])).toMatchObject([{ kind: 'one-side', atDegrees: 5 }])
    expect(markPatterns([markAt(2), markAt(178)])).toMatchObject([
      { kind: 'both-sides', atDegrees: [2, 178] },
    ])
    expect(kinds([markAt(350), markAt(15), markAt(185)])).toEqual(['both-sides'])
    expect(kinds([markAt(0), markAt(110)])).toEqual([])
  })

  it('find four corners 35° to 55° from any thrust axis, and the pin between them', () => {
    for (let thrust = 0; thrust < 180; thrust += 15) {
      for (const off of [35, 45, 55]) {
        const at = [off, 180 - off, 180 + off, 360 - off].map((angle) => (angle + thrust) % 360)
        const [pattern, ...others] = markPatterns(at.map((angle) => markAt(angle)))
        expect(others).toEqual([])
        expect(pattern?.kind).toBe('four-corners')
      }
    }
    expect(markPatterns([50, 145, 215, 310].map((at) => markAt(at)))).toMatchObject([
      { kind: 'four-corners', atDegrees: [50, 145, 215, 310], pinDegrees: [97.5, 262.5] },
    ])
  })

  it('do not take three places, or four that are unlike, for four corners', () => {
    expect(kinds([50, 145, 215].map((at) => markAt(at)))).toEqual([])
    expect(kinds([0, 30, 60, 180].map((at) => markAt(at)))).not.toContain('four-corners')
    expect(kinds([20, 160, 200, 340].map((at) => markAt(at)))).toEqual(['both-sides'])
  })

  it('tell marks all round from four corners', () => {
    expect(kinds([0, 60, 120, 180, 240, 300].map((at) => markAt(at)))).toEqual(['all-round'])
  })

  it('leave out lines within a mark, what lies along an opening, and bridges', () => {
    const bridge = { fromDegrees: 355, toDegrees: 5 }
    const marks = [
      markAt(0, { bridge }),
      markAt(180, { besideOpening: true }),
      markAt(50, { sign: 'larger', within: 4 }),
      markAt(90, { shape: 'band' }),
      markAt(52),
    ]
    expect(markPatterns(marks)).toEqual([
      { kind: 'one-side', atDegrees: 52, marks: [4] },
      { kind: 'bridge', sign: 'smaller', bridge, marks: [0] },
      { kind: 'band', marks: [3] },
    ])
  })
})

const depthsMm = [4, 8, 14, 20, 26, 32, 38, 44, 50, 56, 62, 68, 76, 84]
const probe = { nearDiameterMm: 60, repeatabilityUm: 0.8, repeatabilityDegreesOfFreedom: 50 }

function patternsOf(form: (depthMm: number, angle: number) => number, marks: readonly PlantedMark[]) {
  return [72, 360].map((angles) => {
    const scan = simulatedScan({ depthsMm, angles, ports: portedBore, sigmaUm: 0.8, form, marks }, 17)
    const found = marksOf(scan, fitScan(scan, probe), { nearDiameterMm: 60, ports: portedBore })
    return found.patterns.map(({ kind }) => kind)
  })
}

const beside = (z: number, angle: number) =>
  18 * Math.cos(angle) - 11 * Math.sin(angle) + 0.15 * z * Math.cos(angle)
const corner = (at: number, heightUm: number) => ({
  fromDepthMm: 20,
  toDepthMm: 62,
  fromDegrees: at - 5,
  toDegrees: at + 5,
  heightUm,
})
const corners = [corner(50, -18), corner(310, -16), corner(145, -10), corner(215, -11)]
const bridge = { fromDepthMm: 32, toDepthMm: 56, fromDegrees: 355, toDegrees: 5, heightUm: -9 }

describe('four corners, a bridge and plain ovality in scans of 72 and 360 angles', () => {
  it('plain ovality, three and four lobes make no pattern at all', () => {
    for (const lobes of [2, 3, 4]) {
      expect(patternsOf((z, angle) => beside(z, angle) + 15 * Math.cos(lobes * (angle - 0.8)), [])).toEqual([
        [],
        [],
      ])
    }
  })

  it('four smears are four corners, over an oval as well', () => {
    expect(patternsOf(beside, corners)).toEqual([['four-corners'], ['four-corners']])
    const oval = (z: number, angle: number) => beside(z, angle) + 15 * Math.cos(2 * (angle - 0.8))
    expect(patternsOf(oval, corners)).toEqual([['four-corners'], ['four-corners']])
  })

  it('a bridge that stands proud is a bridge and nothing else, and beside four smears both are named', () => {
    expect(patternsOf(beside, [bridge])).toEqual([['bridge'], ['bridge']])
    expect(patternsOf(beside, [...corners, bridge])).toEqual([
      ['four-corners', 'bridge'],
      ['four-corners', 'bridge'],
    ])
  })
})
