import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { BoreFinding } from '../../../src/core/findings'
import { runCount } from '../../proof/run-count'
import { findingOf, measuredBore, type ReadingTable } from './measured-bore'

const seed = 20260108
const numRuns = runCount({ quick: 25, full: 2_000 })
const um = fc.integer({ min: -30, max: 60 })
const cell = fc.oneof(
  { weight: 5, arbitrary: fc.array(um, { minLength: 1, maxLength: 3 }) },
  { weight: 1, arbitrary: fc.constant(undefined) },
)
const axesDegrees = [0, 45, 90, 135]
const levelsMm = [8, 25, 62, 80]
const cells = fc.array(fc.array(cell, { minLength: 4, maxLength: 4 }), { minLength: 4, maxLength: 4 })
type Cells = (number[] | undefined)[][]

interface Turned {
  readonly offsetMm?: number
  readonly levels?: readonly number[]
  readonly axes?: readonly number[]
  readonly reverse?: boolean
  readonly axesNamed?: { readonly x: number; readonly y: number }
}

/** The same deviations, in µm, about a size, on levels and axes as told. */
function inspected(
  rows: Cells,
  {
    offsetMm = 80,
    levels = levelsMm,
    axes = axesDegrees,
    reverse = false,
    axesNamed = { x: 0, y: 90 },
  }: Turned = {},
): BoreFinding {
  const table: ReadingTable = {
    levelsMm: levels,
    axesDegrees: axes,
    rows: rows.map((row) => row.map((values) => values?.map((v) => offsetMm + v / 1000))),
  }
  const measured = measuredBore(table, {
    spec: {
      newMinMm: offsetMm,
      newMaxMm: offsetMm + 0.03,
      ovalityLimitMm: 0.02,
      taperLimitMm: 0.03,
      ovalityAxesDegrees: axesNamed,
    },
    setUp: { settingSizeMm: offsetMm },
  })
  if (!reverse) return findingOf(measured)
  const bores = measured.bores.map((bore) => ({
    ...bore,
    surveys: bore.surveys.map((survey) => ({ ...survey, readings: survey.readings.toReversed() })),
  }))
  return findingOf({ ...measured, bores })
}

/** What must not change, in µm to a nanometre; the places of ties may. */
function gist(finding: BoreFinding) {
  const nm = (mm: number) => Math.round(mm * 1e6) + 0
  const verdict = finding.verdict.known
    ? { ...finding.verdict, deciding: undefined, factor: Math.round(1000 * finding.verdict.factor) }
    : finding.verdict
  return {
    verdict: verdict.known
      ? [
          verdict.verdict,
          verdict.factor,
          verdict.lean,
          verdict.above.length,
          verdict.below.length,
          verdict.tooClose.length,
        ]
      : verdict.why,
    ovality: finding.ovality.map((s) =>
      s.known ? [nm(s.valueMm), nm(s.lowMm), nm(s.highMm), s.verdict ?? ''] : s.why,
    ),
    taper: finding.taper.map((s) =>
      s.known ? [Math.abs(nm(s.valueMm)), nm(s.highMm - s.lowMm), s.verdict ?? ''] : s.why,
    ),
    means: finding.levels.map((level) => nm(level.meanExpandedMm)),
  }
}

const timeout = runCount({ quick: 60_000, full: 600_000 })

