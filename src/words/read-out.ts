import type { StationFinding } from '../core/findings'
import { lengthUnit, mmPerInch } from './length-unit'
import { degrees, depth, length, size, sizeWithDoubt } from './numbers'
import { words } from './words'

/** What the wall holds at a place pointed at. */
export interface PointedWall {
  /** Diameter as drawn, mm. */
  readonly diameterMm: number
  readonly hatched: boolean
  /** Name of the port, where there is one. */
  readonly port?: string
  readonly nearest: StationFinding
  readonly nearestDistanceMm: number
  readonly isReading: boolean
}

/** A place on the wall: depth in mm, angle in degrees clockwise seen from the deck. */
export interface PointedPlace {
  readonly depthMm: number
  readonly angleDegrees: number
}

/** One line on a place of the wall: a reading, or how far off the nearest one is. */
export function readOut(wall: PointedWall, place: PointedPlace): string {
  const said = words.readOut
  const at = wall.isReading ? depth(place.depthMm) : depth(Number(place.depthMm.toFixed(1)))
  const angle = wall.isReading ? degrees(place.angleDegrees) : degrees(Math.round(place.angleDegrees) % 360)
  if (wall.port !== undefined) return said.port(at, angle, wall.port)
  const nearest = sizeWithDoubt(wall.nearest.diameterMm, wall.nearest.expandedMm)
  if (wall.isReading) return said.reading(at, angle, nearest)
  const away = distance(wall.nearestDistanceMm)
  return wall.hatched
    ? said.notMeasured(at, angle, away)
    : said.drawn(at, angle, size(wall.diameterMm), away, nearest)
}

function distance(mm: number): string {
  const least = lengthUnit() === 'inch' ? mmPerInch / 10 : 1
  return mm < least ? words.readOut.under(length(least, 0)) : length(mm, 0)
}
