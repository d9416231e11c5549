import { clampingsApart } from '../difference/clampings-apart'
import { sameStation } from '../difference/same-station'
import type { BoreFinding, StationFinding } from '../findings'
import type { Bore, Clamping, Survey } from '../measured'
import type { Term } from '../uncertainty/combine'
import { type Grown, type MostGrown, mostGrown } from './grown'

/** How much a bore has grown at its stations since something, mm. */
export interface Wear extends MostGrown {
  /**
   * What it is counted from: an earlier survey of the bore, wall that the rings never touch, a new bore of the same
   * sizes, or the new band.
   */
  readonly since: 'survey' | 'land' | 'bore' | 'new-band'
  /** The survey it is counted from. */
  readonly surveyId?: string
  /** The other bore it is counted from, and how much two new ones may differ as made (95 %), which is in every U. */
  readonly boreId?: string
  readonly asMadeExpandedMm?: number
  readonly stations: number
  readonly platingShare?: PlatingShare
  /** What was bolted to the bore then and now, where that differs: such sizes do not compare. */
  readonly clampings?: readonly [Clamping, Clamping]
}

/** Of the plating, if both walls wore alike and if one took it all; with the ± of the growth, the ends of both. */
export interface PlatingShare {
  readonly bothSides: number
  readonly oneSide: number
  readonly low: number
  readonly high: number
}

/** A survey of a bore with what it shows. */
export interface Visit {
  readonly survey: Survey
  readonly finding: BoreFinding
}

/** A new bore of the same sizes, with how much two such bores may differ as made, standard uncertainty, mm. */
export interface NewBore extends Visit {
  readonly asMadeMm: number
}

/**
 * How much a bore has grown, station by station: since it was new, since the survey before this one, and from a new
 * bore of the same sizes. New is an earlier survey at no hours; else the mean of this survey's stations on wall that
 * the rings never touch; else the band of new sizes, with both its ends. Levels within 1 mm are one. Errors that two
 * diameters share drop out of their difference. Lands take no part. An earlier survey with something else bolted on
 * is taken only where there is no other, with a caution and without shares. None without counted stations outside
 * lands. Own derivation.
 */
export function wearOf(
  bore: Bore,
  visit: Visit,
  before: readonly Visit[],
  newBores: readonly NewBore[] = [],
): Wear[] {
  const worn = visit.finding.stations.filter((s) => s.counted && !s.land)
  if (worn.length === 0) return []
  const alike = before.filter(({ survey }) => !clampingsApart(visit.survey, survey))
  const whenNew = alike.find(({ survey }) => survey.hoursRun === 0)
  const sinceNew =
    (whenNew && sinceSurvey(bore, visit, worn, whenNew)) ??
    sinceLand(bore, visit, worn) ??
    sinceBand(bore, visit, worn)
  const previous = alike.at(-1) ?? before.at(-1)
  const lately = previous && previous !== whenNew ? sinceSurvey(bore, visit, worn, previous) : undefined
  const fromOthers = newBores.flatMap((other) => sinceBore(bore, visit, worn, other) ?? [])
  return [
    ...(sinceNew ? [sinceNew] : []),
    ...(lately ? [withoutShares(lately)] : []),
    ...(sinceNew?.since === 'survey' ? [] : fromOthers),
  ]
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
  const clampings = clampingsApart(visit.survey, then.survey)
  return wear(bore, visit, sinceStations(worn, then), {
    since: 'survey',
    surveyId: then.survey.id,
    ...(clampings ? { clampings } : {}),
  })
}

function sinceBore(
  bore: Bore,
  visit: Visit,
  worn: readonly StationFinding[],
  other: NewBore,
): Wear | undefined {
  if (clampingsApart(visit.survey, other.survey)) return undefined
  return wear(bore, visit, sinceStations(worn, other, other.asMadeMm), {
    since: 'bore',
    boreId: other.finding.boreId,
    surveyId: other.survey.id,
    asMadeExpandedMm: normal975 * other.asMadeMm,
  })
}

const normal975 = 1.959963984540054

function sinceStations(worn: readonly StationFinding[], then: Visit, asMadeMm = 0): Grown[] {
  return worn.flatMap((now): Grown[] => {
    const was = sameStation(now, then.finding.stations)
    if (!was) return []
    const from = [{ factor: 1, contributions: was.contributions }]
    return [{ now, fromMm: was.diameterMm, from, asMadeMm }]
  })
}

function sinceLand(bore: Bore, visit: Visit, worn: readonly StationFinding[]): Wear | undefined {
  const land = visit.finding.stations.filter((s) => s.counted && s.land)
  if (land.length === 0) return undefined
  const share = 1 / land.length
  const fromMm = land.reduce((sum, s) => sum + s.diameterMm * share, 0)
  const from = land.map((s): Term => ({ factor: share, contributions: s.contributions }))
  return wear(
    bore,
    visit,
    worn.map((now): Grown => ({ now, fromMm, from, asMadeMm: 0 })),
    { since: 'land' },
  )
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
  const { diameterMm, expandedMm, depthMm, axisDegrees } = largest
  const grown = {
    wearMm: diameterMm - (fromMm + toMm) / 2,
    lowMm: diameterMm - expandedMm - toMm,
    highMm: diameterMm + expandedMm - fromMm,
  }
  const at = { depthMm, axisDegrees }
  return {
    since: 'new-band',
    stations: worn.length,
    largest: { ...at, ...grown, expandedMm },
    shrunk: [],
    ...(limitMm <= toMm
      ? {}
      : {
          allowedShare: {
            ...at,
            low: grown.lowMm / (limitMm - toMm),
            high: grown.highMm / (limitMm - fromMm),
          },
        }),
    ...plating(bore, grown),
  }
}

function wear(
  bore: Bore,
  visit: Visit,
  all: readonly Grown[],
  of: Pick<Wear, 'since' | 'surveyId' | 'boreId' | 'asMadeExpandedMm' | 'clampings'>,
): Wear | undefined {
  const found = mostGrown(all, of.clampings ? undefined : wearLimit(visit.finding))
  if (!found) return undefined
  return {
    ...of,
    stations: all.length,
    ...found,
    ...(of.clampings ? {} : plating(bore, found.largest)),
  }
}

/** As a share of the plating: half of the growth if both walls wore alike, all of it if one wall took it. */
function plating(
  { wall }: Bore,
  { wearMm, lowMm, highMm }: Pick<Wear['largest'], 'wearMm' | 'lowMm' | 'highMm'>,
): Pick<Wear, 'platingShare'> {
  const { platingUm } = wall ?? {}
  if (platingUm === undefined || platingUm <= 0) return {}
  const share = (mm: number) => Math.max(0, (mm * 1000) / platingUm)
  return {
    platingShare: {
      bothSides: share(wearMm) / 2,
      oneSide: share(wearMm),
      low: share(lowMm) / 2,
      high: share(highMm),
    },
  }
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
