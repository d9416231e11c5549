import { useState } from 'react'
import type { Place } from '../../core/findings'
import { courseMarks } from '../../core/outlook/course-marks'
import type { HoursCourse, HoursCourses } from '../../core/outlook/hours-course'
import { hoursCoursesOf } from '../../job/hours-courses-of'
import { courseMarkText, hoursSentences } from '../../words/hours'
import { placeText } from '../../words/numbers'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { courseAt } from './course-at'
import type { FlatViews } from './flat-views'
import type { OnBench } from './use-job'
import type { Size } from './use-size'

export interface BoreHoursProps {
  readonly bench: OnBench
  readonly views: FlatViews
  readonly box: Size
  readonly letter: number
  /** The station that is shown; absent: the one that meets its limit first. */
  readonly station: Place | undefined
  readonly onStation: (station: Place) => void
}

/** How the bore has grown over the hours at a station, and when it would meet its limit there. */
export function BoreHours({ bench, views, box, letter, station, onStation }: BoreHoursProps) {
  const { job, bore } = bench
  const [pointed, setPointed] = useState<number>()
  const courses = hoursCoursesOf(job, bore.id)
  if (typeof courses === 'string') return <p className="aside">{words.hours.none[courses]}</p>
  const course = courseAt(courses, station)
  if (!course) return null
  const mark = pointed === undefined ? undefined : courseMarks(course, courses)[pointed]
  return (
    <>
      <views.HoursChart
        bore={bore}
        course={course}
        courses={courses}
        pointed={pointed}
        onPoint={setPointed}
        letter={letter}
        {...box}
      />
      <div className="chart-side">
        <Station courses={courses} course={course} onStation={onStation} />
        <p className="hours-pointed" aria-live="polite">
          {mark ? courseMarkText(mark, course, bore) : ''}
        </p>
        {hoursSentences(course, courses).map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
    </>
  )
}

function Station(props: {
  readonly courses: HoursCourses
  readonly course: HoursCourse
  readonly onStation: (station: Place) => void
}) {
  const { courses, course, onStation } = props
  const said = words.hours
  const inOrder = [...courses.courses].sort(
    (a, b) => a.place.depthMm - b.place.depthMm || a.place.axisDegrees - b.place.axisDegrees,
  )
  return (
    <p className="hours-station">
      <ChoiceField
        label={said.station}
        value={placeText(course.place)}
        options={inOrder.map((one) => ({
          value: placeText(one.place),
          text: said.stations[one === courses.courses[0] ? 'first' : 'other'](placeText(one.place)),
        }))}
        onChoose={(value) => {
          const chosen = inOrder.find(({ place }) => placeText(place) === value)
          if (chosen) onStation(chosen.place)
        }}
      />
    </p>
  )
}
