import type { Place } from '../core/findings'
import type { CourseLine, HoursCourse } from '../core/outlook/hours-course'
import { hoursDown } from './hours'
import { placeText, plain, size } from './numbers'
import type { PointedPlace } from './read-out'
import { words } from './words'

/** A size by a line with its bounds: "130.171 (130.163 to 130.180)". */
export function sizeByLine({ at }: CourseLine, hours: number): string {
  const { sizeMm, boundMm } = at(hours)
  return words.number.range(size(sizeMm), size(sizeMm - boundMm), size(sizeMm + boundMm))
}

/** What the lines of a station say of hours to come, a sentence each, with how that stands to its earliest. */
export function aheadSentences(course: HoursCourse, hours: number): string[] {
  const said = words.compare.time.ahead
  const { lines, place, limitMm, earliestHours } = course
  const [whole, lastTwo] = lines
  const stands = earliestHours === undefined ? [] : [standsText(hours, earliestHours, limitMm)]
  return [
    ...(whole ? [said.line(placeText(place), sizeByLine(whole, hours))] : []),
    ...(lastTwo ? [said.lastTwo(sizeByLine(lastTwo, hours))] : []),
    ...stands,
    said.sides,
  ]
}

function standsText(hours: number, earliestHours: number, limitMm: number): string {
  const said = words.compare.time.ahead
  // A slider's own hours fall short of it by a rounding.
  const isBefore = hours < earliestHours * (1 - 1e-9)
  return (isBefore ? said.before : said.past)(hoursDown(earliestHours), size(limitMm))
}

/** The slider's hours to come in words. */
export function aheadText(hours: number): string {
  return words.compare.time.ahead.at(plain(hours, 0))
}

/** One line on a place of a wall in hours to come: at a station by its line, elsewhere nothing is known. */
export function aheadReadOut(courses: readonly HoursCourse[], hours: number, pointed: PointedPlace): string {
  const said = words.compare.readOut
  const course = courses.find(({ place }) => isAt(place, pointed))
  const upper = ({ at }: CourseLine) => at(hours).sizeMm + at(hours).boundMm
  const [first, ...rest] = course?.lines ?? []
  if (!course || !first) return said.aheadUnknown
  // Of two lines the one that is sooner at the limit: it counts.
  const line = rest.reduce((a, b) => (upper(b) > upper(a) ? b : a), first)
  return said.ahead(placeText(course.place), plain(hours, 0), sizeByLine(line, hours))
}

function isAt({ depthMm, axisDegrees }: Place, { depthMm: depth, angleDegrees }: PointedPlace): boolean {
  const off = (((axisDegrees - angleDegrees) % 180) + 270) % 180
  return Math.abs(depthMm - depth) < 0.01 && Math.abs(off - 90) < 0.01
}
