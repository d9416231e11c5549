import type { StationFinding } from '../findings'
import type { Wall, WallKind } from '../measured'

/** Whether a kind of wall is usually honed in a workshop (common practice, no published source); the manual comes first. */
const usuallyHoned: Readonly<Record<WallKind, boolean>> = {
  'plated-aluminium': false,
  'aluminium-silicon': false,
  'grey-iron': true,
  steel: true,
}

/** Whether a wall may be honed: as the manual says, else as is usual for its kind; not while its kind is not recorded. */
export function mayBeHoned(wall: Wall | undefined): boolean {
  return wall !== undefined && (wall.mayBeHoned ?? usuallyHoned[wall.kind])
}

/** What honing takes off at least until it has gone over the whole wall, mm on the diameter (common practice, no published source). */
export const leastHoningMm = 0.01

/**
 * How much may be honed off, mm on the diameter: from the largest one-sided 95 % bound of any station (`boundsMm`)
 * to the largest size allowed. Undefined without stations.
 */
export function honingRoomMm(boundsMm: readonly number[], maxMm: number): number | undefined {
  return boundsMm.length === 0 ? undefined : maxMm - Math.max(...boundsMm)
}

/** Stations whose size counts. */
export function countedStations(stations: readonly StationFinding[]): StationFinding[] {
  return stations.filter(({ counted }) => counted)
}
