import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fitScan } from '../../../../src/core/scan/fit-scan'
import { marksOf } from '../../../../src/core/scan/marks'
import type { RadialScan } from '../../../../src/core/scan/radial-scan'
import type { ScanMarks } from '../../../../src/core/scan/scan-marks'
import { seededDraws } from '../../../../src/core/statistics/seeded-draws'
import { cleanForm, type PlantedMark, portedBore, simulatedScan } from '../../../proof/simulated-scan'

const probe = { nearDiameterMm: 60, repeatabilityUm: 0.8, repeatabilityDegreesOfFreedom: 50 }
const fourteen = [4, 8, 14, 20, 26, 32, 38, 44, 50, 56, 62, 68, 76, 84]
const everyTwo = Array.from({ length: 41 }, (_, k) => 4 + 2 * k)

function found(scan: RadialScan, ports = portedBore): ScanMarks {
  return marksOf(scan, fitScan(scan, probe), { nearDiameterMm: 60, ports })
}

function bore(
  marks: readonly PlantedMark[],
  more: Partial<Parameters<typeof simulatedScan>[0]> = {},
  seed = 5,
) {
  return simulatedScan(
    { depthsMm: everyTwo, angles: 180, sigmaUm: 0.8, form: cleanForm(3), marks, ...more },
    seed,
  )
}

const streak = { fromDepthMm: 20, toDepthMm: 60, fromDegrees: 120, toDegrees: 126, heightUm: -9 }

