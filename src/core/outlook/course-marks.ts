import type { HoursCourse, HoursCourses } from './hours-course'

/** Something to be pointed at in a course over hours: what was read or taken, and when the limit is met. */
export interface CourseMark {
  readonly kind: 'reading' | 'taken' | 'next-check' | 'earliest' | 'expected' | 'last-two-expected' | 'latest'
  readonly hours: number
  /** Of a reading or a size taken, mm, with its U; of a bound the limit. */
  readonly sizeMm?: number
  readonly expandedMm?: number
  readonly surveyId?: string
  readonly date?: string
}

/** All of them in the order of their hours. Own derivation: a list of what `hoursCourses` holds. */
export function courseMarks(
  { points, lines, limitMm, earliestHours }: HoursCourse,
  { nextCheck }: Pick<HoursCourses, 'nextCheck'>,
): CourseMark[] {
  const [whole, lastTwo] = lines
  const bounds: readonly (readonly [CourseMark['kind'], number | undefined])[] = [
    ['earliest', earliestHours],
    ['expected', whole?.expectedHours],
    ['last-two-expected', lastTwo?.expectedHours],
    ['latest', whole?.latestHours],
  ]
  const check = nextCheck && nextCheck.by !== 'at-limit' ? nextCheck : undefined
  return [
    ...points.map(
      (point): CourseMark => ({ ...point, kind: point.surveyId === undefined ? 'taken' : 'reading' }),
    ),
    ...(check?.hours === undefined
      ? []
      : [
          {
            kind: 'next-check' as const,
            hours: check.hours,
            ...(check.date === undefined ? {} : { date: check.date }),
          },
        ]),
    ...bounds.flatMap(([kind, hours]): CourseMark[] =>
      hours === undefined ? [] : [{ kind, hours, sizeMm: limitMm }],
    ),
  ].sort((a, b) => a.hours - b.hours)
}
