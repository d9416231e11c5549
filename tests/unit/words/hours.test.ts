import { describe, expect, it } from 'vitest'
import { inspect } from '../../../src/core/inspect'
import { courseMarks } from '../../../src/core/outlook/course-marks'
import { hoursCourses } from '../../../src/core/outlook/hours-course'
import { courseMarkText, hoursSentences, hoursText } from '../../../src/words/hours'
import { first } from '../core/measured-bore'
import { visited } from '../core/outlook/visited'

const measured = visited([
  { hoursRun: 100, sizesMm: [80.0, 80.0] },
  { hoursRun: 600.5, sizesMm: [80.01, 80.02], survey: { date: '2026-03-09' } },
])
const courses = hoursCourses(measured, inspect(measured), 'bore')
if (typeof courses === 'string') throw new Error('expected courses')
const course = first(courses.courses)
const texts = courseMarks(course, courses).map((mark) => courseMarkText(mark, course, first(measured.bores)))

describe('a course over hours in words', () => {
  it('reads out each survey with its size, then what is due and when the limit is met', () => {
    // By the quadratic equation of two sizes: 20 µm in 500.5 h, 30 µm left, u of 2 µm each, z = 1.645.
    expect(texts).toEqual([
      'Survey 1, 100 h: 80.000 ± 0.004',
      'Survey 2 on 9 March 2026, 600.5 h: 80.020 ± 0.004',
      '877 h: next check',
      '1155 h: the earliest that it meets its limit',
      '1351 h: the line meets the limit',
      '1662 h: the latest that it meets its limit',
    ])
  })

  it('rounds what is due down and the latest up', () => {
    const marks = courseMarks(course, courses)
    const hours = (kind: string) => marks.find((mark) => mark.kind === kind)?.hours ?? Number.NaN
    expect(texts[2]).toContain(`${Math.floor(hours('next-check'))} h`)
    expect(texts[3]).toContain(`${Math.floor(hours('earliest'))} h`)
    expect(texts[5]).toContain(`${Math.ceil(hours('latest'))} h`)
  })

  it('is one text for who does not see it', () => {
    expect(hoursText(course, courses)).toBe(
      `Size over hours run at 60 mm, 0°. ${hoursSentences(course, courses).join(' ')}`,
    )
    expect(hoursSentences(course, courses)[0]).toMatch(/^Meets 80\.050 at 1155 h at the earliest\.$/)
  })
})
