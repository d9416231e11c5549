import { describe, expect, it } from 'vitest'
import { timeLinesOf } from '../../../src/job/compared'
import type { Job } from '../../../src/job/schema'
import { timeAheadOf } from '../../../src/job/time-ahead'
import { aheadReadOut, aheadSentences } from '../../../src/words/ahead'
import { first } from '../core/measured-bore'
import { scenario } from '../scenarios/scenario'

const diesel = scenario('C-wet-liner-diesel.json')
const aheadOf = (job: Job) => timeAheadOf(job, first(timeLinesOf(job)))

function found() {
  const ahead = aheadOf(diesel)
  if (!ahead) throw new Error('expected hours to come')
  return { ahead, course: first(ahead.courses.courses) }
}

describe('the hours to come of a wall that goes through time', () => {
  it('begin with the last survey, stop at the next check, the earliest and where each line meets the limit, and end there', () => {
    const { ahead, course } = found()
    expect(ahead.fromHours).toBe(13_600)
    const met = course.lines.map(({ expectedHours }) => expectedHours)
    expect(ahead.stops).toEqual([
      ahead.courses.nextCheck?.hours,
      course.earliestHours,
      ...met.sort((a, b) => (a ?? 0) - (b ?? 0)),
    ])
    expect(ahead.endHours).toBe(ahead.stops.at(-1))
    expect(ahead.measured).toBeCloseTo(13_600 / ahead.endHours, 12)
  })

  it('are none without a limit, without hours, and at the limit already', () => {
    const { wearLimitMm: _, newMinMm: __, newMaxMm: ___, ...without } = diesel.spec
    expect(aheadOf({ ...diesel, spec: without })).toBeUndefined()
    expect(aheadOf({ ...diesel, spec: { ...diesel.spec, wearLimitMm: 130.165 } })).toBeUndefined()
    const hourless = diesel.bores.map((bore) => ({
      ...bore,
      surveys: bore.surveys.map(({ hoursRun: _hours, ...survey }) => survey),
    }))
    expect(aheadOf({ ...diesel, bores: hourless })).toBeUndefined()
  })

  it('are told by the lines alone, with their bounds, and how they stand to the earliest', () => {
    const { ahead, course } = found()
    const earliest = course.earliestHours ?? Number.NaN
    const before = aheadSentences(course, earliest - 100)
    expect(before[0]).toMatch(
      /^18 mm, 0°, first at its limit, by its line: 130\.\d{3} \(130\.\d{3} to 130\.\d{3}\)\.$/,
    )
    expect(before[1]).toMatch(/^By the last two surveys: 130\.\d{3} \(/)
    expect(before[2]).toBe(`Before ${Math.floor(earliest)} h, the earliest that it meets 130.200.`)
    expect(aheadSentences(course, earliest - 1e-9)[2]).toMatch(/^From \d+ h on it may be over 130\.200/)
    // At the earliest the upper bound of the sooner line is the limit itself.
    expect(aheadReadOut(ahead.courses.courses, earliest, { depthMm: 18, angleDegrees: 180 })).toMatch(
      /^18 mm, 0° · at 15\d{3} h by its line 130\.\d{3} \(130\.\d{3} to 130\.200\)$/,
    )
  })

  it('say nothing of the wall between stations', () => {
    const { ahead } = found()
    expect(aheadReadOut(ahead.courses.courses, 15_000, { depthMm: 19, angleDegrees: 0 })).toBe(
      'between stations nothing is known of hours to come',
    )
  })
})
