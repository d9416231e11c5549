import { describe, expect, it } from 'vitest'
import { inspect } from '../../../../src/core/inspect'
import type { Bore, Measured, Survey } from '../../../../src/core/measured'
import { growthOf } from '../../../../src/core/outlook/growth'
import { first } from '../measured-bore'
import { type Seen, spec, standardDoubtMm as u, visited } from './visited'

function growth(measured: Measured) {
  const findings = inspect(measured)
  return growthOf(measured, findings, first(findings.bores))
}

describe('how much a bore has worn', () => {
  it('is counted from the survey when it was new, and from the last one, station by station', () => {
    const { wear } = growth(
      visited([
        { hoursRun: 0, sizesMm: [80.005, 80.002] },
        { hoursRun: 100, sizesMm: [80.015, 80.008] },
        { hoursRun: 200, sizesMm: [80.022, 80.02] },
      ]),
    )
    expect(wear).toMatchObject([
      { since: 'survey', surveyId: 'visit-0', largest: { depthMm: 60 }, shrunk: [] },
      { since: 'survey', surveyId: 'visit-1', largest: { depthMm: 60 } },
    ])
    expect(wear[0]?.largest.wearMm).toBeCloseTo(0.018, 9)
    expect(wear[1]?.largest.wearMm).toBeCloseTo(0.012, 9)
    // Two independent stations of 2 µm each, t at infinite ν.
    expect(wear[0]?.largest.expandedMm).toBeCloseTo(1.959964 * Math.SQRT2 * u, 6)
    // It has grown most at 60 mm, and used most of what is allowed at 10: 17 of 45 µm, both ends ± u.
    const [allowedMm, share] = [0.045, 17 / 45]
    expect(wear[0]?.allowedShare).toMatchObject({ depthMm: 10 })
    const half = (1.959964 * u * Math.hypot(1, 1 - share)) / allowedMm
    expect(wear[0]?.allowedShare?.low).toBeCloseTo(share - half, 6)
    expect(wear[0]?.allowedShare?.high).toBeCloseTo(share + half, 6)
    expect(wear[1]?.allowedShare).toBeUndefined()
  })

  it('is counted from a land where the bore was not measured new, else from the new sizes with both ends', () => {
    const seen = [{ hoursRun: 100, sizesMm: [80.004, 80.03] }]
    const onLand = growth(visited(seen, { ringTravelMm: { from: 20, to: 100 } })).wear
    expect(onLand).toMatchObject([{ since: 'land', stations: 1, largest: { depthMm: 60 } }])
    expect(onLand[0]?.largest.wearMm).toBeCloseTo(0.026, 9)
    const { wear } = growth(visited(seen))
    const [band] = wear
    expect(band?.since).toBe('new-band')
    expect(band?.largest.lowMm).toBeCloseTo(0.02 - 1.959964 * u, 6)
    expect(band?.largest.highMm).toBeCloseTo(0.03 + 1.959964 * u, 6)
  })

  it('is told as a share of the plating, for both walls and for one', () => {
    const bore = {
      wall: { kind: 'plated-aluminium', platingUm: 80, expansionPerK: 0, expansionDoubtPerK: 0 },
    } as const
    const { wear } = growth(
      visited(
        [
          { hoursRun: 0, sizesMm: [80, 80] },
          { hoursRun: 50, sizesMm: [80.02, 80.01] },
        ],
        bore,
      ),
    )
    expect(wear[0]?.platingShare?.bothSides).toBeCloseTo(0.125, 9)
    expect(wear[0]?.platingShare?.oneSide).toBeCloseTo(0.25, 9)
    const half = 1.959964 * Math.SQRT2 * u
    expect(wear[0]?.platingShare?.low).toBeCloseTo((0.02 - half) / 0.16, 6)
    expect(wear[0]?.platingShare?.high).toBeCloseTo((0.02 + half) / 0.08, 6)
  })

  it('names where it shrank beyond its doubt, and what was bolted on only once', () => {
    const { wear } = growth(
      visited([
        { hoursRun: 10, sizesMm: [80.02, 80.02], survey: { clamping: 'bare' } },
        { hoursRun: 20, sizesMm: [80.0, 80.021], survey: { clamping: 'torque-plate' } },
      ]),
    )
    const lately = wear.find(({ surveyId }) => surveyId === 'visit-0')
    expect(lately).toMatchObject({
      shrunk: [{ depthMm: 10, axisDegrees: 0 }],
      clampings: ['torque-plate', 'bare'],
    })
  })

  it('is counted from wall or sizes of its own occasion where the new bore was bolted otherwise', () => {
    const seen = (clamping: 'bare' | 'assembled') =>
      visited([
        { hoursRun: 0, sizesMm: [80.002, 80.002], survey: { clamping: 'bare' } },
        { hoursRun: 20, sizesMm: [80.02, 80.02], survey: { clamping } },
      ])
    expect(growth(seen('bare')).wear).toMatchObject([{ since: 'survey', surveyId: 'visit-0' }])
    const { wear } = growth(seen('assembled'))
    expect(wear).toMatchObject([
      { since: 'new-band' },
      { since: 'survey', surveyId: 'visit-0', clampings: ['assembled', 'bare'] },
    ])
    expect(wear[1]).not.toHaveProperty('allowedShare')
  })

  it('is counted from a new bore of the same sizes too, with how both were made in its doubt', () => {
    const measured = visited([{ hoursRun: 90, sizesMm: [80.03, 80.01] }])
    const own = first(measured.bores)
    const other = first(visited([{ hoursRun: 0, sizesMm: [80.004, 80.004] }]).bores)
    const beside = (survey: Partial<Survey>, bore: Partial<Bore> = {}) => ({
      ...measured,
      bores: [
        own,
        {
          ...other,
          id: 'new',
          role: 'for-comparison' as const,
          surveys: other.surveys.map((one) => ({ ...one, id: 'as-new', ...survey })),
          ...bore,
        },
      ],
    })
    const { wear } = growth(beside({}))
    expect(wear).toMatchObject([{ since: 'new-band' }, { since: 'bore', boreId: 'new', stations: 2 }])
    const from = wear[1]
    // Both anywhere in a band of 10 µm: u of the difference is T/√6 = 4.08 µm, beside 2 µm of each reading.
    expect(from?.asMadeExpandedMm).toBeCloseTo((1.959964 * 0.01) / Math.sqrt(6), 7)
    expect(from?.largest.wearMm).toBeCloseTo(0.026, 9)
    expect(from?.largest.expandedMm).toBeCloseTo(1.959964 * Math.sqrt(2 * u * u + 0.01 ** 2 / 6), 6)
    const sincesOf = (of: Measured) => growth(of).wear.map(({ since }) => since)
    expect(sincesOf(beside({ hoursRun: 5 }))).toEqual(['new-band'])
    expect(sincesOf(beside({}, { oversizeMm: 0.5 }))).toEqual(['new-band'])
    const apart = beside({ clamping: 'bare' })
    const bolted = own.surveys.map((one) => ({ ...one, clamping: 'assembled' as const }))
    expect(sincesOf({ ...apart, bores: [{ ...own, surveys: bolted }, ...apart.bores.slice(1)] })).toEqual([
      'new-band',
    ])
  })

  it('is nothing for a bore that never ran', () => {
    expect(growth(visited([{ hoursRun: 0, sizesMm: [80, 80] }]))).toEqual({ wear: [] })
  })
})

