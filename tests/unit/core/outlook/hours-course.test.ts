import { describe, expect, it } from 'vitest'
import { inspect } from '../../../../src/core/inspect'
import type { Measured } from '../../../../src/core/measured'
import { courseMarks } from '../../../../src/core/outlook/course-marks'
import { growthOf } from '../../../../src/core/outlook/growth'
import { type HoursCourses, hoursCourses } from '../../../../src/core/outlook/hours-course'
import { first } from '../measured-bore'
import { spec, standardDoubtMm as u, visited } from './visited'

function coursesOf(measured: Measured): HoursCourses {
  const found = hoursCourses(measured, inspect(measured), 'bore')
  if (typeof found === 'string') throw new Error(`expected courses, got ${found}`)
  return found
}

const outlookOf = (measured: Measured) => {
  const findings = inspect(measured)
  return growthOf(measured, findings, first(findings.bores)).outlook
}

const worn = visited([
  { hoursRun: 100, sizesMm: [80.0, 80.0] },
  { hoursRun: 600, sizesMm: [80.01, 80.02], survey: { date: '2026-03-09' } },
])

describe('the course of a bore over the hours', () => {
  it('has each station, the first at its limit at the head, with the bounds of the outlook', () => {
    const { courses, lastHours, nextCheck } = coursesOf(worn)
    expect(lastHours).toBe(600)
    expect(courses.map(({ place }) => place.depthMm)).toEqual([60, 10])
    const [course] = courses
    const outlook = outlookOf(worn)
    if (!outlook?.known || !course) throw new Error('expected an outlook')
    expect(course.earliestHours).toBe(outlook.earliestHours)
    expect(course.lines[0]).toMatchObject({
      through: 'all',
      fromHours: 100,
      expectedHours: outlook.expectedHours,
      latestHours: outlook.latestHours,
    })
    expect(nextCheck?.hours).toBe(outlook.nextCheckHours)
    expect(course.points).toMatchObject([
      { hours: 100, surveyId: 'visit-0' },
      { hours: 600, sizeMm: 80.02, surveyId: 'visit-1', date: '2026-03-09' },
    ])
    expect(course.points[0]?.expandedMm).toBeCloseTo(1.959964 * u, 6)
  })

  it('meets the limit with the edges of its band exactly at the bounds, and with the line at the expected hours', () => {
    const line = first(first(coursesOf(worn).courses).lines)
    const at = (hours: number | undefined) => line.at(hours ?? Number.NaN)
    const upper = at(line.earliestHours)
    const lower = at(line.latestHours)
    expect(upper.sizeMm + upper.boundMm).toBeCloseTo(80.05, 7)
    expect(lower.sizeMm - lower.boundMm).toBeCloseTo(80.05, 7)
    expect(at(line.expectedHours).sizeMm).toBeCloseTo(80.05, 7)
  })

  it('has a second line where the rate has changed, and the sooner bound of both', () => {
    const slow = [0, 1000, 2000].map((hoursRun, i) => ({
      hoursRun,
      sizesMm: [80 + 0.002 * i, 80 + 0.002 * i],
    }))
    const course = first(coursesOf(visited([...slow, { hoursRun: 3000, sizesMm: [80.03, 80.03] }])).courses)
    const [whole, lastTwo] = course.lines
    expect(lastTwo).toMatchObject({ through: 'last-two', fromHours: 2000 })
    expect(course.earliestHours).toBe(lastTwo?.earliestHours)
    expect(lastTwo?.expectedHours).toBeLessThan(whole?.expectedHours ?? 0)
  })

  it('begins at the smallest new size where one survey stands alone, and that is marked as taken', () => {
    const courses = coursesOf(visited([{ hoursRun: 90, sizesMm: [80.01, 80.02] }]))
    const course = first(courses.courses)
    expect(course).toMatchObject({ from: 'new-band', points: [{ hours: 0, sizeMm: 80, expandedMm: 0 }, {}] })
    expect(courseMarks(course, courses).map(({ kind }) => kind)).toEqual([
      'taken',
      'reading',
      'next-check',
      'earliest',
      'expected',
      'latest',
    ])
  })

  it('names no hours where it is at its limit now', () => {
    const courses = coursesOf(
      visited([
        { hoursRun: 0, sizesMm: [80, 80] },
        { hoursRun: 500, sizesMm: [80.049, 80] },
      ]),
    )
    const course = first(courses.courses)
    expect(course).toMatchObject({ now: true, place: { depthMm: 10 } })
    expect(courseMarks(course, courses).every(({ kind }) => kind === 'reading')).toBe(true)
  })

  it('is a reason where there is nothing to draw', () => {
    const why = (measured: Measured) => hoursCourses(measured, inspect(measured), 'bore')
    expect(why(visited([{ hoursRun: 9, sizesMm: [] }]))).toBe('no-readings')
    expect(why(visited([{ sizesMm: [80, 80] }]))).toBe('no-hours')
    expect(why(visited([{ hoursRun: 0, sizesMm: [80, 80] }]))).toBe('never-ran')
    expect(why(visited([{ hoursRun: 9, sizesMm: [80, 80] }], {}, {}))).toBe('no-limit')
    const alone = visited([{ hoursRun: 9, sizesMm: [80, 80] }], {}, { wearLimitMm: 80.05 })
    expect(why(alone)).toBe('nothing-to-count-from')
    expect(why(visited([{ hoursRun: 9, sizesMm: [80, 80] }], { role: 'for-comparison' }, spec))).toBe(
      'not-of-this-engine',
    )
  })
})
