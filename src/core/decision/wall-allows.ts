import type { StationFinding } from '../findings'
import type { Spec, Wall, WallKind } from '../measured'

/** What is usually done to a kind of wall (common practice, no published source); the manual comes first. */
const usual: Readonly<Record<WallKind, { readonly boring: boolean; readonly honing: boolean }>> = {
  'plated-aluminium': { boring: false, honing: false },
  'aluminium-silicon': { boring: false, honing: false },
  'grey-iron': { boring: true, honing: true },
  steel: { boring: false, honing: true },
}

/** What may be done to a wall, and whether the manual said so or its kind. */
export interface WallAllows {
  readonly boring: boolean
  readonly honing: boolean
  readonly from: 'manual' | 'kind' | 'not-known'
}

/**
 * Whether a wall may be bored and honed: as the manual says, else as is usual for its kind. A manual that lists
 * oversizes has the wall bored, but for plated and aluminium-silicon walls, where it must say so itself. Nothing of a wall whose kind is not recorded.
 */
export function wallAllows(
  wall: Wall | undefined,
  { oversizesMm = [] }: Pick<Spec, 'oversizesMm'>,
): WallAllows {
  if (!wall) return { boring: oversizesMm.length > 0, honing: false, from: 'not-known' }
  const { kind, mayBeBored, mayBeHoned } = wall
  const isAluminium = kind === 'plated-aluminium' || kind === 'aluminium-silicon'
  const boring = usual[kind].boring || (!isAluminium && oversizesMm.length > 0)
  return {
    boring: mayBeBored ?? boring,
    honing: mayBeHoned ?? usual[kind].honing,
    from: mayBeBored === undefined && mayBeHoned === undefined ? 'kind' : 'manual',
  }
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
