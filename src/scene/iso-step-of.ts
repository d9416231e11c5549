import { isoStep } from '../core/surface/exaggeration'
import type { WallGrid } from '../core/surface/wall-grid'

/** Step of the iso-lines of a wall, µm; 0 where it has none. */
export function isoStepOf(grid: WallGrid): number {
  if (grid.isFine) return 0
  const low = grid.deviationsUm.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY)
  const high = grid.deviationsUm.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY)
  return isoStep(Math.max(0, high - low))
}
