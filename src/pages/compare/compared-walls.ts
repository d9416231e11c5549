import { gridBetween } from '../../charts/grid-between'
import type { Difference, DrawnStation, LimitPair } from '../../core/findings'
import type { Port, SurfaceFinding } from '../../core/measured'
import { columnAt, deviationAt, rowAt } from '../../core/surface/drawn-position'
import { nearestStation } from '../../core/surface/nearest-station'
import type { WallGrid } from '../../core/surface/wall-grid'
import type { Compared, ComparedDifference, TimeLine } from '../../job/compared'
import type { Job } from '../../job/schema'
import { gridOfBore, mapGridOfBore } from '../../job/selectors'
import type { TimeAhead } from '../../job/time-ahead'
import type { InTime } from '../../session/comparing'
import { aheadReadOut } from '../../words/ahead'
import {
  betweenReadOut,
  boreTitle,
  comparedTitle,
  differenceReadOut,
  differenceTitle,
  largestFigure,
  surveyTitle,
} from '../../words/compared'
import { plain } from '../../words/numbers'
import { type PointedPlace, readOut } from '../../words/read-out'
import { words } from '../../words/words'
import { hoursAhead } from './hours-ahead'

/** A wall on its way from one survey to the next. */
interface Way {
  readonly from: WallGrid
  readonly to: WallGrid
  readonly share: number
  readonly eased: boolean
}

/** A wall as it stands in the row: of a survey, of a difference, or on its way through time. */
export interface ComparedWall {
  readonly id: string
  readonly title: string
  readonly figure: string
  readonly grid: WallGrid
  readonly mapGrid: WallGrid
  readonly ports: readonly Port[]
  readonly stations: readonly DrawnStation[]
  readonly surface: readonly SurfaceFinding[]
  readonly levelsMm: readonly number[]
  readonly pair?: LimitPair
  readonly exaggeration?: number
  readonly isDifference?: true
  /** Between two surveys: drawn only. */
  readonly isBetween?: true
  readonly way?: Way
  readonly readOut: (place: PointedPlace) => string
}

const radians = Math.PI / 180

/** The wall of a survey. */
export function surveyWall(job: Job, one: Compared): ComparedWall | undefined {
  const { bore, survey, finding, wall } = one
  const grid = gridOfBore(job, bore.id, survey.id)
  const mapGrid = mapGridOfBore(job, bore.id, survey.id)
  if (!grid || !mapGrid) return undefined
  return {
    id: one.key,
    title: comparedTitle(one),
    figure: largestFigure(finding),
    grid,
    mapGrid,
    ports: bore.ports,
    stations: finding.stations,
    surface: finding.surface,
    levelsMm: survey.levelsMm,
    ...(finding.pair ? { pair: finding.pair } : {}),
    readOut: (place) => readOut(wall.state(place.depthMm, place.angleDegrees * radians), place),
  }
}

export const differenceId = 'difference'
export const timeId = 'time'

/** The wall of a difference; the cylinder of no difference is drawn as a thin ring. */
export function differenceWall(found: ComparedDifference): ComparedWall {
  const { one, other, grid, mapGrid, stations, exaggeration } = found
  const said = words.compare.less
  return {
    id: differenceId,
    title: differenceTitle(one, other),
    figure: said.drawn(plain(exaggeration, 0)),
    grid,
    mapGrid,
    ports: one.bore.ports,
    stations,
    surface: [],
    levelsMm: [...new Set(stations.map(({ depthMm }) => depthMm))],
    pair: { kind: 'band', newMaxMm: grid.middleMm },
    exaggeration,
    isDifference: true,
    readOut: (place) => differenceReadOut(pointedDifference(found, place), place),
  }
}

