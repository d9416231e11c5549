import type { Bore } from '../core/measured'
import type { CourseMark } from '../core/outlook/course-marks'
import type { HoursCourse, HoursCourses } from '../core/outlook/hours-course'
import { dayText } from './day-text'
import { placeText, plain, size, sizeWithDoubt } from './numbers'
import { words } from './words'

/** Hours that something is due or may be at: rounded down, never later than they are. */
export function hoursDown(hours: number): string {
  return plain(Math.floor(hours), 0)
}

/** Hours of a line, or of the last that is possible, as a whole number. */
function hoursOf({ kind, hours }: CourseMark): string {
  if (kind === 'earliest' || kind === 'next-check') return hoursDown(hours)
  return plain(kind === 'latest' ? Math.ceil(hours) : hours, 0)
}

/** What stands at a place of a course: a survey with its size, or what the hours mean. */
export function courseMarkText(
  mark: CourseMark,
  { from }: Pick<HoursCourse, 'from'>,
  { surveys }: Pick<Bore, 'surveys'>,
): string {
  const said = words.hours
  const { kind, sizeMm = 0, expandedMm = 0 } = mark
  if (kind === 'taken') {
    return said.taken[from](expandedMm === 0 ? size(sizeMm) : sizeWithDoubt(sizeMm, expandedMm))
  }
  if (kind === 'reading') {
    const number = surveys.findIndex(({ id }) => id === mark.surveyId) + 1
    const survey = mark.date === undefined ? said.survey(number) : said.surveyOn(number, dayText(mark.date))
    return said.reading(survey, said.at(plain(mark.hours, 1)), sizeWithDoubt(sizeMm, expandedMm))
  }
  return said.marks[kind](said.at(hoursOf(mark)))
}

/** A mark of the future as it is written on the chart, long and short. */
export function courseLabel(mark: CourseMark): readonly string[] {
  const { kind } = mark
  if (kind === 'reading' || kind === 'taken') return []
  const said = words.hours
  return [said.labels[kind](said.at(hoursOf(mark))), said.short[kind]]
}

/** What a course says, a sentence each. */
export function hoursSentences(
  course: HoursCourse,
  { nextCheck }: Pick<HoursCourses, 'nextCheck'>,
): string[] {
  const said = words.hours.sentences
  const { now, earliestHours, lines, limitMm, slopeUncertain, from } = course
  const [whole, lastTwo] = lines
  const line = (hours: number | undefined, text: (hours: string) => string) =>
    hours === undefined ? [] : [text(plain(hours, 0))]
  return [
    ...(now ? [said.now] : earliestHours === undefined ? [said.shrunk] : []),
    ...(earliestHours === undefined ? [] : [said.earliest(hoursDown(earliestHours), size(limitMm))]),
    ...line(whole?.expectedHours, said.expected),
    ...line(lastTwo?.expectedHours, said.lastTwo),
    ...(whole?.latestHours === undefined ? [] : [said.latest(plain(Math.ceil(whole.latestHours), 0))]),
    ...(slopeUncertain && !now && earliestHours !== undefined ? [said.uncertain] : []),
    ...(lastTwo ? [said.changed] : []),
    ...(nextCheck?.hours === undefined || nextCheck.by === 'at-limit'
      ? []
      : [said.check(hoursDown(nextCheck.hours))]),
    ...(from === 'surveys' ? [] : [said.alone]),
    said.key,
    said.ahead,
  ]
}

/** A course as one text, for who does not see it. */
export function hoursText(course: HoursCourse, courses: Pick<HoursCourses, 'nextCheck'>): string {
  return [`${words.hours.title(placeText(course.place))}.`, ...hoursSentences(course, courses)].join(' ')
}
