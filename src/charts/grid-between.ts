import { interpolateNumberArray } from 'd3-interpolate'
import type { WallGrid } from '../core/surface/wall-grid'

/**
 * A wall drawn between two surveys, both on the same lines, at a share of the way above 0 and below 1. Nobody
 * measured it: it is hatched where either is, and has neither doubt nor anything proven.
 */
export function gridBetween(from: WallGrid, to: WallGrid, share: number): WallGrid {
  if (from.deviationsUm.length !== to.deviationsUm.length) {
    throw new RangeError('gridBetween: expected two walls on the same lines')
  }
  return {
    ...from,
    deviationsUm: interpolateNumberArray(from.deviationsUm, to.deviationsUm)(share).slice(),
    hatched: from.hatched.map((hatched, cell) => hatched || (to.hatched[cell] ?? 1)),
    proven: new Uint8Array(from.proven.length),
    doubtUm: Float32Array.from(from.doubtUm, (_, edge) =>
      edge % 4 < 2 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY,
    ),
  }
}
