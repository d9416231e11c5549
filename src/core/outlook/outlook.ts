import { clampingsApart } from '../difference/clampings-apart'
import type { Place } from '../findings'
import { place } from '../form/range-finding'
import { comesBefore, type LineStart, type StationOutlook, startOf, stationOutlook } from './station-outlook'
import type { Visit } from './wear'

export type OutlookReason = 'no-limit' | 'no-hours' | 'nothing-to-count-from' | 'shrunk'

/** When the bore would meet its limit, in hours run. */
export type Outlook =
  | { readonly known: false; readonly why: OutlookReason; readonly place?: Place }
  | {
      readonly known: true
      /** What the line rests on: so many surveys, or one and the land or the new band at no hours. */
      readonly from: LineStart
      readonly surveys: number
      readonly lastHours: number
      /** The station that meets the limit first. */
      readonly place: Place
      readonly limitMm: number
      /** The limit is reached already as far as the readings can tell. */
      readonly now: boolean
      /** One-sided 95 %: it governs. Absent where it is now. */
      readonly earliestHours?: number
      readonly expectedHours?: number
      readonly latestHours?: number
      /** The slope does not stand out from its doubt. */
      readonly slopeUncertain: boolean
      /** One line does not fit the surveys; the last two are then looked at as well. */
      readonly rateChanged: boolean
      /** By the line through the last two, where the rate has changed. */
      readonly lastTwoExpectedHours?: number
      /** When to measure again: the sooner of half of the way to the earliest and the service interval. */
      readonly nextCheckHours?: number
    }

/** Every station with a line to the limit, and which of them comes first. */
export interface StationOutlooks {
  readonly limitMm: number
  readonly lastHours: number
  readonly all: readonly StationOutlook[]
  readonly first: StationOutlook
}

/**
 * When the bore would meet its largest size, in hours run: for each station a line through its diameters over all
 * surveys that have it (the same hours count once, other clampings not at all), its one-sided 95 % bound, and of
 * all stations the one that comes first. The bore needs no further factor: its first station's bound is the bore's.
 *
 * A station that one survey alone has is drawn from the land, or from the smallest new size, at no hours; running-in
 * lies inside it, so that errs on the safe side. Where one line does not fit (misfit beyond the 95 % point of χ²),
 * the last two surveys are looked at as well and the sooner bound governs.
 * Source: the bound as in `lineToLimit`; the rest own derivation.
 */
export function outlookOf(visit: Visit, before: readonly Visit[]): Outlook {
  const found = stationOutlooks(visit, before)
  if (typeof found === 'string') return { known: false, why: found }
  const { first, lastHours, limitMm } = found
  const { station, line, earliest, lastTwo } = first
  if (!line.now && earliest === undefined) return { known: false, why: 'shrunk', place: place(station) }
  return {
    known: true,
    from: first.from,
    surveys: first.surveys,
    lastHours,
    place: place(station),
    limitMm,
    now: line.now,
    ...(line.now
      ? {}
      : {
          ...(earliest === undefined ? {} : { earliestHours: earliest }),
          ...(line.expected === undefined ? {} : { expectedHours: line.expected }),
          ...(line.latest === undefined ? {} : { latestHours: line.latest }),
          ...(lastTwo?.expected === undefined ? {} : { lastTwoExpectedHours: lastTwo.expected }),
        }),
    slopeUncertain: line.g >= 1,
    rateChanged: first.rateChanged,
  }
}

/**
 * The lines of all stations outside lands to the largest size, or why there are none. Source: as for `outlookOf`.
 */
export function stationOutlooks(
  visit: Visit,
  before: readonly Visit[],
): StationOutlooks | Exclude<OutlookReason, 'shrunk'> {
  const { survey, finding } = visit
  const limitMm = finding.pair?.maxMm
  if (limitMm === undefined) return 'no-limit'
  const lastHours = survey.hoursRun
  if (lastHours === undefined || lastHours <= 0) return 'no-hours'
  const visits = [...ranBefore(visit, before, lastHours), visit]
  const start = startOf(finding)
  const worn = finding.stations.filter((s) => s.counted && !s.land)
  const all = worn.flatMap((station) => stationOutlook(station, visits, start, limitMm) ?? [])
  const [one] = all
  if (!one) return 'nothing-to-count-from'
  return { limitMm, lastHours, all, first: all.reduce((a, b) => (comesBefore(b, a) ? b : a), one) }
}

/** Earlier visits with fewer hours and nothing else bolted on, one for each count of hours, the latest of them. */
function ranBefore({ survey }: Visit, before: readonly Visit[], lastHours: number): Visit[] {
  const byHours = new Map<number, Visit>()
  for (const visit of before) {
    const { hoursRun } = visit.survey
    if (hoursRun === undefined || hoursRun >= lastHours || clampingsApart(visit.survey, survey)) continue
    byHours.set(hoursRun, visit)
  }
  return [...byHours].sort(([a], [b]) => a - b).map(([, visit]) => visit)
}
