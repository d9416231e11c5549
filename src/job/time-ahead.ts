import type { HoursCourses } from '../core/outlook/hours-course'
import type { TimeLine } from './compared'
import { hoursCoursesOf } from './hours-courses-of'
import type { Job } from './schema'

/** The hours to come of a bore that goes through time: no wall is known of them, sizes by their lines alone. */
export interface TimeAhead {
  readonly courses: HoursCourses
  readonly fromHours: number
  readonly endHours: number
  /** Hours worth stopping at: the next check, the earliest, where the lines meet the limit; the end last. */
  readonly stops: readonly number[]
  /** What the surveys take of the whole line, from 0 to 1. */
  readonly measured: number
}

/** Lines that meet the limit farther off than so many times the earliest are not gone to. */
const mostFar = 10
const leastMeasured = 0.5

/** Undefined where no hours to come are named: without hours or a limit, at the limit already, after shrinking. */
export function timeAheadOf(job: Job, { bore, points }: TimeLine): TimeAhead | undefined {
  const courses = hoursCoursesOf(job, bore.id)
  if (typeof courses === 'string') return undefined
  const [course] = courses.courses
  const { lastHours: fromHours, nextCheck } = courses
  const earliest = course?.earliestHours
  const [first, last] = [points[0]?.survey.hoursRun, points.at(-1)?.survey.hoursRun]
  if (!course || earliest === undefined || first === undefined || last !== fromHours) return undefined
  const met = course.lines
    .flatMap(({ expectedHours }) => expectedHours ?? [])
    .filter((hours) => hours - fromHours <= mostFar * (earliest - fromHours))
  const endHours = Math.max(earliest, ...met)
  const check = nextCheck?.hours
  const stops = [...(check === undefined ? [] : [check]), earliest, ...met]
    .filter((hours) => hours > fromHours && hours <= endHours)
    .sort((a, b) => a - b)
  return {
    courses,
    fromHours,
    endHours,
    stops: [...new Set(stops)],
    measured: Math.max(leastMeasured, (fromHours - first) / (endHours - first)),
  }
}
