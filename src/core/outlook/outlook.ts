import { clampingsApart } from '../difference/clampings-apart'
import { sameStation } from '../difference/same-station'
import type { Contribution, Place, StationFinding } from '../findings'
import { place } from '../form/range-finding'
import { chiSquaredQuantile } from '../statistics/chi-squared'
import { studentQuantile } from '../statistics/student'
import { combine } from '../uncertainty/combine'
import { covarianceOf } from './covariance-of'
import { type LineToLimit, lineToLimit } from './line-to-limit'
import { newSizes, type Visit } from './wear'

export type OutlookReason = 'no-limit' | 'no-hours' | 'nothing-to-count-from' | 'shrunk'

/** When the bore would meet its limit, in hours run. */
export type Outlook =
  | { readonly known: false; readonly why: OutlookReason; readonly place?: Place }
  | {
      readonly known: true
      /** What the line rests on: so many surveys, or one and the land or the new band at no hours. */
      readonly from: 'surveys' | 'land' | 'new-band'
      readonly surveys: number
      readonly lastHours: number
      /** The station that meets the limit first. */
      readonly place: Place
      readonly limitMm: number
      /** The limit is reached already as far as the readings can tell. */
      readonly now: boolean
      /** One-sided 95 %: it governs. Absent where the bound never meets the limit. */
      readonly earliestHours?: number
      readonly expectedHours?: number
      readonly latestHours?: number
      /** The slope does not stand out from its doubt. */
      readonly slopeUncertain: boolean
      /** One line does not fit the surveys; the last two are then looked at as well. */
      readonly rateChanged: boolean
      /** By the line through the last two, where the rate has changed. */
      readonly lastTwoExpectedHours?: number
      /** When to measure again: half of the way to the earliest. */
      readonly nextCheckHours?: number
    }

/** A size at some hours, with what its doubt is made of. */
interface Size {
  readonly hours: number
  readonly sizeMm: number
  readonly contributions: readonly Contribution[]
}

interface StationOutlook {
  readonly station: StationFinding
  readonly line: LineToLimit
  readonly surveys: number
  readonly rateChanged: boolean
  readonly lastTwo?: LineToLimit
  readonly earliest?: number
}

/**
 * When the bore would meet its largest size, in hours run: for each station a line through its diameters over all
 * surveys that have it (the same hours count once, other clampings not at all), its one-sided 95 % bound, and of
 * all stations the one that comes first. The bore needs no further factor: its first station's bound is the bore's.
 *
 * One survey alone is drawn from the land, or from the smallest new size, at no hours; running-in lies inside it, so
 * that errs on the safe side. Where one line does not fit (misfit beyond the 95 % point of χ²), the last two surveys
 * are looked at as well and the sooner bound governs. The next check lies half of the way to it.
 * Source: the bound as in `lineToLimit`; the rest own derivation.
 */
export function outlookOf(visit: Visit, before: readonly Visit[]): Outlook {
  const { survey, finding } = visit
  const limitMm = finding.pair?.maxMm
  if (limitMm === undefined) return { known: false, why: 'no-limit' }
  const lastHours = survey.hoursRun
  if (lastHours === undefined || lastHours <= 0) return { known: false, why: 'no-hours' }
  const visits = [...ranBefore(visit, before, lastHours), visit]
  const worn = finding.stations.filter((s) => s.counted && !s.land)
  const start = visits.length > 1 ? undefined : startOf(visit)
  const all = worn.flatMap((station) => stationOutlook(station, visits, start, limitMm))
  const [first] = all
  if (!first) return { known: false, why: 'nothing-to-count-from' }
  const soonest = all.reduce((a, b) => (comesBefore(b, a) ? b : a), first)
  if (!soonest.line.now && soonest.earliest === undefined) {
    return { known: false, why: 'shrunk', place: place(soonest.station) }
  }
  return worded(soonest, start?.from ?? 'surveys', lastHours, limitMm)
}

