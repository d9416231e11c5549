import { isoStep } from '../core/surface/exaggeration'
import type { WallGrid } from '../core/surface/wall-grid'
import { roundStepUm } from '../words/length-unit'

const known = new WeakMap<WallGrid, { readonly stepUm: number; readonly isoStepUm: number }>()

/**
 * Step of the iso-lines of a wall, µm; 0 where it has none. Looked for once: it is asked for whenever something else
 * about the bore changes.
 */
export function isoStepOf(grid: WallGrid): number {
  const stepUm = roundStepUm()
  const before = known.get(grid)
  if (before?.stepUm === stepUm) return before.isoStepUm
  const isoStepUm = stepFor(grid, stepUm)
  known.set(grid, { stepUm, isoStepUm })
  return isoStepUm
}

function stepFor({ deviationsUm, isFine }: WallGrid, stepUm: number): number {
  if (isFine) return 0
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (const value of deviationsUm) {
    low = Math.min(low, value)
    high = Math.max(high, value)
  }
  return isoStep(Math.max(0, high - low), stepUm)
}
