import { clampingsApart } from '../difference/clampings-apart'
import { sameStation } from '../difference/same-station'
import type { BoreFinding, Place, StationFinding } from '../findings'
import { place } from '../form/range-finding'
import type { Bore, Clamping, Survey } from '../measured'
import { combine, expanded, type Term } from '../uncertainty/combine'

/** How much a bore has grown at its stations since something, mm. */
export interface Wear {
  /** What it is counted from: an earlier survey of the bore, wall that the rings never touch, or the new band. */
  readonly since: 'survey' | 'land' | 'new-band'
  /** The survey it is counted from. */
  readonly surveyId?: string
  readonly stations: number
  /** The most that any station has grown, as read: chosen among all, and no bound. */
  readonly largest: Place & {
    readonly wearMm: number
    readonly expandedMm: number
    /** Against a band: from its largest to its smallest size. */
    readonly lowMm: number
    readonly highMm: number
  }
  /** Where it has shrunk beyond its U. */
  readonly shrunk: readonly Place[]
  /** Of what the limit allows from there, at the station that has used most; with its ends. */
  readonly allowedShare?: { readonly low: number; readonly high: number }
  /** Of the plating, if both walls wore alike and if one took it all. */
  readonly platingShare?: { readonly bothSides: number; readonly oneSide: number }
  /** What was bolted to the bore then and now, where that differs: such sizes do not compare. */
  readonly clampings?: readonly [Clamping, Clamping]
}

/** A survey of a bore with what it shows. */
export interface Visit {
  readonly survey: Survey
  readonly finding: BoreFinding
}

/** A station's growth from a size, with that size. */
interface Growth {
  readonly at: Place
  readonly fromMm: number
  readonly toMm: number
  readonly expandedMm: number
}

/**
 * How much a bore has grown, station by station: since it was new, and since the survey before this one. New is an
 * earlier survey at no hours; else the mean of this survey's stations on wall that the rings never touch; else the
 * band of new sizes, with both its ends. Levels within 1 mm are one. Errors that two diameters share drop out of
 * their difference. Lands take no part. None without counted stations outside lands. Own derivation.
 */
export function wearOf(bore: Bore, visit: Visit, before: readonly Visit[]): Wear[] {
  const worn = visit.finding.stations.filter((s) => s.counted && !s.land)
  if (worn.length === 0) return []
  const whenNew = before.find(({ survey }) => survey.hoursRun === 0)
  const previous = before[before.length - 1]
  const sinceNew = whenNew
    ? sinceSurvey(bore, visit, worn, whenNew)
    : (sinceLand(bore, visit, worn) ?? sinceBand(bore, visit, worn))
  const lately = previous && previous !== whenNew ? sinceSurvey(bore, visit, worn, previous) : undefined
  return [...(sinceNew ? [sinceNew] : []), ...(lately ? [withoutShares(lately)] : [])]
}

/** Shares are of what there was when new. */
function withoutShares({ allowedShare: _, platingShare: __, ...lately }: Wear): Wear {
  return lately
}

function sinceSurvey(
  bore: Bore,
  visit: Visit,
  worn: readonly StationFinding[],
  then: Visit,
): Wear | undefined {
  const growths = worn.flatMap((now): Growth[] => {
    const was = sameStation(now, then.finding.stations)
    if (!was) return []
    const u = combine([
      { factor: 1, contributions: now.contributions },
      { factor: -1, contributions: was.contributions },
    ])
    return [{ at: place(now), fromMm: was.diameterMm, toMm: now.diameterMm, expandedMm: expanded(u) }]
  })
  const clampings = clampingsApart(visit.survey, then.survey)
  return wear(bore, visit, growths, {
    since: 'survey',
    surveyId: then.survey.id,
    ...(clampings ? { clampings } : {}),
  })
}