describe('when a bore meets its limit', () => {
  it('is said of the station that comes first, half of the way before it', () => {
    const { outlook } = growth(
      visited([
        { hoursRun: 100, sizesMm: [80.0, 80.0] },
        { hoursRun: 600, sizesMm: [80.01, 80.02] },
      ]),
    )
    expect(outlook).toMatchObject({
      known: true,
      from: 'surveys',
      surveys: 2,
      place: { depthMm: 60 },
      now: false,
      slopeUncertain: false,
    })
    if (!outlook?.known) throw new Error('expected an outlook')
    // The line alone: 30 µm more at 40 µm in 1000 h.
    expect(outlook.expectedHours).toBeCloseTo(1350, 6)
    const { earliestHours = 0, latestHours = 0, nextCheckHours } = outlook
    expect(earliestHours).toBeLessThan(1350)
    expect(latestHours).toBeGreaterThan(1350)
    expect(nextCheckHours).toBeCloseTo(600 + (earliestHours - 600) / 2, 9)
  })

  it('has no expected hours where the growth does not stand out, and the earliest all the same', () => {
    const { outlook } = growth(
      visited([
        { hoursRun: 0, sizesMm: [80.0, 80.0] },
        { hoursRun: 500, sizesMm: [80.001, 80.001] },
      ]),
    )
    expect(outlook).toMatchObject({ known: true, slopeUncertain: true })
    expect(outlook).not.toHaveProperty('expectedHours')
    expect(outlook?.known && outlook.earliestHours).toBeGreaterThan(500)
  })

  it('lets the last two surveys govern where the rate has changed', () => {
    const slow = [0, 1000, 2000].map((hoursRun, i) => ({
      hoursRun,
      sizesMm: [80 + 0.002 * i, 80 + 0.002 * i],
    }))
    const { outlook } = growth(visited([...slow, { hoursRun: 3000, sizesMm: [80.03, 80.03] }]))
    expect(outlook).toMatchObject({ known: true, rateChanged: true })
    if (!outlook?.known) throw new Error('expected an outlook')
    // 20 µm more at 26 µm in 1000 h.
    expect(outlook.lastTwoExpectedHours).toBeCloseTo(3000 + 20_000 / 26, 3)
    expect(outlook.earliestHours).toBeLessThan(outlook.lastTwoExpectedHours ?? 0)
  })

  it('is now where the bound is past the limit, and no date where the bore shrank', () => {
    expect(
      growth(
        visited([
          { hoursRun: 0, sizesMm: [80, 80] },
          { hoursRun: 500, sizesMm: [80.048, 80] },
        ]),
      ).outlook,
    ).toMatchObject({ known: true, now: true, place: { depthMm: 10 } })
    expect(
      growth(
        visited([
          { hoursRun: 10, sizesMm: [80.03, 80.03] },
          { hoursRun: 500, sizesMm: [80.01, 80.01] },
        ]),
      ).outlook,
    ).toMatchObject({ known: false, why: 'shrunk' })
  })

  it('is checked at the service interval where that is sooner than half of the way', () => {
    const visits = [
      { hoursRun: 100, sizesMm: [80.0, 80.0] },
      { hoursRun: 600, sizesMm: [80.01, 80.02], survey: { date: '2026-03-09' } },
    ]
    const { outlook, nextCheck } = growth({
      ...visited(visits, {}, { ...spec, serviceIntervalHours: 70 }),
      hoursPerWeek: 35,
    })
    expect(outlook).toMatchObject({ known: true, nextCheckHours: 670 })
    expect(nextCheck).toEqual({
      afterHours: 70,
      hours: 670,
      by: 'service-interval',
      weeks: 2,
      date: '2026-03-23',
    })
    const unworn = visited([{ hoursRun: 0, sizesMm: [80, 80] }], {}, { ...spec, serviceIntervalHours: 70 })
    expect(growth(unworn)).toEqual({
      wear: [],
      nextCheck: { afterHours: 70, hours: 70, by: 'service-interval' },
    })
  })

  it('takes a station that the earlier surveys lack from the smallest new size, and it may come first', () => {
    const earlier = { levelsMm: [60], axesDegrees: [0] }
    const measured = visited([
      { hoursRun: 100, sizesMm: [80.0, 80.0], survey: {} },
      { hoursRun: 600, sizesMm: [80.03, 80.01] },
    ])
    const [bore] = measured.bores
    const surveys = first(measured.bores).surveys.map((survey, i) =>
      i === 0
        ? { ...survey, ...earlier, readings: survey.readings.filter(({ depthMm }) => depthMm === 60) }
        : survey,
    )
    if (!bore) throw new Error('expected a bore')
    const { outlook } = growth({ ...measured, bores: [{ ...bore, surveys }] })
    expect(outlook).toMatchObject({ known: true, from: 'new-band', surveys: 1, place: { depthMm: 10 } })
    // 20 µm more at 30 µm in 600 h.
    expect(outlook?.known && outlook.expectedHours).toBeCloseTo(1000, 4)
  })

  it('says what it lacks: hours, a limit, something to count from', () => {
    const sizesMm = [80.02, 80.02]
    const why = (measured: Measured) => {
      const { outlook } = growth(measured)
      return outlook?.known === false ? outlook.why : 'known'
    }
    expect(why(visited([{ sizesMm }]))).toBe('no-hours')
    expect(why(visited([{ hoursRun: 5, sizesMm }], {}, {}))).toBe('no-limit')
    expect(why(visited([{ hoursRun: 5, sizesMm }], {}, { wearLimitMm: 80.05 }))).toBe('nothing-to-count-from')
    expect(why(visited([{ hoursRun: 5, sizesMm }]))).toBe('known')
  })

  it('is worked out whatever the doubt is: none at all, all of it shared, or enormous beside the end of a band', () => {
    const sizesMm = [80.02, 80.03]
    const twice = [
      { hoursRun: 100, sizesMm: [80.0, 80.0] },
      { hoursRun: 200, sizesMm },
    ]
    const withScale = (visits: readonly Seen[], scaleUm: number): Measured => {
      const measured = visited(visits)
      return { ...measured, gauges: measured.gauges.map((gauge) => ({ ...gauge, scaleUm })) }
    }
    for (const scaleUm of [0, 1e-9, 1000]) {
      for (const visits of [twice, [{ hoursRun: 100, sizesMm }]]) {
        const { outlook } = growth(withScale(visits, scaleUm))
        expect(outlook).toMatchObject({ known: true, now: scaleUm === 1000 })
      }
    }
  })

  it('leaves out surveys with something else bolted on', () => {
    const { outlook } = growth(
      visited([
        { hoursRun: 0, sizesMm: [80, 80], survey: { clamping: 'bare' } },
        { hoursRun: 300, sizesMm: [80.02, 80.02], survey: { clamping: 'torque-plate' } },
        { hoursRun: 600, sizesMm: [80.02, 80.02], survey: { clamping: 'bare' } },
      ]),
    )
    expect(outlook).toMatchObject({ known: true, surveys: 2 })
  })
})
