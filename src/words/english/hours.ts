import type { CourseMark } from '../../core/outlook/course-marks'
import type { NoCourse } from '../../core/outlook/hours-course'

/** How a bore has grown over the hours, and when it would meet its limit, as a chart. */
export const hours = {
  hours: {
    title: (place: string) => `Size over hours run at ${place}`,
    station: 'Station',
    stations: { first: (place: string) => `${place}, first at its limit`, other: (place: string) => place },
    list: (place: string) => `Surveys and hours at ${place}. Left and right arrow go from one to the next.`,
    point: 'Show its size over the hours',
    unit: 'h run',
    lastSurvey: 'last survey',
    none: {
      'no-readings': 'This view appears with the first reading of a gauge.',
      'no-limit': 'There is no line to a limit without one: enter a wear limit or a largest size.',
      'no-hours': 'This view needs the hours run of the latest survey.',
      'nothing-to-count-from':
        'This view needs an earlier survey with its hours, a land, or the new sizes to count from.',
      'never-ran': 'This bore never ran: there is nothing over hours yet.',
      'not-of-this-engine': 'A bore for comparison has no hours of this engine.',
    } satisfies Record<NoCourse, string>,
    /** Written on the chart, long and short. */
    labels: {
      limit: (size: string) => `limit ${size}`,
      'next-check': (at: string) => `next check ${at}`,
      earliest: (at: string) => `earliest ${at}`,
      expected: (at: string) => `by the line ${at}`,
      'last-two-expected': (at: string) => `by the last two ${at}`,
      latest: (at: string) => `latest ${at}`,
    } satisfies Record<Exclude<CourseMark['kind'], 'reading' | 'taken'> | 'limit', (text: string) => string>,
    short: {
      'next-check': 'check',
      earliest: 'earliest',
      expected: 'line',
      'last-two-expected': 'last two',
      latest: 'latest',
    },
    at: (hours: string) => `${hours} h`,
    reading: (survey: string, hours: string, size: string) => `${survey}, ${hours}: ${size}`,
    survey: (number: number) => `Survey ${number}`,
    surveyOn: (number: number, day: string) => `Survey ${number} on ${day}`,
    taken: {
      land: (size: string) => `At no hours: ${size}, the wall the rings never touch`,
      'new-band': (size: string) => `At no hours: ${size}, the smallest new size`,
      surveys: (size: string) => `At no hours: ${size}`,
    },
    marks: {
      'next-check': (hours: string) => `${hours}: next check`,
      earliest: (hours: string) => `${hours}: the earliest that it meets its limit`,
      expected: (hours: string) => `${hours}: the line meets the limit`,
      'last-two-expected': (hours: string) => `${hours}: the line of the last two surveys meets the limit`,
      latest: (hours: string) => `${hours}: the latest that it meets its limit`,
    },
    sentences: {
      now: 'At its limit now, as far as its readings can tell.',
      shrunk: 'It has shrunk beyond its ±: measure again before any hours are named.',
      earliest: (hours: string, limit: string) => `Meets ${limit} at ${hours} h at the earliest.`,
      expected: (hours: string) => `By the line at ${hours} h.`,
      lastTwo: (hours: string) => `By the last two surveys at ${hours} h.`,
      latest: (hours: string) => `At ${hours} h at the latest.`,
      uncertain: 'The growth does not stand out from its doubt, so only the earliest is named.',
      changed: 'One rate does not fit all surveys: both lines are drawn, and the sooner bound counts.',
      check: (hours: string) => `Next check by ${hours} h.`,
      key: 'Discs: readings; bars: their ± U (95 %). Shade: where the line may lie, 19 chances in 20 to each side.',
      ahead: 'Broken past the last survey: if it wears on as it has.',
      alone: 'Drawn from one survey: running-in lies inside it.',
    },
  },
}