describe('marks of a scan', () => {
  it('finds a streak where it was put, as long, as wide and as high as it is', () => {
    const { marks } = found(bore([streak]), [])
    expect(marks).toHaveLength(1)
    const [mark] = marks
    expect(mark).toMatchObject({ sign: 'smaller', shape: 'streak', besideOpening: false })
    expect(mark?.fromDepthMm).toBeCloseTo(19)
    expect(mark?.toDepthMm).toBeCloseTo(61)
    expect(mark?.fromDegrees).toBeCloseTo(119)
    expect(mark?.toDegrees).toBeCloseTo(127)
    expect(mark?.acrossMm).toBeCloseTo((Math.PI * 60 * 8) / 360)
    expect(Math.abs((mark?.heightUm ?? 0) + 9)).toBeLessThan(mark?.expandedUm ?? 0)
  })

  it('follows a streak over 0°', () => {
    const { marks } = found(bore([{ ...streak, fromDegrees: 356, toDegrees: 4 }]), [])
    expect(marks).toHaveLength(1)
    expect(marks[0]?.fromDegrees).toBeCloseTo(355)
    expect(marks[0]?.toDegrees).toBeCloseTo(5)
    expect(marks[0]?.acrossDegrees).toBeCloseTo(10)
  })

  it('takes a streak that a port interrupts for one', () => {
    const through = { ...streak, fromDepthMm: 36, toDepthMm: 70, fromDegrees: 114, toDegrees: 122 }
    const { marks } = found(bore([through], { ports: portedBore }))
    expect(marks).toHaveLength(1)
    expect(marks[0]).toMatchObject({ shape: 'streak', sign: 'smaller' })
    expect(marks[0]?.fromDepthMm).toBeCloseTo(35)
    expect(marks[0]?.toDepthMm).toBeCloseTo(71)
  })

  it('keeps two streaks beside one another apart, and each with its own sign', () => {
    const other = { ...streak, fromDegrees: 140, toDegrees: 146, heightUm: 9 }
    const { marks } = found(bore([streak, other]), [])
    expect(marks.map(({ sign }) => sign).sort()).toEqual(['larger', 'smaller'])
  })

  it('tells a band around from a streak along the stroke', () => {
    const band = { fromDepthMm: 40, toDepthMm: 44, fromDegrees: 100, toDegrees: 220, heightUm: 6 }
    const { marks, patterns } = found(bore([band]), [])
    expect(marks).toHaveLength(1)
    expect(marks[0]).toMatchObject({ shape: 'band', sign: 'larger' })
    expect(patterns).toEqual([{ kind: 'band', marks: [0] }])
  })

  it('takes a band that a port interrupts for one', () => {
    const band = { fromDepthMm: 47, toDepthMm: 51, fromDegrees: 138, toDegrees: 222, heightUm: 8 }
    const { marks } = found(bore([band], { ports: portedBore }))
    expect(marks).toHaveLength(1)
    expect(marks[0]?.shape).toBe('band')
    expect(marks[0]?.acrossDegrees).toBeGreaterThan(80)
  })

  it('counts a single value that stands out as a lone value and no mark', () => {
    const scan = bore([])
    scan.radiiUm[20 * 180 + 70] = (scan.radiiUm[20 * 180 + 70] ?? 0) + 30
    expect(found(scan, [])).toMatchObject({ marks: [], loneValues: 1 })
  })

  it('finds narrow lines that read larger within a smear that reads smaller, three of three', () => {
    const lines = [46, 52, 56].map((at) => ({
      fromDepthMm: 14,
      toDepthMm: 70,
      fromDegrees: at,
      toDegrees: at,
      heightUm: 11,
    }))
    const smear = { fromDepthMm: 20, toDepthMm: 56, fromDegrees: 43, toDegrees: 60, heightUm: -15 }
    const scan = bore([smear, ...lines], { angles: 360, depthsMm: fourteen })
    const { marks } = found(scan, [])
    const smears = marks.filter(({ sign }) => sign === 'smaller')
    expect(smears).toHaveLength(1)
    const within = marks.filter((mark) => mark.within !== undefined && marks[mark.within] === smears[0])
    expect(within.map(({ fromDegrees }) => Math.round(fromDegrees + 0.5)).sort()).toEqual([46, 52, 56])
    for (const line of within) expect(Math.abs(line.heightUm - 11)).toBeLessThan(3)
  })

  it('says of a mark along the edge of an opening that it is one', () => {
    const edge = { fromDepthMm: 30, toDepthMm: 60, fromDegrees: 44, toDegrees: 45, heightUm: 9 }
    const { marks, patterns } = found(bore([edge], { ports: portedBore }))
    expect(marks).toHaveLength(1)
    expect(marks[0]?.besideOpening).toBe(true)
    expect(patterns).toEqual([])
  })

  it('finds an exhaust bridge that stands proud, or is relieved, and names the ports beside it', () => {
    for (const heightUm of [-9, 9]) {
      const proud = { fromDepthMm: 34, toDepthMm: 56, fromDegrees: 355, toDegrees: 5, heightUm }
      for (const [angles, depthsMm] of [
        [72, fourteen],
        [360, fourteen],
      ] as const) {
        const { patterns } = found(bore([proud], { ports: portedBore, angles, depthsMm }))
        expect(patterns).toHaveLength(1)
        expect(patterns[0]).toMatchObject({
          kind: 'bridge',
          sign: heightUm < 0 ? 'smaller' : 'larger',
          bridge: { fromDegrees: 355, toDegrees: 5, ports: ['exhaust left', 'exhaust right'] },
        })
      }
    }
  })

  it('has ± that holds the height of a mark in 95 % of scans (seeds from 11)', () => {
    let held = 0
    for (let i = 0; i < 10; i++) {
      const [mark] = found(bore([streak], {}, 11 + i), []).marks
      if (Math.abs((mark?.heightUm ?? 0) + 9) <= (mark?.expandedUm ?? 0)) held++
    }
    expect(held).toBeGreaterThanOrEqual(9)
  })

  it('finds the same marks, turned along, wherever 0° is (seed 71)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 179 }), fc.integer({ min: 1, max: 1000 }), (turn, seed) => {
        const scan = bore([streak], {}, seed)
        const turned = { ...scan, radiiUm: turnedRadii(scan, turn) }
        const [one] = found(scan, []).marks
        const [other] = found(turned, []).marks
        expect(((other?.fromDegrees ?? 0) - (one?.fromDegrees ?? 0) + 720) % 360).toBeCloseTo(2 * turn)
        expect(other?.heightUm).toBeCloseTo(one?.heightUm ?? 0, 1)
      }),
      { seed: 71, numRuns: 2 },
    )
  })

  it('finds with the other sign what stands out the other way (seed 72)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1000 }), (seed) => {
        const scan = bore([streak], {}, seed)
        const mirrored = { ...scan, radiiUm: scan.radiiUm.map((radius) => -radius) }
        const signs = found(scan, []).marks.map(({ sign }) => sign)
        const others = found(mirrored, []).marks.map(({ sign }) => (sign === 'larger' ? 'smaller' : 'larger'))
        expect(others).toEqual(signs)
      }),
      { seed: 72, numRuns: 2 },
    )
  })

  it('finds nothing in a scan without noise, and refuses a diameter that is none', () => {
    const exact = bore([], { sigmaUm: 0, form: (_, angle) => 5 * Math.cos(2 * angle) })
    expect(found(exact, []).marks).toEqual([])
    const fit = fitScan(exact, probe)
    expect(() => marksOf(exact, fit, { nearDiameterMm: 0, ports: [] })).toThrow(/diameter above 0/)
  })

  it('does not take a form of nearly as many coefficients as values for a quiet probe (seeds from 51)', () => {
    let withMarks = 0
    for (let seed = 51; seed < 91; seed++) {
      const few = { depthsMm: [3, 9, 15, 21, 27], angles: 16 + (seed % 20), form: cleanForm(seed) }
      if (found(bore([], few, seed), []).marks.length > 0) withMarks++
    }
    expect(withMarks).toBeLessThanOrEqual(1)
  })

  it('does not call noise that runs from one value to the next a mark (seeds from 31)', () => {
    for (let seed = 31; seed < 36; seed++) {
      const scan = bore([], { sigmaUm: 0 }, seed)
      const { normal } = seededDraws(seed)
      let last = 0
      for (let at = 0; at < scan.radiiUm.length; at++) {
        last = 0.7 * last + 0.6 * normal()
        scan.radiiUm[at] = (scan.radiiUm[at] ?? 0) + last
      }
      expect(found(scan, []).marks).toEqual([])
    }
  })
})

