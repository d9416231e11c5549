import type { CourseMark } from '../core/outlook/course-marks'
import type { HoursCourse } from '../core/outlook/hours-course'
import { courseLabel } from '../words/hours'
import { size } from '../words/numbers'
import { words } from '../words/words'
import { courseBandPath, coursePath } from './hours-paths'
import type { HoursScale } from './hours-scale'
import { labelRow } from './label-row'

/** The lines with their bands: whole up to the last survey, broken past it. */
export function HoursLines({ scale, course }: { readonly scale: HoursScale; readonly course: HoursCourse }) {
  const [from = 0, to = 0] = scale.x.domain()
  const last = course.points.at(-1)?.hours ?? 0
  return course.lines.map((line) => {
    const start = Math.max(from, line.fromHours)
    return (
      <g key={line.through} className={`hours-line is-${line.through}`}>
        <path d={courseBandPath(scale, line, start, to)} className="hours-band" />
        <path d={coursePath(scale, line, start, last)} className="hours-past" />
        <path d={coursePath(scale, line, last, to)} className="hours-ahead" />
      </g>
    )
  })
}

/** What was read as discs with bars of ± U, what was taken as rings. */
export function HoursReadings({
  scale,
  marks,
}: {
  readonly scale: HoursScale
  readonly marks: readonly CourseMark[]
}) {
  return marks.map(({ kind, hours, sizeMm, expandedMm = 0 }) => {
    if ((kind !== 'reading' && kind !== 'taken') || sizeMm === undefined) return null
    const x = scale.x(hours)
    const [least, most] = [-1, 1].map((way) => scale.y(sizeMm + way * expandedMm))
    return (
      <g key={hours}>
        {expandedMm > 0 ? <path d={`M${x - 3},${least}h6m-3,0V${most}m-3,0h6`} className="chart-u" /> : null}
        <circle
          cx={x}
          cy={scale.y(sizeMm)}
          r={kind === 'reading' ? 3.2 : 3.6}
          className={kind === 'reading' ? 'map-station' : 'map-station map-station-open'}
        />
      </g>
    )
  })
}

/** The limit, and on it when it is met: a bar from the earliest to the latest hours, a tick where the line meets it. */
export function HoursLimit(props: {
  readonly scale: HoursScale
  readonly course: HoursCourse
  readonly marks: readonly CourseMark[]
  readonly letter: number
}) {
  const { scale, course, marks, letter } = props
  const { left, width, top, height, x, y } = scale
  const [right, bottom, at] = [left + width, top + height, y(course.limitMm)]
  const ahead = marks.filter(({ kind, hours }) => kind !== 'reading' && kind !== 'taken' && x(hours) <= right)
  const isWhole = (kind: CourseMark['kind']) => ahead.find((mark) => mark.kind === kind)
  const earliest = isWhole('earliest')
  const hasEnd = course.lines.some(({ expectedHours }) => expectedHours !== undefined)
  const latest = isWhole('latest')
  const end = latest ? x(latest.hours) : right
  return (
    <g className="chart-limit is-max">
      <line x1={left} x2={right} y1={at} y2={at} className="chart-limit-line" />
      {earliest ? (
        <path
          d={`M${x(earliest.hours)},${at}H${hasEnd ? end : right}`}
          className={latest ? 'hours-met' : 'hours-met is-open'}
        />
      ) : null}
      {ahead.map((mark) => {
        const px = x(mark.hours)
        return (
          <g key={mark.kind} className={`hours-mark is-${mark.kind}`}>
            {mark.kind === 'earliest' || mark.kind === 'next-check' ? (
              <path d={`M${px},${mark.kind === 'earliest' ? at : bottom - 22}V${bottom}`} />
            ) : null}
            {mark.kind === 'next-check' ? (
              <path d={`M${px - 5},${bottom - 22}h10l-5,7z`} className="hours-check" />
            ) : (
              <path d={`M${px},${at - 8}v16`} />
            )}
          </g>
        )
      })}
      <HoursLabels scale={scale} course={course} marks={ahead} letter={letter} />
    </g>
  )
}

/** Above the limit what the lines say, below it, near the hours, what is due first. */
function HoursLabels(props: {
  readonly scale: HoursScale
  readonly course: HoursCourse
  readonly marks: readonly CourseMark[]
  readonly letter: number
}) {
  const { scale, course, marks, letter } = props
  const { left, width, top, height, x, y } = scale
  const ends = { left: left + 5, right: left + width }
  const at = y(course.limitMm)
  const of = (kinds: readonly CourseMark['kind'][]) =>
    marks
      .filter(({ kind }) => kinds.includes(kind))
      .map((mark) => ({ x: x(mark.hours), texts: courseLabel(mark) }))
  const limit = { x: left + 5, texts: [words.hours.labels.limit(size(course.limitMm))] }
  const rows = [
    { y: at - 26, labels: of(['expected', 'latest']) },
    { y: at - 11, labels: [limit, ...of(['last-two-expected'])] },
    { y: top + height - 46, labels: of(['earliest']) },
    { y: top + height - 26, labels: of(['next-check']), isOurs: true },
  ]
  return rows.map((row) =>
    labelRow(row.labels, ends, letter).map((label) =>
      label ? (
        <text
          key={label.text}
          x={label.x}
          y={row.y}
          className={row.isOurs ? 'chart-on-ground hours-ours' : 'chart-on-ground'}
        >
          {label.text}
        </text>
      ) : null,
    ),
  )
}
