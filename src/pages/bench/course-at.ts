import type { Place } from '../../core/findings'
import type { HoursCourse, HoursCourses } from '../../core/outlook/hours-course'

/** The course of a station, else of the one that comes first. */
export function courseAt({ courses }: HoursCourses, station: Place | undefined): HoursCourse | undefined {
  const same = courses.find(
    ({ place }) => place.depthMm === station?.depthMm && place.axisDegrees === station?.axisDegrees,
  )
  return same ?? courses[0]
}
