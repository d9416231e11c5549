import type { StationFinding } from '../findings'

const radians = Math.PI / 180
const turn = 2 * Math.PI

/** The station nearest to a place on the wall, and how far it is. */
export interface NearestStation {
  readonly station: StationFinding
  /** Straight on the wall unrolled flat, mm; along the depth where both lie on one axis. */
  readonly distanceMm: number
  /** Along the depth, mm, and around, rad, to its nearest contact; both not negative. */
  readonly alongMm: number
  readonly around: number
}

/**
 * The station of which some contact is nearest to a place, straight on the wall unrolled at `diameterMm`:
 * depth in mm, angle in rad, contacts as degrees from the axis. The first of equals; undefined without
 * stations.
 */
export function nearestStation(
  stations: readonly StationFinding[],
  contacts: readonly number[],
  diameterMm: number,
  depthMm: number,
  angle: number,
): NearestStation | undefined {
  let nearest: NearestStation | undefined
  for (const station of stations) {
    const alongMm = Math.abs(station.depthMm - depthMm)
    const around = nearestContact(station.axisDegrees, contacts, angle)
    const distanceMm = Math.hypot(alongMm, (around * diameterMm) / 2)
    if (!nearest || distanceMm < nearest.distanceMm) nearest = { station, distanceMm, alongMm, around }
  }
  return nearest
}

/** Angle in rad, 0 to π, from a place on the wall to the nearest contact of an axis. */
export function nearestContact(axisDegrees: number, contacts: readonly number[], angle: number): number {
  let nearest = Math.PI
  for (const contact of contacts) {
    const off = Math.abs(((axisDegrees + contact) * radians - angle) % turn)
    nearest = Math.min(nearest, off, turn - off)
  }
  return nearest
}
