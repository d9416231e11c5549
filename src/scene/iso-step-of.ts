import { isoStep } from '../core/surface/exaggeration'
import type { WallGrid } from '../core/surface/wall-grid'

const known = new WeakMap<WallGrid, number>()

/**
 * Step of the iso-lines of a wall, µm; 0 where it has none. Looked for once: it is asked for whenever something else
 * about the bore changes.
 */
export function isoStepOf(grid: WallGrid): number {
  const step = known.get(grid) ?? stepFor(grid)
  known.set(grid, step)
  return step
}

function stepFor({ deviationsUm, isFine }: WallGrid): number {
  if (isFine) return 0
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (const value of deviationsUm) {
    low = Math.min(low, value)
    high = Math.max(high, value)
  }
  return isoStep(Math.max(0, high - low))
}
