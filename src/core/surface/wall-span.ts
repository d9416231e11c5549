import type { Belt } from '../measured'
import { reachOfReadingMm } from '../notes'
import type { WallNodes } from './wall-nodes'

/** What a wall is spanned between, and what it cannot show as measured. */
export interface WallSpan {
  readonly nodes: WallNodes
  readonly belts: readonly Pick<Belt, 'fromDepthMm' | 'toDepthMm'>[]
  /** Where the wall counts as measured only under the contacts (three contacts): those footprints. */
  readonly footprints?: readonly Footprint[]
}

/** What one contact of one reading says of the wall: depth in mm, angle and half of its width in rad. */
export interface Footprint {
  readonly depthMm: number
  readonly angle: number
  readonly halfWidth: number
}

/** Which neighbour of a point: the wall just above or before it (−1), or just below or after it (1). */
export type Side = -1 | 1

const sides: readonly Side[] = [-1, 1]
const turn = 2 * Math.PI

/** An angle this near to an axis is on it, rad: the far contact of a reading is half a turn and rounding away. */
const onAxis = 1e-9

/**
 * Whether the wall at a depth (mm) and angle (rad) is hatched: nobody measured there. Hatched are the wall
 * past the outermost levels, belts, every cell between two levels and two axes of which a node was filled,
 * and whatever is more than 8 mm along the depth from the nearest reading of its cell. With footprints, so
 * is the wall beside them. A point on an edge is hatched only if all that adjoins it is. Own derivation.
 */
export function isHatched(span: WallSpan, depthMm: number, angle: number): boolean {
  return sides.every((down) => {
    const interval = measuredInterval(span, depthMm, down)
    return sides.every(
      (around) =>
        interval === undefined ||
        !isCellRead(span.nodes, interval, axisCell(span.nodes, angle, around)) ||
        !isUnderContact(span, { depthMm, angle }, down, around),
    )
  })
}

/**
 * Index of the levels' interval on this side of a depth in mm, or undefined where the depth alone says that
 * nobody measured: past the outermost levels, in a belt, or out of reach of both levels.
 */
export function measuredInterval(span: WallSpan, depthMm: number, side: Side): number | undefined {
  const { levelsMm } = span.nodes
  const interval = levelsMm.findIndex((level, i) => isBetween(depthMm, level, levelsMm[i + 1] ?? level, side))
  if (interval < 0) return undefined
  const outOfReach = isBetween(
    depthMm,
    (levelsMm[interval] ?? 0) + reachOfReadingMm,
    (levelsMm[interval + 1] ?? 0) - reachOfReadingMm,
    side,
  )
  const inBelt = span.belts.some((belt) => isBetween(depthMm, belt.fromDepthMm, belt.toDepthMm, side))
  return outOfReach || inBelt ? undefined : interval
}

/** Index of the cell between two axes on this side of an angle in rad; the last cell leads to the first axis. */
export function axisCell(nodes: WallNodes, angle: number, side: Side): number {
  const place = angleAmongAxes(nodes, angle)
  const before = nodes.axes.findLastIndex((axis) => (side > 0 ? axis <= place : axis < place))
  return before < 0 ? nodes.axes.length - 1 : before
}

/** An angle in rad brought into the period that starts at the first axis, and onto an axis it is meant for. */
export function angleAmongAxes(nodes: WallNodes, angle: number): number {
  const first = nodes.axes[0] ?? 0
  const beyond = (((angle - first) % nodes.period) + nodes.period) % nodes.period
  if (nodes.period - beyond < onAxis) return first
  return nodes.axes.find((axis) => Math.abs(axis - first - beyond) < onAxis) ?? first + beyond
}

/** Whether all four nodes of a cell are readings. */
export function isCellRead({ axes, read }: WallNodes, interval: number, cell: number): boolean {
  const next = (cell + 1) % axes.length
  const upper = interval * axes.length
  const lower = upper + axes.length
  return [upper + cell, upper + next, lower + cell, lower + next].every((node) => read[node] === 1)
}

/** Whether a contact's footprint reaches the point on these sides; everywhere where there are no footprints. */
export function isUnderContact(
  span: WallSpan,
  point: { readonly depthMm: number; readonly angle: number },
  down: Side,
  around: Side,
): boolean {
  if (!span.footprints) return true
  return span.footprints.some(({ depthMm, angle, halfWidth }) => {
    const off = ((((point.angle - angle + turn / 2) % turn) + turn) % turn) - turn / 2
    return (
      isBetween(point.depthMm, depthMm - reachOfReadingMm, depthMm + reachOfReadingMm, down) &&
      isBetween(off, -halfWidth, halfWidth, around)
    )
  })
}

/** Whether what lies just beside x, on this side, is between the two ends. */
function isBetween(x: number, from: number, to: number, side: Side): boolean {
  return side > 0 ? x >= from && x < to : x > from && x <= to
}
