import { named } from '../conditions-of'
import type { Findings, Place } from '../findings'
import { place } from '../form/range-finding'
import type { Measured } from '../measured'
import { combine, expanded } from '../uncertainty/combine'
import type { LineToLimit } from './line-to-limit'
import { type NextCheck, nextCheckOf } from './next-check'
import { type OutlookReason, outlookOf, stationOutlooks } from './outlook'
import { comesBefore, type LineStart, type StationOutlook } from './station-outlook'
import { visitsOf } from './visits-of'

/** A size of a station over hours run, mm, with its U; without a survey where it was taken and not read. */
export interface CoursePoint {
  readonly hours: number
  readonly sizeMm: number
  readonly expandedMm: number
  readonly surveyId?: string
  readonly date?: string
}

/** A line through sizes over hours, and when it meets the limit: the bounds as in `LineToLimit`, hours run. */
export interface CourseLine {
  readonly through: 'all' | 'last-two'
  /** Hours of the first size that it goes through. */
  readonly fromHours: number
  /** Height at some hours, mm, with the one-sided 95 % distance to either of its bounds. */
  readonly at: (hours: number) => { readonly sizeMm: number; readonly boundMm: number }
  readonly earliestHours?: number
  readonly expectedHours?: number
  readonly latestHours?: number
}

/** How a station has grown over the hours, and when it would meet the limit. */
export interface HoursCourse {
  readonly place: Place
  readonly from: LineStart
  readonly limitMm: number
  readonly points: readonly CoursePoint[]
  /** One; two where the rate has changed. */
  readonly lines: readonly CourseLine[]
  /** At the limit already as far as its readings can tell: no hours are named. */
  readonly now: boolean
  /** The sooner bound; absent where the station shrank beyond doubt. */
  readonly earliestHours?: number
  readonly slopeUncertain: boolean
}

/** The courses of a bore's stations, the one that meets the limit first at the head, with the next check. */
export interface HoursCourses {
  readonly lastHours: number
  readonly courses: readonly HoursCourse[]
  readonly nextCheck?: NextCheck
}

export type NoCourse = Exclude<OutlookReason, 'shrunk'> | 'no-readings' | 'never-ran' | 'not-of-this-engine'

/**
 * What the outlook of a bore is drawn from, station by station; by its latest survey whichever is given. A code
 * where there is nothing to draw. Source: as for `outlookOf`.
 */
export function hoursCourses(
  measured: Measured,
  findings: Findings,
  boreId: string,
): HoursCourses | NoCourse {
  const finding = findings.bores.find((one) => one.boreId === boreId)
  const found = finding && visitsOf(measured, findings, finding)
  if (!found) return finding?.role === 'of-this-engine' ? 'no-readings' : 'not-of-this-engine'
  const { bore, visit, before } = found
  if (visit.survey.hoursRun === 0) return 'never-ran'
  const outlooks = stationOutlooks(visit, before)
  if (typeof outlooks === 'string') return outlooks
  const { all, limitMm, lastHours } = outlooks
  const nextCheck = nextCheckOf(measured, visit.survey, outlookOf(visit, before))
  const dateOf = (surveyId: string) => named(bore.surveys, surveyId, 'survey').date
  return {
    lastHours,
    courses: [...all]
      .sort((a, b) => (comesBefore(a, b) ? -1 : comesBefore(b, a) ? 1 : 0))
      .map((one) => courseOf(one, limitMm, dateOf)),
    ...(nextCheck ? { nextCheck } : {}),
  }
}

function courseOf(
  outlook: StationOutlook,
  limitMm: number,
  dateOf: (surveyId: string) => string | undefined,
): HoursCourse {
  const { station, from, sizes, line, lastTwo, factor, earliest } = outlook
  const points = sizes.map(({ hours, sizeMm, contributions, surveyId }): CoursePoint => {
    const date = surveyId === undefined ? undefined : dateOf(surveyId)
    return {
      hours,
      sizeMm,
      expandedMm: expanded(combine([{ factor: 1, contributions }])),
      ...(surveyId === undefined ? {} : { surveyId }),
      ...(date === undefined ? {} : { date }),
    }
  })
  const drawn = (through: CourseLine['through'], of: LineToLimit, fromHours = 0): CourseLine => ({
    through,
    fromHours,
    at: (hours) => {
      const { size, u } = of.at(hours)
      return { sizeMm: size, boundMm: factor * u }
    },
    ...(line.now || of.earliest === undefined ? {} : { earliestHours: of.earliest }),
    ...(line.now || of.expected === undefined ? {} : { expectedHours: of.expected }),
    ...(line.now || of.latest === undefined ? {} : { latestHours: of.latest }),
  })
  return {
    place: place(station),
    from,
    limitMm,
    points,
    lines: [
      drawn('all', line, points[0]?.hours),
      ...(lastTwo ? [drawn('last-two', lastTwo, points.at(-2)?.hours)] : []),
    ],
    now: line.now,
    ...(line.now || earliest === undefined ? {} : { earliestHours: earliest }),
    slopeUncertain: line.g >= 1,
  }
}
