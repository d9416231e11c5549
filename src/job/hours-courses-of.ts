import { type HoursCourses, hoursCourses, type NoCourse } from '../core/outlook/hours-course'
import type { Job } from './schema'
import { findingsOf, oncePerJob } from './selectors'

const known = oncePerJob(() => new Map<string, HoursCourses | NoCourse>())

/** How a bore's stations have grown over the hours; worked out once for each document. */
export function hoursCoursesOf(job: Job, boreId: string): HoursCourses | NoCourse {
  const courses = known(job)
  const before = courses.get(boreId)
  if (before) return before
  const found = hoursCourses(job, findingsOf(job), boreId)
  courses.set(boreId, found)
  return found
}
