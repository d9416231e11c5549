import { describe, expect, it } from 'vitest'
import { inspect } from '../../../src/core/inspect'
import type { Measured } from '../../../src/core/measured'
import { findingOf, first, measuredBore, without } from './measured-bore'

const table = {
  levelsMm: [10, 45, 90],
  axesDegrees: [0, 90],
  rows: [
    [80.062, 80.041],
    [80.035, 80.028],
    [80.012, 80.01],
  ],
}
const spec = { newMinMm: 80, newMaxMm: 80.03, wearLimitMm: 80.2 }

/** Whether every number in a value is a number. */
function allNumbers(value: unknown): boolean {
  if (typeof value === 'number') return !Number.isNaN(value)
  if (typeof value === 'object' && value !== null) return Object.values(value).every(allNumbers)
  return true
}

describe('inspect', () => {
  it('finds nothing in a job without readings, and says why', () => {
    const finding = findingOf(
      measuredBore({ levelsMm: [10], axesDegrees: [0], rows: [[undefined]] }, { spec }),
    )
    expect(finding.verdict).toEqual({ known: false, why: 'no-readings' })
    expect(finding.stations).toEqual([])
    expect(finding.levels).toEqual([])
    expect(finding.largest).toBeUndefined()
    for (const shape of [...finding.ovality, ...finding.taper])
      expect(shape).toMatchObject({ why: 'no-readings' })
    expect(finding.notes).toEqual([{ code: 'stations-not-read', places: [{ depthMm: 10, axisDegrees: 0 }] }])
  })

  it('judges one reading at one station', () => {
    const finding = findingOf(measuredBore({ levelsMm: [10], axesDegrees: [0], rows: [[80.1]] }, { spec }))
    expect(finding.verdict).toMatchObject({ known: true, verdict: 'inside', stations: 1, firm: true })
    expect(first(finding.stations)).toMatchObject({ repeats: 1, land: false, counted: true })
    expect(first(finding.stations)).not.toHaveProperty('spreadMm')
    expect(first(finding.ovality)).toMatchObject({ known: false, why: 'one-axis-at-every-level' })
    for (const shape of finding.taper)
      expect(shape).toMatchObject({ known: false, why: 'one-level-on-every-axis' })
    expect(first(finding.levels)).not.toHaveProperty('ovality')
  })

  it('gives no verdict without limits, but all the figures', () => {
    const finding = findingOf(measuredBore(table))
    expect(finding.verdict).toEqual({ known: false, why: 'no-limits' })
    expect(finding).not.toHaveProperty('pair')
    expect(finding.stations).toHaveLength(6)
    for (const station of finding.stations) expect(station).not.toHaveProperty('conformity')
    expect(first(finding.ovality)).not.toHaveProperty('verdict')
  })

  it('judges against a max alone and against a min alone', () => {
    expect(findingOf(measuredBore(table, { spec: { newMaxMm: 80.02 } })).verdict).toMatchObject({
      verdict: 'above',
    })
    expect(findingOf(measuredBore(table, { spec: { newMaxMm: 80.2 } })).verdict).toMatchObject({
      verdict: 'inside',
    })
    expect(findingOf(measuredBore(table, { spec: { newMinMm: 80.05 } })).verdict).toMatchObject({
      verdict: 'below',
    })
    expect(findingOf(measuredBore(table, { spec: { newMinMm: 79.9 } })).verdict).toMatchObject({
      verdict: 'inside',
    })
  })

  it('judges against a wear limit alone, though a station is near the smallest new size', () => {
    const finding = findingOf(
      measuredBore(
        {
          ...table,
          rows: [
            [80.001, 80.001],
            [80.1, 80.1],
            [80, 80],
          ],
        },
        { spec },
      ),
    )
    expect(finding.verdict).toMatchObject({ verdict: 'inside' })
    expect(finding.notes.map((note) => note.code)).not.toContain('below-smallest-new')
  })

  it('asks about a station proven below the smallest new size beside a wear limit', () => {
    const finding = findingOf(
      measuredBore(
        {
          ...table,
          rows: [
            [79.95, 80.01],
            [80.1, 80.1],
            [80, 80],
          ],
        },
        { spec },
      ),
    )
    expect(finding.verdict).toMatchObject({ verdict: 'inside' })
    expect(finding.notes).toContainEqual({
      code: 'below-smallest-new',
      place: { depthMm: 10, axisDegrees: 0 },
    })
  })

  it('keeps a reading at a port out of every verdict until it is confirmed', () => {
    const ports = [
      { id: 'p', name: 'exhaust', fromDepthMm: 0, toDepthMm: 200, fromDegrees: 0, toDegrees: 359 },
    ]
    const blocked = measuredBore(table, { spec, bore: { ports } })
    const finding = findingOf(blocked)
    expect(finding.verdict).toEqual({ known: false, why: 'all-blocked' })
    expect(finding.stations.every((s) => !s.counted && s.blockedBy[0] === 'exhaust')).toBe(true)
    expect(finding.notes.filter((note) => note.code === 'blocked-reading')).toHaveLength(6)
    expect(finding.levels).toEqual([])
    const confirmed: Measured = {
      ...blocked,
      bores: blocked.bores.map((bore) => ({
        ...bore,
        surveys: bore.surveys.map((survey) => ({
          ...survey,
          readings: survey.readings.map((reading) => ({ ...reading, confirmed: true })),
        })),
      })),
    }
    expect(findingOf(confirmed).verdict).toMatchObject({ known: true, stations: 6 })
  })

  it('leaves levels in a land out of out-of-round and taper, and in the verdict', () => {
    const finding = findingOf(
      measuredBore(
        {
          ...table,
          levelsMm: [3, 45, 90, 110],
          rows: [
            [80.3, 80],
            [80.035, 80.028],
            [80.012, 80.01],
            [80.4, 80],
          ],
        },
        { spec, bore: { ringTravelMm: { from: 5, to: 100 } } },
      ),
    )
    expect(finding.stations.map((s) => s.land)).toEqual([true, true, false, false, false, false, true, true])
    expect(first(finding.ovality)).toMatchObject({ larger: { depthMm: 45 } })
    const found = first(finding.ovality)
    expect(found.known && found.valueMm).toBeCloseTo(0.007, 9)
    expect(finding.taper.every((shape) => shape.known && Math.abs(shape.valueMm) < 0.03)).toBe(true)
    expect(finding.verdict).toMatchObject({ verdict: 'above' })
  })

  it('takes the latest survey of a bore', () => {
    const measured = measuredBore(table, { spec })
    const bore = first(measured.bores)
    const later = {
      ...first(bore.surveys),
      id: 'later',
      readings: [{ depthMm: 10, axisDegrees: 0, sizesMm: [80.1] }],
    }
    const finding = findingOf({ ...measured, bores: [{ ...bore, surveys: [...bore.surveys, later] }] })
    expect(finding.surveyId).toBe('later')
    expect(finding.stations).toHaveLength(1)
  })

  it.each(['clockwise', 'anticlockwise'] as const)(
    'reads deviations with larger %s from the mean of the zeros',
    (largerIs) => {
      const sign = largerIs === 'clockwise' ? 1 : -1
      const setUp = {
        entry: 'deviation',
        settingSizeMm: 80,
        largerIs,
        zeroOpenUm: 1,
        zeroCloseUm: 3,
      } as const
      const finding = findingOf(
        measuredBore({ levelsMm: [10], axesDegrees: [0], rows: [[2 + sign * 12]] }, { setUp }),
      )
      expect(first(finding.stations).diameterMm).toBeCloseTo(80.012, 12)
    },
  )

  it('moves no size written down by a closing zero, only its doubt', () => {
    const one = { levelsMm: [10], axesDegrees: [0], rows: [[80.012]] }
    const still = first(findingOf(measuredBore(one)).stations)
    const drifted = first(findingOf(measuredBore(one, { setUp: { zeroCloseUm: 6 } })).stations)
    expect(drifted.diameterMm).toBe(still.diameterMm)
    expect(drifted.standardUncertaintyMm ** 2 - still.standardUncertaintyMm ** 2).toBeCloseTo(
      0.006 ** 2 / 12,
      12,
    )
  })

  it('stays without NaN when nothing was recorded and a dial slipped below nothing', () => {
    const bare = without(
      measuredBore(
        { levelsMm: [10], axesDegrees: [0], rows: [[-2_000_000]] },
        { spec, setUp: { entry: 'deviation' } },
      ),
      'largerIs',
      'zeroOpenUm',
      'zeroCloseUm',
      'boreTemperatureC',
      'referenceTemperatureC',
    )
    expect(allNumbers(inspect(bare))).toBe(true)
    expect(findingOf(bare).verdict).toMatchObject({ known: true, firm: false })
  })

  it.each(['setUps', 'gauges', 'standards'] as const)(
    'throws our own mistake when the %s are missing',
    (list) => {
      expect(() => inspect({ ...measuredBore(table), [list]: [] })).toThrow(
        /inspect: no (set-up|gauge|standard) with id/,
      )
    },
  )

  it('draws a bore of unknown length 10 mm past its lowest level, and says so', () => {
    const { lengthMm: _, ...bore } = first(measuredBore(table).bores)
    const finding = findingOf({ ...measuredBore(table), bores: [bore] })
    expect(finding.drawnLengthMm).toBe(100)
    expect(finding.notes).toContainEqual({ code: 'length-not-known', drawnMm: 100 })
  })
})