describe(`a survey told another way gives the same findings (seed ${seed})`, { timeout }, () => {
  const property = (check: (rows: Cells) => void) => fc.assert(fc.property(cells, check), { seed, numRuns })

  it('with its readings in reverse order', () => {
    property((rows) => {
      expect(gist(inspected(rows, { reverse: true }))).toEqual(gist(inspected(rows)))
    })
  })

  it('with its axes turned by 45° and named anew', () => {
    property((rows) => {
      // The last axis, 135°, comes round as 0°.
      const turned = rows.map((row) => [row[3], ...row.slice(0, 3)])
      expect(gist(inspected(turned, { axesNamed: { x: 45, y: 135 } }))).toEqual(gist(inspected(rows)))
    })
  })

  it('with its axes mirrored', () => {
    property((rows) => {
      const mirrored = rows.map((row) => [row[0], row[3], row[2], row[1]])
      expect(gist(inspected(mirrored))).toEqual(gist(inspected(rows)))
    })
  })

  it('with every depth 200 mm further down', () => {
    property((rows) => {
      const deeper = levelsMm.map((depth) => depth + 200)
      expect(gist(inspected(rows, { levels: deeper }))).toEqual(gist(inspected(rows)))
    })
  })

  it('with a level and an axis planned where nothing was read', () => {
    property((rows) => {
      const more = [
        ...rows.map((row) => [...row, undefined]),
        [undefined, undefined, undefined, undefined, undefined],
      ]
      const told = inspected(more, { levels: [...levelsMm, 95], axes: [...axesDegrees, 160] })
      expect(gist(told)).toEqual(gist(inspected(rows)))
    })
  })

  it('with the bore upside down: only the sign of the taper turns, and what tells largest from smallest', () => {
    property((rows) => {
      const down = inspected(rows.toReversed(), { levels: levelsMm.map((depth) => 88 - depth).toReversed() })
      const up = inspected(rows)
      expect(gist(down).verdict).toEqual(gist(up).verdict)
      expect(gist(down).ovality).toEqual(gist(up).ovality)
      for (const rule of [
        'between-levels-of-an-axis',
        'top-less-bottom-of-an-axis',
        'largest-top-less-largest-bottom',
        'level-means',
      ]) {
        const a = up.taper.find((s) => s.rule === rule)
        const b = down.taper.find((s) => s.rule === rule)
        expect(b?.known && Math.abs(b.valueMm)).toBeCloseTo((a?.known && Math.abs(a.valueMm)) || 0, 9)
        expect(b?.known && b.verdict).toBe(a?.known && a.verdict)
      }
    })
  })

  it('about 1999 mm as about 80 mm, at 20 °C, but for what expands', () => {
    property((rows) => {
      const near = inspected(rows)
      const far = inspected(rows, { offsetMm: 1999 })
      near.stations.forEach((station, i) => {
        expect((far.stations[i]?.diameterMm ?? 0) - 1999).toBeCloseTo(station.diameterMm - 80, 9)
        expect(far.stations[i]?.individualMm).toBeCloseTo(station.individualMm, 9)
      })
      expect(gist(far).ovality).toEqual(gist(near).ovality)
    })
  })

  it('with each reading written twice as with it once, but for the doubt', () => {
    property((rows) => {
      const once = inspected(rows.map((row) => row.map((values) => values?.slice(0, 1))))
      const twice = inspected(
        rows.map((row) => row.map((values) => values && [values[0] ?? 0, values[0] ?? 0])),
      )
      once.stations.forEach((station, i) => {
        expect(twice.stations[i]?.diameterMm).toBe(station.diameterMm)
        expect(twice.stations[i]?.individualMm).toBeLessThan(station.individualMm)
      })
    })
  })

  it('scaled as a whole, deviations, limits and doubts alike, in the same proportion', () => {
    property((rows) => {
      const scaled = (times: number) =>
        findingOf(
          measuredBore(
            {
              levelsMm,
              axesDegrees,
              rows: rows.map((row) => row.map((values) => values?.map((v) => v * times))),
            },
            {
              setUp: { entry: 'deviation' },
              spec: {
                newMinMm: 80 - 0.01 * times,
                newMaxMm: 80 + 0.02 * times,
                ovalityLimitMm: 0.02 * times,
              },
              gauge: { stepUm: times, repeatabilityUm: 2 * times, settingUm: times, scaleUm: times },
              standard: { doubtUm: times, expansionPerK: 0, expansionDoubtPerK: 0 },
              bore: { wall: { kind: 'steel', expansionPerK: 0, expansionDoubtPerK: 0 } },
            },
          ),
        )
      const one = scaled(1)
      const four = scaled(4)
      one.stations.forEach((station, i) => {
        expect(four.stations[i]?.expandedMm).toBeCloseTo(4 * station.expandedMm, 9)
        expect(four.stations[i]?.conformity?.probabilityInside).toBeCloseTo(
          station.conformity?.probabilityInside ?? 0,
          6,
        )
      })
      expect(four.ovality.map((s) => s.known && s.verdict)).toEqual(
        one.ovality.map((s) => s.known && s.verdict),
      )
    })
  })
})
