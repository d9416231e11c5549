import type { NextCheck } from '../../core/outlook/next-check'
import type { OutlookReason } from '../../core/outlook/outlook'

/** How much a bore has grown, and when it would meet its limit. */
export const growth = {
  growth: {
    wear: {
      whenNew: 'Most worn since it was new',
      since: (visit: string) => `Most worn since ${visit}`,
      from: (bore: string) => `Most worn, from ${bore}`,
      land: 'Most worn, from the wall the rings never touch',
      'new-band': 'Most worn, from the new sizes',
    },
    visitOn: (day: string) => day,
    visitNumber: (number: number) => `survey ${number}`,
    range: (low: string, high: string) => `${low} to ${high}`,
    read: (stations: number) => `the most read at ${stations} stations, not a bound`,
    anywhere: 'it was made anywhere in the new sizes',
    share: (low: string, high: string) =>
      low === high
        ? `${low} of what the wear limit allows`
        : `${low} to ${high} of what the wear limit allows`,
    plating: (both: string, one: string, low: string, high: string) =>
      `of the plating ${both} if both walls wore alike, ${one} if one wall took it all; with the ± between ${low} and ${high}`,
    asMade: (microns: string) => `with what two new bores may differ by as made, ${microns}`,
    shrunk: (places: string) => `smaller than before, beyond the ±, at ${places}: dirt, or a slip?`,
    outlook: 'Outlook',
    now: 'at its limit now',
    nowDetail: 'as far as these readings can tell',
    earliest: (hours: string) => `${hours} h at the earliest`,
    never: 'no hours to be named',
    limit: (limit: string) => `until ${limit}`,
    oneSided: 'if it wears on as it has, 19 chances in 20 that it is later',
    expected: (hours: string) => `by the line at ${hours} h`,
    latest: (hours: string) => `${hours} h at the latest`,
    uncertain: 'the growth does not stand out from its doubt, so only the earliest can be named',
    lastTwo: (hours: string) => `by the last two surveys at ${hours} h`,
    changed: 'one rate does not fit all surveys; the sooner of the whole and the last two is given',
    from: {
      surveys: (count: number) => `from ${count} surveys`,
      land: 'from this survey and the wall the rings never touch; running-in lies inside it',
      'new-band': 'from this survey and the smallest new size; running-in lies inside it',
    },
    check: {
      name: 'Next check',
      by: (hours: string) => `by ${hours} h run`,
      after: (hours: string) => `after ${hours} h more`,
      why: {
        'half-way': 'half of the way to the earliest hours',
        'service-interval': 'the service interval that the limits give',
        'at-limit': 'it may be at its limit now',
      } satisfies Record<NextCheck['by'], string>,
      date: (day: string, hoursPerWeek: string) => `at ${hoursPerWeek} h a week on ${day}`,
      due: 'that day has come',
    },
    reasons: {
      'no-limit': 'needs a largest size',
      'no-hours': 'needs the hours run of this survey',
      'nothing-to-count-from': 'needs an earlier survey with its hours, a land or the new sizes',
      shrunk: 'the bore has shrunk beyond its ±: measure again before any hours are named',
    } satisfies Record<OutlookReason, string>,
    manual: 'the intervals of the manual come first',
  },
} as const
