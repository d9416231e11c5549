import { describe, expect, it } from 'vitest'
import { nextCheckOf } from '../../../../src/core/outlook/next-check'
import type { Outlook } from '../../../../src/core/outlook/outlook'

const place = { depthMm: 10, axisDegrees: 0 }
const ahead = (earliestHours: number, now = false): Outlook => ({
  known: true,
  from: 'surveys',
  surveys: 2,
  lastHours: 100,
  place,
  limitMm: 54.05,
  now,
  ...(now ? {} : { earliestHours }),
  slopeUncertain: false,
  rateChanged: false,
})
const survey = { date: '2026-03-09', hoursRun: 100 }

describe('the next check', () => {
  it('is half of the way to the earliest hours, or the service interval where that is sooner', () => {
    expect(nextCheckOf({ spec: {} }, survey, ahead(180))).toEqual({
      afterHours: 40,
      hours: 140,
      by: 'half-way',
    })
    const withInterval = (serviceIntervalHours: number) =>
      nextCheckOf({ spec: { serviceIntervalHours } }, survey, ahead(180))
    expect(withInterval(25)).toEqual({ afterHours: 25, hours: 125, by: 'service-interval' })
    expect(withInterval(40)).toMatchObject({ afterHours: 40, by: 'half-way' })
    expect(withInterval(41)).toMatchObject({ afterHours: 40, by: 'half-way' })
  })

  it('is the service interval alone where nothing says how the bore wears', () => {
    const spec = { serviceIntervalHours: 50 }
    expect(nextCheckOf({ spec }, survey, { known: false, why: 'no-limit' })).toMatchObject({ hours: 150 })
    expect(nextCheckOf({ spec }, { date: '2026-03-09' }, { known: false, why: 'no-hours' })).toEqual({
      afterHours: 50,
      by: 'service-interval',
    })
    expect(nextCheckOf({ spec }, { hoursRun: 0 }, undefined)).toMatchObject({ hours: 50 })
  })

  it('is at once for a bore that may be at its limit, and none for one that shrank or without anything to go by', () => {
    const spec = { serviceIntervalHours: 50 }
    expect(nextCheckOf({ spec }, survey, ahead(0, true))).toEqual({
      afterHours: 0,
      hours: 100,
      by: 'at-limit',
      // That day, however much the machine runs.
      date: '2026-03-09',
    })
    expect(nextCheckOf({ spec }, survey, { known: false, why: 'shrunk', place })).toBeUndefined()
    expect(nextCheckOf({ spec: {} }, survey, { known: false, why: 'no-limit' })).toBeUndefined()
  })

  it('is a day where the machine’s hours in a week and the day of the survey are known, never a later one', () => {
    // 40 hours at 10 in a week are four weeks; at 12, three weeks and a third, which is 23 whole days.
    const at = (hoursPerWeek: number) => nextCheckOf({ spec: {}, hoursPerWeek }, survey, ahead(180))
    expect(at(10)).toMatchObject({ weeks: 4, date: '2026-04-06' })
    expect(at(12)).toMatchObject({ date: '2026-04-01' })
    const undated = nextCheckOf({ spec: {}, hoursPerWeek: 10 }, { hoursRun: 100 }, ahead(180))
    expect(undated).toMatchObject({ weeks: 4 })
    expect(undated).not.toHaveProperty('date')
    expect(at(0.01)).toMatchObject({ weeks: 4000 })
  })
})