function sinceLand(bore: Bore, visit: Visit, worn: readonly StationFinding[]): Wear | undefined {
  const land = visit.finding.stations.filter((s) => s.counted && s.land)
  if (land.length === 0) return undefined
  const share = 1 / land.length
  const fromMm = land.reduce((sum, s) => sum + s.diameterMm * share, 0)
  const minus = land.map((s): Term => ({ factor: -share, contributions: s.contributions }))
  const growths = worn.map((s): Growth => {
    const u = combine([{ factor: 1, contributions: s.contributions }, ...minus])
    return { at: place(s), fromMm, toMm: s.diameterMm, expandedMm: expanded(u) }
  })
  return wear(bore, visit, growths, { since: 'land' })
}

/** From anywhere in the band: its middle, with both ends in the interval. */
function sinceBand(bore: Bore, visit: Visit, worn: readonly StationFinding[]): Wear | undefined {
  const band = newSizes(visit.finding)
  const limitMm = wearLimit(visit.finding)
  // Against the new sizes alone the verdict says as much.
  if (!band || limitMm === undefined) return undefined
  const { fromMm, toMm } = band
  const [largest] = [...worn].sort((a, b) => b.diameterMm - a.diameterMm)
  if (!largest) return undefined
  const { diameterMm, expandedMm } = largest
  const grown = {
    wearMm: diameterMm - (fromMm + toMm) / 2,
    lowMm: diameterMm - expandedMm - toMm,
    highMm: diameterMm + expandedMm - fromMm,
  }
  return {
    since: 'new-band',
    stations: worn.length,
    largest: { ...place(largest), ...grown, expandedMm },
    shrunk: [],
    ...(limitMm <= toMm
      ? {}
      : {
          allowedShare: {
            low: grown.lowMm / (limitMm - toMm),
            high: grown.highMm / (limitMm - fromMm),
          },
        }),
    ...plating(bore, grown.highMm, grown.wearMm),
  }
}

function wear(
  bore: Bore,
  visit: Visit,
  growths: readonly Growth[],
  of: Pick<Wear, 'since' | 'surveyId' | 'clampings'>,
): Wear | undefined {
  const [first, ...rest] = growths
  if (!first) return undefined
  const grown = (growth: Growth) => growth.toMm - growth.fromMm
  const most = rest.reduce((a, b) => (grown(b) > grown(a) ? b : a), first)
  const wearMm = grown(most)
  const limitMm = wearLimit(visit.finding)
  const allowedMm = limitMm === undefined ? undefined : limitMm - most.fromMm
  const [lowMm, highMm] = [wearMm - most.expandedMm, wearMm + most.expandedMm]
  return {
    ...of,
    stations: growths.length,
    largest: { ...most.at, wearMm, expandedMm: most.expandedMm, lowMm, highMm },
    shrunk: growths.filter((growth) => grown(growth) < -growth.expandedMm).map(({ at }) => at),
    ...(allowedMm === undefined || allowedMm <= 0
      ? {}
      : { allowedShare: { low: lowMm / allowedMm, high: highMm / allowedMm } }),
    ...plating(bore, wearMm, wearMm),
  }
}

/** As a share of the plating: half of the growth if both walls wore alike, all of it if one wall took it. */
function plating({ wall }: Bore, oneSideMm: number, bothSidesMm: number): Pick<Wear, 'platingShare'> {
  const { platingUm } = wall ?? {}
  if (platingUm === undefined || platingUm <= 0) return {}
  const share = (mm: number) => Math.max(0, (mm * 1000) / platingUm)
  return { platingShare: { bothSides: share(bothSidesMm) / 2, oneSide: share(oneSideMm) } }
}

function wearLimit({ pair }: BoreFinding): number | undefined {
  return pair?.kind === 'wear' ? pair.maxMm : undefined
}

/** The sizes that the bore may have had when new, mm. */
export function newSizes({
  pair,
}: Pick<BoreFinding, 'pair'>): { readonly fromMm: number; readonly toMm: number } | undefined {
  const toMm = pair?.kind === 'wear' ? pair.newMaxMm : pair?.maxMm
  return pair?.minMm === undefined || toMm === undefined ? undefined : { fromMm: pair.minMm, toMm }
}
