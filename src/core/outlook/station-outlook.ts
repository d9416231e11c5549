import { sameStation } from '../difference/same-station'
import type { BoreFinding, Contribution, StationFinding } from '../findings'
import { chiSquaredCdf } from '../statistics/chi-squared'
import { studentQuantile } from '../statistics/student'
import { combine } from '../uncertainty/combine'
import { covarianceOf } from './covariance-of'
import { type LineToLimit, lineToLimit } from './line-to-limit'
import { newSizes, type Visit } from './wear'

/** What a line rests on: surveys, or one survey with the land or the smallest new size at no hours. */
export type LineStart = 'surveys' | 'land' | 'new-band'

/** A size at some hours, mm, with what its doubt is made of. */
export interface SizeAtHours {
  readonly hours: number
  readonly sizeMm: number
  readonly contributions: readonly Contribution[]
  /** Absent where it was not read there but taken: the land or the smallest new size at no hours. */
  readonly surveyId?: string
}

/** The line through the sizes of a station, and when it meets the limit. */
export interface StationOutlook {
  readonly station: StationFinding
  readonly from: LineStart
  /** In the order of their hours. */
  readonly sizes: readonly SizeAtHours[]
  readonly surveys: number
  readonly line: LineToLimit
  /** Standard uncertainties that its one-sided 95 % bound lies off. */
  readonly factor: number
  /** One line does not fit: misfit beyond the 95 % point of χ². */
  readonly rateChanged: boolean
  /** The line through the last two where the rate has changed, with its factor, which is that of the whole. */
  readonly lastTwo?: LineToLimit
  /** The sooner bound of both lines. */
  readonly earliest?: number
}

/** The size at no hours for stations that one survey alone has. */
export interface StartSize extends SizeAtHours {
  readonly from: 'land' | 'new-band'
}

/** The mean of the land of this survey, else the smallest new size, at no hours; undefined without either. */
export function startOf(finding: BoreFinding): StartSize | undefined {
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

/**
 * The line through a station's diameters over all visits that have it, the latest last; where that is the latest
 * alone, from the size at no hours. Undefined where there is nothing to draw a line from. Source: as for
 * `lineToLimit`; its factor is t at 0.95 for the degrees of freedom of the last difference.
 */
export function stationOutlook(
  station: StationFinding,
  visits: readonly Visit[],
  start: StartSize | undefined,
  limitMm: number,
): StationOutlook | undefined {
  const found = visits.flatMap(({ survey, finding }): SizeAtHours[] => {
    const same = sameStation(station, finding.stations)
    const { hoursRun, id } = survey
    return same && hoursRun !== undefined
      ? [{ hours: hoursRun, sizeMm: same.diameterMm, contributions: same.contributions, surveyId: id }]
      : []
  })
  const isAlone = found.length === 1
  const sizes = isAlone && start ? [start, ...found] : found
  const whole = lineOf(sizes, limitMm)
  if (!whole) return undefined
  const { line, factor } = whole
  const rateChanged = sizes.length > 2 && chiSquaredCdf(line.misfit, sizes.length - 2) > 0.95
  const lastTwo = rateChanged ? lineOf(sizes.slice(-2), limitMm)?.line : undefined
  const earliest = Math.min(
    line.earliest ?? Number.POSITIVE_INFINITY,
    lastTwo?.earliest ?? Number.POSITIVE_INFINITY,
  )
  return {
    station,
    from: isAlone && start ? start.from : 'surveys',
    sizes,
    surveys: found.length,
    line,
    factor,
    rateChanged,
    ...(lastTwo ? { lastTwo } : {}),
    ...(earliest === Number.POSITIVE_INFINITY ? {} : { earliest }),
  }
}

function lineOf(
  sizes: readonly SizeAtHours[],
  limit: number,
): { readonly line: LineToLimit; readonly factor: number } | undefined {
  const [last, previous] = [sizes[sizes.length - 1], sizes[sizes.length - 2]]
  if (!last || !previous) return undefined
  const ofLast = combine([
    { factor: 1, contributions: last.contributions },
    { factor: -1, contributions: previous.contributions },
  ])
  const factor = studentQuantile(0.95, ofLast.degreesOfFreedom)
  const line = lineToLimit({
    hours: sizes.map(({ hours }) => hours),
    sizes: sizes.map(({ sizeMm }) => sizeMm),
    covariance: regular(
      sizes.map((one) => sizes.map((other) => covarianceOf(one.contributions, other.contributions))),
    ),
    limit,
    factor,
  })
  return { line, factor }
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
export function comesBefore(a: StationOutlook, b: StationOutlook): boolean {
  if (a.line.now !== b.line.now) return a.line.now
  return (a.earliest ?? Number.POSITIVE_INFINITY) < (b.earliest ?? Number.POSITIVE_INFINITY)
}
