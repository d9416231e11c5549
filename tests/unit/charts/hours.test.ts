import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { courseBandPath, coursePath } from '../../../src/charts/hours-paths'
import { hoursScale } from '../../../src/charts/hours-scale'
import { inspect } from '../../../src/core/inspect'
import { courseMarks } from '../../../src/core/outlook/course-marks'
import { hoursCourses } from '../../../src/core/outlook/hours-course'
import { runCount } from '../../proof/run-count'
import { first } from '../core/measured-bore'
import { type Seen, visited } from '../core/outlook/visited'

const box = { left: 50, top: 14, width: 300, height: 180 }
const seed = 8002

function drawn(visits: readonly Seen[]) {
  const measured = visited(visits)
  const courses = hoursCourses(measured, inspect(measured), 'bore')
  if (typeof courses === 'string') throw new Error(`expected courses, got ${courses}`)
  const course = first(courses.courses)
  const marks = courseMarks(course, courses)
  return { course, marks, scale: hoursScale(box, course, marks) }
}

describe('a chart over hours', () => {
  it('has hours across and sizes up, every reading with its bar and the limit within it', () => {
    const { scale, course } = drawn([
      { hoursRun: 100, sizesMm: [80.0, 80.0] },
      { hoursRun: 600, sizesMm: [80.01, 80.02] },
    ])
    expect(scale.x(600)).toBeGreaterThan(scale.x(100))
    expect(scale.y(80.02)).toBeLessThan(scale.y(80))
    expect(scale.x.domain()[0]).toBe(0)
    expect(scale.x(course.lines[0]?.latestHours ?? Number.NaN)).toBeLessThan(box.left + box.width)
    expect(scale.y(80.05)).toBeGreaterThan(box.top)
  })

  it('does not draw what is so far off that the readings would be one stroke', () => {
    const { scale, course, marks } = drawn([
      { hoursRun: 1000, sizesMm: [80.0, 80.0] },
      { hoursRun: 1010, sizesMm: [80.0001, 80.0001] },
    ])
    const [from = 0, to = 0] = scale.x.domain()
    expect(from).toBeGreaterThan(990)
    expect(to).toBeLessThan(1010 + 11 * 10 + 1)
    // What lies beyond is still among the marks, to be read out.
    expect(marks.map(({ kind }) => kind)).toContain('earliest')
    expect(course.slopeUncertain).toBe(true)
  })

  it(`is drawn with finite numbers whatever the visits were, seed ${seed}`, () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            step: fc.double({ min: 0.1, max: 5000, noNaN: true }),
            grown: fc.double({ min: -0.005, max: 0.03, noNaN: true }),
          }),
          { minLength: 1, maxLength: 4 },
        ),
        (steps) => {
          const visits = steps.map((_, i): Seen => {
            const until = steps.slice(0, i + 1)
            const sizeMm = until.reduce((sum, { grown }) => sum + grown, 80)
            return { hoursRun: until.reduce((sum, { step }) => sum + step, 0), sizesMm: [sizeMm, sizeMm] }
          })
          const { course, scale } = drawn(visits)
          const [from = Number.NaN, to = Number.NaN] = scale.x.domain()
          expect(to).toBeGreaterThan(from)
          for (const line of course.lines) {
            for (const path of [coursePath(scale, line, from, to), courseBandPath(scale, line, from, to)]) {
              expect(path).not.toMatch(/NaN|Infinity/)
              expect(path.length).toBeGreaterThan(5)
            }
          }
          for (const { hours, sizeMm } of course.points) {
            expect(scale.x(hours)).toBeGreaterThanOrEqual(box.left - 1e-6)
            expect(scale.x(hours)).toBeLessThanOrEqual(box.left + box.width)
            expect(scale.y(sizeMm)).toBeGreaterThanOrEqual(box.top)
            expect(scale.y(sizeMm)).toBeLessThanOrEqual(box.top + box.height)
          }
        },
      ),
      { seed, numRuns: runCount({ quick: 60, full: 2000 }) },
    )
  })
})
