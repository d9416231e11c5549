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

/** The widest of what is drawn at a place, mm. */
export function outerRadius(bore: DrawnBore, depthMm: number, angle: number): number {
  return drawnRadius(bore.grid.middleMm, bore.exaggeration, outerDeviation(bore, depthMm, angle))
}

/** Deviation on the diameter, µm, of the widest of what is drawn at a place: the wall or the outer limit. */
export function outerDeviation(
  { grid, pair }: Pick<DrawnBore, 'grid' | 'pair'>,
  depthMm: number,
  angle: number,
): number {
  const wall = deviationAt(grid, depthMm, angle)
  return pair?.maxMm === undefined ? wall : Math.max(wall, (pair.maxMm - grid.middleMm) * 1000)
}
