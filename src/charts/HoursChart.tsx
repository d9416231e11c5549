import { type KeyboardEvent, type PointerEvent, useId } from 'react'
import type { Bore } from '../core/measured'
import { courseMarks } from '../core/outlook/course-marks'
import type { HoursCourse, HoursCourses } from '../core/outlook/hours-course'
import { courseMarkText, hoursText } from '../words/hours'
import { placeText } from '../words/numbers'
import { words } from '../words/words'
import { HoursAxes } from './HoursAxes'
import { HoursLimit, HoursLines, HoursReadings } from './HoursMarks'
import { hoursScale } from './hours-scale'
import './wall-chart.css'
import './hours-chart.css'

export interface HoursChartProps {
  readonly bore: Pick<Bore, 'surveys'>
  readonly course: HoursCourse
  readonly courses: Pick<HoursCourses, 'nextCheck' | 'lastHours'>
  /** Which of its marks, by `courseMarks`, is pointed at. */
  readonly pointed: number | undefined
  readonly onPoint: (mark: number | undefined) => void
  readonly width: number
  readonly height: number
  /** About as wide as a letter is, pixels. */
  readonly letter: number
}

/** A pointer this near points at what stands there, pixels. */
const near = 24

/** Sizes of a station over hours run, with the line through them, its bounds and the limit that it grows toward. */
export function HoursChart(props: HoursChartProps) {
  const { bore, course, courses, pointed, onPoint, width, height, letter } = props
  const id = useId()
  const marks = courseMarks(course, courses)
  const box = { left: 8 * letter + 4, top: 14, width: width - 8 * letter - 14, height: height - 36 }
  const scale = hoursScale(box, course, marks)
  const last = scale.x(courses.lastHours)
  const chosen = pointed === undefined ? undefined : marks[pointed]
  const point = (event: PointerEvent<SVGSVGElement>) => {
    const { left, width: drawn } = event.currentTarget.getBoundingClientRect()
    const x = ((event.clientX - left) / drawn) * width
    const away = marks.map(({ hours }) => Math.abs(scale.x(hours) - x))
    const least = Math.min(...away)
    onPoint(least <= near ? away.indexOf(least) : undefined)
  }
  const step = (event: KeyboardEvent) => {
    const to = stepTo(event.key, pointed, marks.length)
    if (to === undefined) return
    event.preventDefault()
    onPoint(to)
  }
  return (
    <div className="wall-chart hours-chart" style={{ width }}>
      <svg
        role="img"
        aria-label={hoursText(course, courses)}
        viewBox={`0 0 ${width} ${height}`}
        width={width}
        height={height}
        onPointerMove={(event) => (event.pointerType === 'touch' ? undefined : point(event))}
        onPointerUp={point}
      >
        <clipPath id={id}>
          <rect x={box.left} y={box.top} width={box.width} height={box.height} />
        </clipPath>
        <HoursAxes scale={scale} letter={letter} />
        <g clipPath={`url(#${id})`}>
          <HoursLines scale={scale} course={course} />
        </g>
        <line x1={last} x2={last} y1={box.top + 34} y2={box.top + box.height} className="hours-last" />
        <HoursLimit scale={scale} course={course} marks={marks} letter={letter} />
        <HoursReadings scale={scale} marks={marks} />
        {chosen && scale.x(chosen.hours) <= box.left + box.width ? (
          <g className="map-pointer">
            <line
              x1={scale.x(chosen.hours)}
              x2={scale.x(chosen.hours)}
              y1={box.top}
              y2={box.top + box.height}
            />
            {chosen.sizeMm === undefined ? null : (
              <circle cx={scale.x(chosen.hours)} cy={scale.y(chosen.sizeMm)} r="6" />
            )}
          </g>
        ) : null}
      </svg>
      <div
        className="chart-list"
        {...{
          role: 'listbox',
          tabIndex: 0,
          'aria-label': words.hours.list(placeText(course.place)),
          'aria-activedescendant': chosen && `${id}-${pointed}`,
          onKeyDown: step,
        }}
      >
        {marks.map((mark, i) => (
          <div
            key={`${mark.kind} ${mark.hours}`}
            id={`${id}-${i}`}
            {...{ role: 'option', 'aria-selected': i === pointed }}
          >
            {courseMarkText(mark, course, bore)}
          </div>
        ))}
      </div>
    </div>
  )
}

/** The mark that a key leads to. */
function stepTo(key: string, from: number | undefined, count: number): number | undefined {
  const last = count - 1
  switch (key) {
    case 'ArrowRight':
    case 'ArrowDown':
      return Math.min(last, (from ?? -1) + 1)
    case 'ArrowLeft':
    case 'ArrowUp':
      return Math.max(0, (from ?? count) - 1)
    case 'Home':
      return 0
    case 'End':
      return last
    default:
      return undefined
  }
}
