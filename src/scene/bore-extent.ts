import type { LimitPair } from '../core/findings'
import type { WallGrid } from '../core/surface/wall-grid'
import { drawnRadius, onCircle, type Point } from './bore-space'
import { deviationAt } from './grid-reading'

export interface DrawnBore {
  readonly grid: WallGrid
  readonly pair: LimitPair | undefined
  readonly exaggeration: number
}

const depthsLookedAt = 9
const anglesLookedAt = 64

/** Points on the outside of all that is drawn of a bore, mm: the wall, and the outer limit at both mouths. */
export function boreExtent(bore: DrawnBore): readonly Point[] {
  const { grid } = bore
  return Array.from(
    { length: depthsLookedAt },
    (_, index) => (index / (depthsLookedAt - 1)) * grid.lengthMm,
  ).flatMap((depthMm) =>
    Array.from({ length: anglesLookedAt }, (_, step) => {
      const angle = (step / anglesLookedAt) * 2 * Math.PI
      return onCircle(grid.lengthMm, angle, depthMm, outerRadius(bore, depthMm, angle))
    }),
  )
}

/** The widest of what is drawn at a place, mm: the wall or the outer limit. */
export function outerRadius({ grid, pair, exaggeration }: DrawnBore, depthMm: number, angle: number): number {
  const wall = drawnRadius(grid.middleMm, exaggeration, deviationAt(grid, depthMm, angle))
  if (pair?.maxMm === undefined) return wall
  return Math.max(wall, drawnRadius(grid.middleMm, exaggeration, (pair.maxMm - grid.middleMm) * 1000))
}
