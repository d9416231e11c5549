import type { WallGrid } from '../core/surface/wall-grid'
import { angleOf, drawnRadius, type Point, turnedInto } from './bore-space'
import { deviationAt } from './grid-reading'

/** A ray in bore space: `along` need not be of unit length. */
export interface Ray {
  readonly from: Point
  readonly along: Point
}

export interface WallPlace {
  readonly depthMm: number
  readonly angle: number
}

const marches = 96
const halvings = 24

/**
 * Where a ray first leaves the bore through the drawn wall: the place of the far wall that is seen along it.
 * Undefined when it misses the bore or leaves through a mouth. Depth in mm, angle in rad in [0, 2π). The
 * drawn wall is met to within the last of 24 halvings of a march of 96 steps; folds thinner than a step
 * can be missed.
 */
export function pointAtWall(grid: WallGrid, exaggeration: number, ray: Ray): WallPlace | undefined {
  const span = spanInside(grid, exaggeration, ray)
  if (!span) return undefined
  const inside = (t: number) => isInside(grid, exaggeration, at(ray, t))
  const step = (span.to - span.from) / marches
  let wasInside = inside(span.from)
  for (let march = 1; march <= marches; march++) {
    const t = span.from + march * step
    const isIn = inside(t)
    if (wasInside && !isIn) return placeOf(grid, at(ray, crossing(inside, t - step, t)))
    wasInside = isIn
  }
  return undefined
}

function at(ray: Ray, t: number): Point {
  return {
    x: ray.from.x + t * ray.along.x,
    y: ray.from.y + t * ray.along.y,
    z: ray.from.z + t * ray.along.z,
  }
}

function placeOf(grid: WallGrid, point: Point): WallPlace {
  return { depthMm: grid.lengthMm / 2 - point.y, angle: turnedInto(angleOf(point)) }
}

function isInside(grid: WallGrid, exaggeration: number, point: Point): boolean {
  const { depthMm, angle } = placeOf(grid, point)
  const radius = drawnRadius(grid.middleMm, exaggeration, deviationAt(grid, depthMm, angle))
  return Math.hypot(point.x, point.z) < radius
}

/** The last place that is inside, by halving between an inside and an outside parameter. */
function crossing(inside: (t: number) => boolean, insideAt: number, outsideAt: number): number {
  let low = insideAt
  let high = outsideAt
  for (let halving = 0; halving < halvings; halving++) {
    const middle = (low + high) / 2
    if (inside(middle)) low = middle
    else high = middle
  }
  return low
}

/** Parameters between which a ray is in the cylinder round the whole drawn wall, ahead of its start. */
function spanInside(grid: WallGrid, exaggeration: number, { from, along }: Ray) {
  const widest = grid.deviationsUm.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY)
  const reach = drawnRadius(grid.middleMm, exaggeration, widest) * 1.001
  const round = rootsOf(
    along.x ** 2 + along.z ** 2,
    from.x * along.x + from.z * along.z,
    from.x ** 2 + from.z ** 2 - reach ** 2,
  )
  const between = slab(from.y, along.y, grid.lengthMm / 2)
  if (!round || !between) return undefined
  const enter = Math.max(0, round.low, between.low)
  const leave = Math.min(round.high, between.high)
  return leave > enter ? { from: enter, to: leave } : undefined
}

/** Roots of a·t² + 2·b·t + c where the value between them is below 0; all t where a is 0 and c below 0. */
function rootsOf(a: number, b: number, c: number) {
  if (a === 0) return c < 0 ? { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY } : undefined
  const square = b * b - a * c
  if (square <= 0) return undefined
  return { low: (-b - Math.sqrt(square)) / a, high: (-b + Math.sqrt(square)) / a }
}

function slab(from: number, along: number, half: number) {
  if (along === 0) {
    return Math.abs(from) <= half
      ? { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY }
      : undefined
  }
  const one = (-half - from) / along
  const other = (half - from) / along
  return { low: Math.min(one, other), high: Math.max(one, other) }
}
