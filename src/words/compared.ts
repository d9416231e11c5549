import { standsOut } from '../core/difference/difference-grid'
import type { BoreFinding, Difference, DifferenceStation } from '../core/findings'
import type { Bore, Clamping, Survey } from '../core/measured'
import { dayText } from './day-text'
import { asMadeText } from './findings'
import {
  degrees,
  depth,
  differenceWithDoubt,
  doubtFigure,
  inMicrons,
  length,
  microns,
  placeText,
  plain,
  plusMinusMicrons,
  sizeWithDoubt,
} from './numbers'
import type { PointedPlace } from './read-out'
import { joined } from './row'
import { words } from './words'

/** A survey of a bore among those compared. */
interface NamedSurvey {
  readonly bore: Pick<Bore, 'name' | 'role'>
  readonly survey: Pick<Survey, 'date' | 'hoursRun'>
  readonly number: number
  readonly ofBore: number
}

/** "Bore 1"; a bore for comparison by its own name. */
export function boreTitle({ name, role }: Pick<Bore, 'name' | 'role'>): string {
  return role === 'for-comparison' ? name : words.picture.inRow(name)
}

/** A survey in short: by its hours, else its day, else its number. */
export function surveyTitle({ survey, number, ofBore }: NamedSurvey): string {
  const said = words.compare
  if (survey.hoursRun !== undefined) return said.hours(plain(survey.hoursRun, 1))
  return survey.date === undefined ? said.survey(number, ofBore) : dayText(survey.date)
}

/** The name of one that is compared; the survey where its bore has several. */
export function comparedTitle(one: NamedSurvey): string {
  const bore = boreTitle(one.bore)
  return one.ofBore > 1 ? words.compare.ofSurvey(bore, surveyTitle(one)) : bore
}

/** One less another, in short: two surveys of one bore by themselves. */
export function differenceTitle(one: NamedSurvey, other: NamedSurvey): string {
  const { name } = words.compare.less
  return one.bore === other.bore
    ? name(surveyTitle(one), surveyTitle(other))
    : name(comparedTitle(one), comparedTitle(other))
}

/** The same with the bore that both surveys are of. */
export function differenceHeading(one: NamedSurvey, other: NamedSurvey): string {
  const title = differenceTitle(one, other)
  return one.bore === other.bore ? words.compare.ofSurvey(boreTitle(one.bore), title) : title
}

/** The largest diameter of a bore with its doubt; nothing without a reading that counts. */
export function largestFigure({ largest, stations }: Pick<BoreFinding, 'largest' | 'stations'>): string {
  const worst = stations.find((s) => s.depthMm === largest?.depthMm && s.axisDegrees === largest.axisDegrees)
  return worst ? sizeWithDoubt(worst.diameterMm, worst.expandedMm) : ''
}

/** A cell of the table of a difference: "+24 ± 4". */
export interface DifferenceCell {
  readonly text: string
  readonly standsOut: boolean
}

export interface DifferenceTable {
  readonly axes: readonly string[]
  /** From the deck down; a cell that is absent is no station of both. */
  readonly rows: readonly {
    readonly level: string
    readonly cells: readonly (DifferenceCell | undefined)[]
  }[]
}

export function differenceTable({ stations }: Pick<Difference, 'stations'>): DifferenceTable {
  const distinct = (values: readonly number[]) => [...new Set(values)].sort((a, b) => a - b)
  const axes = distinct(stations.map(({ axisDegrees }) => axisDegrees))
  const at = (depthMm: number, axisDegrees: number) =>
    stations.find((station) => station.depthMm === depthMm && station.axisDegrees === axisDegrees)
  return {
    axes: axes.map(degrees),
    rows: distinct(stations.map(({ depthMm }) => depthMm)).map((depthMm) => ({
      level: depth(depthMm),
      cells: axes.map((axisDegrees) => cellOf(at(depthMm, axisDegrees))),
    })),
  }
}

function cellOf(station: DifferenceStation | undefined): DifferenceCell | undefined {
  if (!station) return undefined
  const { differenceMm, expandedMm } = station
  return {
    text: `${microns(differenceMm, { sign: true })} ± ${doubtFigure(expandedMm)}`,
    standsOut: standsOut(station),
  }
}

/** What stands beneath the table of a difference. */
export interface DifferenceLine {
  readonly name: string
  readonly figure: string
  readonly detail: string
}

export function differenceLines(found: Difference): readonly DifferenceLine[] {
  const { largest, mean, stations } = found
  const { rows } = words.compare.less
  const said = words.findings
  return [
    {
      name: rows.largest,
      figure: differenceWithDoubt(largest.differenceMm, largest.expandedMm),
      detail: stations.length > 1 ? `${placeText(largest)} · ${said.largestRead}` : placeText(largest),
    },
    {
      name: rows.mean,
      figure: differenceWithDoubt(mean.differenceMm, mean.expandedMm),
      detail: joined(said.stationsBoth(stations.length), asMadeText(found)),
    },
  ]
}

/** What has to be kept in mind of a difference: bolts that bend, and how alike new bores are made. */
export function differenceCautions({ clampings, asMadeExpandedMm }: Difference): readonly string[] {
  const bolted = (clamping: Clamping) => words.setUp.more.clampings[clamping]
  return [
    ...(clampings ? [words.findings.clampingsApart(bolted(clampings[0]), bolted(clampings[1]))] : []),
    ...(asMadeExpandedMm === undefined
      ? []
      : [words.compare.less.asMade(plusMinusMicrons(asMadeExpandedMm))]),
  ]
}

/** What a wall of a difference holds at a place pointed at. */
export interface PointedDifference {
  readonly drawnMm: number
  readonly hatched: boolean
  /** The station that is pointed at. */
  readonly station: DifferenceStation | undefined
  readonly nearestDistanceMm: number
}

/** One line on a place of a difference: read at a station, drawn between, or not measured in both. */
export function differenceReadOut(wall: PointedDifference, place: PointedPlace): string {
  const said = words.compare.readOut
  const [at, angle] = placeOf(place)
  if (wall.station) {
    const { differenceMm, expandedMm } = wall.station
    return said.difference(at, angle, differenceWithDoubt(differenceMm, expandedMm))
  }
  if (wall.hatched) return said.notBoth(at, angle)
  return said.drawn(at, angle, inMicrons(wall.drawnMm, { sign: true }), length(wall.nearestDistanceMm, 0))
}

/** The read-out of a wall between two surveys: it has no figure. */
export function betweenReadOut(place: PointedPlace): string {
  return words.compare.readOut.between(...placeOf(place))
}

function placeOf({ depthMm, angleDegrees }: PointedPlace): [string, string] {
  return [depth(Number(depthMm.toFixed(1))), degrees(Math.round(angleDegrees) % 360)]
}