function pointedDifference({ one, difference, grid }: ComparedDifference, place: PointedPlace) {
  const angle = place.angleDegrees * radians
  const [column, row] = [columnAt(grid, angle), rowAt(grid, place.depthMm)]
  const cell = Math.min(Math.floor(row), grid.depthsMm.length - 2) * grid.angles.length + Math.floor(column)
  return {
    drawnMm: deviationAt(grid, column, row) / 1000,
    hatched: grid.hatched[cell] === 1,
    station: stationAt(difference, place),
    nearestDistanceMm: nearestTo(one, difference, place),
  }
}

function stationAt({ stations }: Difference, { depthMm, angleDegrees }: PointedPlace) {
  return stations.find(
    (station) =>
      Math.abs(station.depthMm - depthMm) < 0.01 &&
      Math.abs(((((station.axisDegrees - angleDegrees) % 180) + 270) % 180) - 90) < 0.01,
  )
}

function nearestTo({ finding, wall }: Compared, difference: Difference, place: PointedPlace): number {
  const both = finding.stations.filter((station) =>
    difference.stations.some(
      (other) => other.depthMm === station.depthMm && other.axisDegrees === station.axisDegrees,
    ),
  )
  const nearest = nearestStation(
    both,
    wall.contacts,
    wall.meanDiameterMm,
    place.depthMm,
    place.angleDegrees * radians,
  )
  return nearest?.distanceMm ?? 0
}

/** The wall of a bore at a place in time: exactly that of a survey, or drawn on its way between two. */
export function timeWall(
  line: TimeLine,
  { at, cameFrom }: InTime,
  isStill: boolean,
  ahead?: TimeAhead,
): ComparedWall | undefined {
  if (ahead && at > line.points.length - 1) return wallAhead(line, at, ahead)
  const before = Math.min(Math.floor(at), line.points.length - 1)
  const share = at - before
  const point = line.points[before]
  const next = line.points[before + 1]
  if (!point) return undefined
  const { bore, survey, finding, wall } = point
  const common = {
    id: timeId,
    title: words.compare.time.name(boreTitle(bore)),
    ports: bore.ports,
    levelsMm: survey.levelsMm,
    ...(finding.pair ? { pair: finding.pair } : {}),
  }
  if (next && share > 0) {
    return {
      ...common,
      figure: words.compare.time.betweenShort,
      grid: gridBetween(point.grid, next.grid, share),
      mapGrid: gridBetween(point.mapGrid, next.mapGrid, share),
      stations: [],
      surface: [],
      isBetween: true,
      way: { from: point.grid, to: next.grid, share, eased: false },
      readOut: betweenReadOut,
    }
  }
  const from = cameFrom === undefined || isStill ? undefined : line.points[cameFrom]
  return {
    ...common,
    figure: surveyTitle(point),
    grid: point.grid,
    mapGrid: point.mapGrid,
    stations: finding.stations,
    surface: finding.surface,
    ...(from && from !== point ? { way: { from: from.grid, to: point.grid, share: 1, eased: true } } : {}),
    readOut: (place) => readOut(wall.state(place.depthMm, place.angleDegrees * radians), place),
  }
}

/** In hours to come: the wall as it was last measured, faded, without marks; sizes by the lines of its stations. */
function wallAhead({ bore, points }: TimeLine, at: number, ahead: TimeAhead): ComparedWall | undefined {
  const point = points.at(-1)
  if (!point) return undefined
  const { grid, mapGrid, finding, survey } = point
  const hours = hoursAhead(ahead, at - (points.length - 1))
  return {
    id: timeId,
    title: words.compare.time.name(boreTitle(bore)),
    figure: words.compare.time.ahead.short(plain(hours, 0)),
    grid,
    mapGrid,
    ports: bore.ports,
    stations: [],
    surface: [],
    levelsMm: survey.levelsMm,
    ...(finding.pair ? { pair: finding.pair } : {}),
    isBetween: true,
    way: { from: grid, to: grid, share: 0.5, eased: false },
    readOut: (place) => aheadReadOut(ahead.courses.courses, hours, place),
  }
}
