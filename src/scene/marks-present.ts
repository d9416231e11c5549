import type { LimitPair } from '../core/findings'
import type { SurfaceFinding } from '../core/measured'
import type { WallGrid } from '../core/surface/wall-grid'

/** Which marks the wall carries, so that only those are explained. */
export interface MarksPresent {
  readonly hatched: boolean
  readonly doubtful: boolean
  readonly outlined: boolean
}

export function marksPresent(
  grid: WallGrid,
  pair: LimitPair | undefined,
  surface: readonly SurfaceFinding[] = [],
  isDifference = false,
): MarksPresent {
  const minJudged = pair?.minMm !== undefined && pair.kind !== 'wear'
  const doubtful = grid.deviationsUm.some((deviation, node) => {
    if (grid.hatched[node] || grid.proven[node]) return false
    if (isDifference) return true
    const insideFrom = grid.doubtUm[node * 4 + 1] ?? Number.NEGATIVE_INFINITY
    const insideTo = grid.doubtUm[node * 4 + 2] ?? Number.POSITIVE_INFINITY
    return deviation > insideTo || (minJudged && deviation < insideFrom)
  })
  return { hatched: grid.hatched.some((cell) => cell !== 0), doubtful, outlined: surface.length > 0 }
}
