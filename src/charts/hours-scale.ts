import { type ScaleLinear, scaleLinear } from 'd3-scale'
import type { CourseMark } from '../core/outlook/course-marks'
import type { HoursCourse } from '../core/outlook/hours-course'

/** Hours across and sizes up, pixels. */
export interface HoursScale {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
  /** From hours run. */
  readonly x: ScaleLinear<number, number>
  /** From a size, mm. */
  readonly y: ScaleLinear<number, number>
}

/** So many times as far ahead as surveys reach back is drawn at most: farther, they would be one stroke. */
const mostAhead = 10
/** The latest hours are drawn where they are not much farther off than the line's own. */
const mostLatest = 4
/** Above the limit, for two rows of labels; below the least size. */
const room = { top: 40, bottom: 16 }

/** Wide enough for what is ahead, as far as what lies behind can still be made out. */
export function hoursScale(
  box: Omit<HoursScale, 'x' | 'y'>,
  { points, limitMm }: HoursCourse,
  marks: readonly CourseMark[],
): HoursScale {
  const hours = points.map((point) => point.hours)
  const [first, last] = [Math.min(...hours), Math.max(...hours)]
  const cap = last + mostAhead * (last - first)
  const at = (kind: CourseMark['kind']) => marks.find((mark) => mark.kind === kind)?.hours
  const line = at('expected') ?? at('earliest') ?? last
  const latest = at('latest')
  const ahead = [
    at('earliest'),
    at('expected'),
    at('last-two-expected'),
    latest !== undefined && latest - last <= mostLatest * (line - last) ? latest : undefined,
  ].filter((one) => one !== undefined)
  const far = Math.min(cap, Math.max(last + 0.15 * (last - first), ...ahead))
  const from = first <= 0.3 * last ? 0 : first - 0.05 * (last - first)
  const least = Math.min(...points.map(({ sizeMm, expandedMm }) => sizeMm - expandedMm))
  const most = Math.max(limitMm, ...points.map(({ sizeMm, expandedMm }) => sizeMm + expandedMm))
  return {
    ...box,
    x: scaleLinear([from, far + 0.04 * (far - from)], [box.left, box.left + box.width]),
    y: scaleLinear(
      [least, Math.max(most, least + 0.001)],
      [box.top + box.height - room.bottom, box.top + room.top],
    ),
  }
}