function worded(
  { station, line, earliest, surveys, rateChanged, lastTwo }: StationOutlook,
  from: 'surveys' | 'land' | 'new-band',
  lastHours: number,
  limitMm: number,
): Outlook {
  return {
    known: true,
    from,
    surveys,
    lastHours,
    place: place(station),
    limitMm,
    now: line.now,
    ...(line.now || earliest === undefined
      ? {}
      : { earliestHours: earliest, nextCheckHours: lastHours + (earliest - lastHours) / 2 }),
    ...(line.now || line.expected === undefined ? {} : { expectedHours: line.expected }),
    ...(line.now || line.latest === undefined ? {} : { latestHours: line.latest }),
    ...(line.now || lastTwo?.expected === undefined ? {} : { lastTwoExpectedHours: lastTwo.expected }),
    slopeUncertain: line.g >= 1,
    rateChanged,
  }
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

/** The size at no hours where one survey stands alone. */
function startOf({ finding }: Visit): (Size & { readonly from: 'land' | 'new-band' }) | undefined {
  const land = finding.stations.filter((s) => s.counted && s.land)
  if (land.length > 0) {
    const share = 1 / land.length
    return {
      from: 'land',
      hours: 0,
      sizeMm: land.reduce((sum, s) => sum + s.diameterMm * share, 0),
      contributions: land.flatMap((s) =>
        s.contributions.map((part) => ({ ...part, signedMm: part.signedMm * share })),
      ),
    }
  }
  const band = newSizes(finding)
  return band && { from: 'new-band', hours: 0, sizeMm: band.fromMm, contributions: [] }
}

function stationOutlook(
  station: StationFinding,
  visits: readonly Visit[],
  start: Size | undefined,
  limitMm: number,
): StationOutlook[] {
  const found = visits.flatMap(({ survey, finding }): Size[] => {
    const same = sameStation(station, finding.stations)
    const { hoursRun } = survey
    return same && hoursRun !== undefined
      ? [{ hours: hoursRun, sizeMm: same.diameterMm, contributions: same.contributions }]
      : []
  })
  const sizes = start ? [start, ...found] : found
  const line = lineOf(sizes, limitMm)
  if (!line) return []
  const rateChanged = sizes.length > 2 && line.misfit > chiSquaredQuantile(0.95, sizes.length - 2)
  const lastTwo = rateChanged ? lineOf(sizes.slice(-2), limitMm) : undefined
  const earliest = Math.min(
    line.earliest ?? Number.POSITIVE_INFINITY,
    lastTwo?.earliest ?? Number.POSITIVE_INFINITY,
  )
  return [
    {
      station,
      line,
      surveys: found.length,
      rateChanged,
      ...(lastTwo ? { lastTwo } : {}),
      ...(earliest === Number.POSITIVE_INFINITY ? {} : { earliest }),
    },
  ]
}

function lineOf(sizes: readonly Size[], limit: number): LineToLimit | undefined {
  const [last, previous] = [sizes[sizes.length - 1], sizes[sizes.length - 2]]
  if (!last || !previous) return undefined
  const ofLast = combine([
    { factor: 1, contributions: last.contributions },
    { factor: -1, contributions: previous.contributions },
  ])
  return lineToLimit({
    hours: sizes.map(({ hours }) => hours),
    sizes: sizes.map(({ sizeMm }) => sizeMm),
    covariance: regular(
      sizes.map((one) => sizes.map((other) => covarianceOf(one.contributions, other.contributions))),
    ),
    limit,
    factor: studentQuantile(0.95, ofLast.degreesOfFreedom),
  })
}

/** Of the largest variance: a doubt larger by a thirty-thousandth changes no hour. */
const leastShare = 1e-9

/**
 * The covariance with a little more on its diagonal: the end of a band is a number without doubt, and sizes that
 * share all of theirs could not be told apart.
 */
function regular(covariance: readonly (readonly number[])[]): number[][] {
  const largest = Math.max(...covariance.map((row, i) => row[i] ?? 0))
  const more = Math.max(largest * leastShare, 1e-16)
  return covariance.map((row, i) => row.map((value, j) => (i === j ? value + more : value)))
}

/** At its limit now, then by the earliest hours; a station that never meets it comes last. */
function comesBefore(a: StationOutlook, b: StationOutlook): boolean {
  if (a.line.now !== b.line.now) return a.line.now
  return (a.earliest ?? Number.POSITIVE_INFINITY) < (b.earliest ?? Number.POSITIVE_INFINITY)
}