function turnedRadii({ depthsMm, anglesDegrees, radiiUm }: RadialScan, columns: number): Float64Array {
  const count = anglesDegrees.length
  return Float64Array.from({ length: depthsMm.length * count }, (_, at) => {
    const column = ((at % count) - columns + count) % count
    return radiiUm[at - (at % count) + column] ?? Number.NaN
  })
}

describe('marks of a scan of 720 angles, where scores are wider than a cell', () => {
  it('are four smears, each whole, with the three scores along it', () => {
    const depthsMm = Array.from({ length: 40 }, (_, k) => 3 + 2 * k)
    const smears = [50, 145, 215, 310].map((at) => ({
      fromDepthMm: 16,
      toDepthMm: 60,
      fromDegrees: at - 7,
      toDegrees: at + 7,
      heightUm: -12,
    }))
    const scores = [50, 145, 215, 310].flatMap((at) =>
      [at - 4, at + 2, at + 5.5].map((from) => ({
        fromDepthMm: 16,
        toDepthMm: 70,
        fromDegrees: from,
        toDegrees: from + 1.5,
        heightUm: 11,
      })),
    )
    const scan = bore([...smears, ...scores], { angles: 720, depthsMm })
    const { marks, patterns } = found(scan, [])
    const wide = marks.filter(({ sign }) => sign === 'smaller')
    expect(wide).toHaveLength(4)
    // The third score covers the smear's edge.
    for (const { acrossDegrees } of wide) expect(Math.abs(acrossDegrees - 13)).toBeLessThan(2.5)
    for (const smear of wide) {
      const lines = marks.filter(({ within }) => within === marks.indexOf(smear))
      expect(lines).toHaveLength(3)
      for (const { heightUm, expandedUm } of lines)
        expect(Math.abs(heightUm - 11)).toBeLessThan(expandedUm + 0.5)
    }
    expect(marks).toHaveLength(16)
    expect(patterns.map(({ kind }) => kind)).toEqual(['four-corners'])
  })
})
