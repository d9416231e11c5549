import { canProveInside } from './conformity/conformity'
import { temperatureNotes } from './conformity/temperature-notes'
import type { BoreVerdict, LimitPair, Note, Place, StationFinding, TemperatureEffect } from './findings'
import type { Bore, GaugeKind, SetUp, StandardKind, Survey } from './measured'
import { typicalDifferenceDoubtK } from './temperature/temperatures'

/** Beyond this distance along the depth from the nearest reading the wall counts as unmeasured, mm. */
export const reachOfReadingMm = 8

/** What the notes of a bore are made from. */
export interface Noted {
  readonly bore: Bore
  readonly survey: Survey
  readonly kind: GaugeKind
  readonly setUp: SetUp
  readonly standardKind: StandardKind
  readonly stations: readonly StationFinding[]
  readonly pair: LimitPair | undefined
  readonly verdict: BoreVerdict
  readonly temperature: TemperatureEffect | undefined
  /** Planned stations without a reading within reach, where both contacts would stand on metal. */
  readonly notRead: readonly Place[]
  readonly drawnLengthMm: number
}

/** What must be said beside the figures: what this gauge and these stations cannot show. */
export function notesOf(noted: Noted): Note[] {
  const counted = noted.stations.filter((s) => s.counted)
  return [
    ...gaugeCannotProve(counted, noted.pair),
    ...temperatureNotes(
      noted.stations,
      noted.pair,
      noted.bore.role === 'of-this-engine' ? noted.verdict : undefined,
      noted.temperature,
      noted.setUp.soakedTogether === true,
    ),
    ...belowSmallestNew(counted, noted.pair, noted.verdict),
    ...noted.stations
      .filter((s) => !s.counted)
      .map((s): Note => ({ code: 'blocked-reading', place: placeOf(s), by: s.blockedBy })),
    ...soakedButApart(noted.setUp, noted.standardKind),
    ...(noted.kind === 'three-contact-micrometer' ? [] : whatAxesLeaveOpen(counted)),
    ...gapsBetween(counted),
    ...outOfReach(noted.survey),
    ...(noted.notRead.length > 0 ? [{ code: 'stations-not-read', places: noted.notRead } as const] : []),
    ...(noted.bore.lengthMm === undefined && counted.length > 0
      ? [{ code: 'length-not-known', drawnMm: noted.drawnLengthMm } as const]
      : []),
  ]
}

function outOfReach({ unreachable = [] }: Survey): Note[] {
  const places = unreachable.map(({ depthMm, axisDegrees }) => ({ depthMm, axisDegrees }))
  return places.length > 0 ? [{ code: 'stations-out-of-reach', places }] : []
}

function placeOf({ depthMm, axisDegrees }: StationFinding): Place {
  return { depthMm, axisDegrees }
}

function gaugeCannotProve(stations: readonly StationFinding[], pair: LimitPair | undefined): Note[] {
  if (!pair || pair.kind === 'wear' || pair.minMm === undefined || pair.maxMm === undefined) return []
  const first = stations[0]
  const width = pair.maxMm - pair.minMm
  if (!first || stations.some((s) => canProveInside(s.standardUncertaintyMm, s.degreesOfFreedom, width))) {
    return []
  }
  const least = Math.min(...stations.map((s) => s.expandedMm))
  return [{ code: 'gauge-cannot-prove-band', expandedMm: least, neededExpandedMm: width / 2 }]
}

/** Beside a wear limit, a station proven below the smallest new size is a question to the user. */
function belowSmallestNew(
  stations: readonly StationFinding[],
  pair: LimitPair | undefined,
  verdict: BoreVerdict,
): Note[] {
  const min = pair?.kind === 'wear' ? pair.minMm : undefined
  if (min === undefined || !verdict.known) return []
  return stations
    .filter((s) => min - s.diameterMm >= verdict.factor * s.standardUncertaintyMm)
    .map((s) => ({ code: 'below-smallest-new', place: placeOf(s) }))
}

/**
 * Soaked together, bore and reference differ by no more than the 95 % doubt of their difference: where more is
 * recorded, one of the two temperatures or the soaking is not as it was.
 */
function soakedButApart(setUp: SetUp, reference: StandardKind): Note[] {
  const { boreTemperatureC: boreC, referenceTemperatureC: referenceC, soakedTogether } = setUp
  if (soakedTogether !== true || boreC === undefined || referenceC === undefined) return []
  // Rounding in the difference of two decimal figures is no difference of temperature.
  const isApart = Math.abs(boreC - referenceC) > 2 * typicalDifferenceDoubtK + 1e-9
  return isApart ? [{ code: 'soaked-but-apart', boreC, referenceC, reference }] : []
}

function whatAxesLeaveOpen(stations: readonly StationFinding[]): Note[] {
  if (stations.length === 0) return []
  const axes = [...new Set(stations.map((s) => s.axisDegrees))].sort((a, b) => a - b)
  const open: Note[] = [{ code: 'two-contacts-see-even-lobes-only' }]
  if (axes.length === 1) open.unshift({ code: 'one-axis-sees-no-oval' })
  if (axes.length === 2) open.unshift({ code: 'two-axes-can-miss-an-oval', axesDegrees: axes })
  return open
}

function gapsBetween(stations: readonly StationFinding[]): Note[] {
  const depths = [...new Set(stations.map((s) => s.depthMm))].sort((a, b) => a - b)
  const gaps = depths.flatMap((depth, i) => {
    const next = depths[i + 1]
    if (next === undefined || next - depth <= 2 * reachOfReadingMm) return []
    return [{ fromDepthMm: depth + reachOfReadingMm, toDepthMm: next - reachOfReadingMm }]
  })
  return gaps.length === 0 ? [] : [{ code: 'no-reading-between', gaps }]
}
