import type { CutStretch } from '../core/surface/cut-stretches'
import type { CutPoint } from '../core/surface/grid-cuts'
import { type DrawnLimit, isTooClose } from './drawn-limits'
import type { MapPaint } from './MapWall'

/** Points that follow each other along a cut, drawn alike. */
export interface CutRun<Key extends string> {
  readonly key: Key
  /** Two or more: the last is the first of the next run. */
  readonly points: readonly CutPoint[]
}

const bandCount = 28

/** A piece of wall by its colour: one of the bands of the ramp. */
export function colourRuns({ points }: CutStretch, { span, colour }: MapPaint): CutRun<string>[] {
  const step = (span.highUm - span.lowUm) / (bandCount + 1)
  return runsBy(points, (from, to) => {
    const um = (from.deviationUm + to.deviationUm) / 2
    const band = Math.round((um - span.lowUm) / step)
    return colour(span.lowUm + Math.min(bandCount + 1, Math.max(0, band)) * step)
  })
}

export type Judged = 'above' | 'below' | 'too-close' | 'inside'

/** A measured piece of wall by what is proven of it. */
export function judgedRuns({ points }: CutStretch, limits: readonly DrawnLimit[]): CutRun<Judged>[] {
  return runsBy(points, (from, to) => {
    if (from.proven === 1 && to.proven === 1) return 'above'
    if (from.proven === 2 && to.proven === 2) return 'below'
    return isTooClose(from, limits) || isTooClose(to, limits) ? 'too-close' : 'inside'
  })
}

function runsBy<Key extends string>(
  points: readonly CutPoint[],
  keyOf: (from: CutPoint, to: CutPoint) => Key,
): CutRun<Key>[] {
  const runs: { key: Key; points: CutPoint[] }[] = []
  for (const [i, from] of points.entries()) {
    const to = points[i + 1]
    if (!to) break
    const key = keyOf(from, to)
    const last = runs.at(-1)
    if (last?.key === key) last.points.push(to)
    else runs.push({ key, points: [from, to] })
  }
  return runs
}
