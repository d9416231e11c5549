import type { SurfacePlace } from '../core/measured'
import { surfaceWidthDegrees } from '../core/surface-findings/surface-place'
import type { Rect } from './hatched-rects'
import { acrossOf, downOf, type MapScale } from './map-scale'

/** Smaller marks are drawn so large that their double outline can be seen, pixels. */
const least = 8
const corner = 3

/** A mark on the map: one line to be drawn twice, and the boxes that it encloses, in pixels. */
export interface SurfaceOutline {
  readonly path: string
  readonly boxes: readonly Rect[]
}

/**
 * The outline of a surface finding: closed, or open where the map is cut along 180°, or two lines where it goes
 * all round. It has no ends within the map, so a place that runs over the cut is seen to go on.
 */
export function surfaceOutline(scale: MapScale, place: SurfacePlace): SurfaceOutline {
  const { y, height } = downwards(scale, place)
  const right = scale.left + scale.width
  const degrees = surfaceWidthDegrees(place)
  if (degrees === 360) {
    const lines = [y, y + height].map((at) => `M${fixed(scale.left)},${fixed(at)}H${fixed(right)}`)
    return { path: lines.join(''), boxes: [{ x: scale.left, y, width: scale.width, height }] }
  }
  const { x, width } = across(scale, place.fromDegrees, degrees)
  const over = x + width - right
  if (over <= 1e-9) return { path: closed(x, y, width, height), boxes: [{ x, y, width, height }] }
  return {
    path: `${openAt(right, x, y, height)}${openAt(scale.left, scale.left + over, y, height)}`,
    boxes: [
      { x, y, width: width - over, height },
      { x: scale.left, y, width: over, height },
    ],
  }
}

/** A line down the middle of a place: what is too narrow for an outline. */
export function lineAlong(scale: MapScale, place: SurfacePlace): SurfaceOutline {
  const { y, height } = downwards(scale, place)
  const { x, width } = across(scale, place.fromDegrees, surfaceWidthDegrees(place))
  const right = scale.left + scale.width
  const middle = x + width / 2 > right ? x + width / 2 - scale.width : x + width / 2
  return {
    path: `M${fixed(middle)},${fixed(y)}v${fixed(height)}`,
    boxes: [{ x: middle - 1, y, width: 2, height }],
  }
}

function downwards(scale: MapScale, { fromDepthMm, toDepthMm }: SurfacePlace) {
  const from = downOf(scale, fromDepthMm)
  const to = downOf(scale, toDepthMm)
  const height = Math.max(least, to - from)
  const y = (from + to - height) / 2
  return { y: Math.max(scale.top, Math.min(y, scale.top + scale.height - height)), height }
}

/** Where it begins, within the map, and how far it reaches, perhaps past the right edge. */
function across(scale: MapScale, fromDegrees: number, degrees: number) {
  const asked = (degrees / 360) * scale.width
  const width = Math.min(scale.width, Math.max(least, asked))
  const x = acrossOf(scale, fromDegrees) - (width - asked) / 2
  return { x: x < scale.left ? x + scale.width : x, width }
}

function closed(x: number, y: number, width: number, height: number): string {
  const r = Math.min(corner, width / 2, height / 2)
  const [w, h] = [fixed(width - 2 * r), fixed(height - 2 * r)]
  const turn = (dx: number, dy: number) => `a${fixed(r)},${fixed(r)},0,0,1,${fixed(dx)},${fixed(dy)}`
  return `M${fixed(x + r)},${fixed(y)}h${w}${turn(r, r)}v${h}${turn(-r, r)}h-${w}${turn(-r, -r)}v-${h}${turn(r, -r)}Z`
}

/** From the cut to a side and back to the cut. */
function openAt(cut: number, side: number, y: number, height: number): string {
  return `M${fixed(cut)},${fixed(y)}H${fixed(side)}V${fixed(y + height)}H${fixed(cut)}`
}

function fixed(value: number): string {
  return String(Math.round(value * 10) / 10)
}
