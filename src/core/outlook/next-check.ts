import type { Measured, Survey } from '../measured'
import { dayAfter } from './day-after'
import type { Outlook } from './outlook'

/** When to measure a bore again, counted from its latest survey. */
export interface NextCheck {
  /** Hours after that survey. */
  readonly afterHours: number
  /** In hours run; absent where the survey does not record them. */
  readonly hours?: number
  /** Half of the way to the earliest, the service interval where that is sooner, or at once: it is at its limit. */
  readonly by: 'half-way' | 'service-interval' | 'at-limit'
  /** From the hours that the machine runs in a week. */
  readonly weeks?: number
  /** Day, as in 2026-03-09, where the survey has one; never later than the hours say. */
  readonly date?: string
}

/**
 * The sooner of half of the way to the earliest hours and the user's service interval, and from the hours that the
 * machine runs in a week the day, counted from the day of the survey. None without either, and none of a bore that
 * shrank: that is a question first. Whether the day is past is for those who have a clock. Own derivation.
 */
export function nextCheckOf(
  { spec, hoursPerWeek }: Pick<Measured, 'spec' | 'hoursPerWeek'>,
  survey: Pick<Survey, 'date' | 'hoursRun'>,
  outlook: Outlook | undefined,
): NextCheck | undefined {
  const due = dueOf(spec.serviceIntervalHours, outlook)
  if (!due) return undefined
  const weeks = hoursPerWeek === undefined ? undefined : due.afterHours / hoursPerWeek
  const days = due.afterHours === 0 ? 0 : weeks === undefined ? undefined : weeks * 7
  const date = survey.date === undefined || days === undefined ? undefined : dayAfter(survey.date, days)
  return {
    ...due,
    ...(survey.hoursRun === undefined ? {} : { hours: survey.hoursRun + due.afterHours }),
    ...(weeks === undefined ? {} : { weeks }),
    ...(date === undefined ? {} : { date }),
  }
}

function dueOf(
  interval: number | undefined,
  outlook: Outlook | undefined,
): Pick<NextCheck, 'afterHours' | 'by'> | undefined {
  if (outlook?.known === false && outlook.why === 'shrunk') return undefined
  if (outlook?.known && outlook.now) return { afterHours: 0, by: 'at-limit' }
  const { earliestHours, lastHours } = outlook?.known ? outlook : {}
  const halfWay =
    earliestHours === undefined || lastHours === undefined ? undefined : (earliestHours - lastHours) / 2
  if (interval !== undefined && !(halfWay !== undefined && halfWay <= interval)) {
    return { afterHours: interval, by: 'service-interval' }
  }
  return halfWay === undefined ? undefined : { afterHours: halfWay, by: 'half-way' }
}
