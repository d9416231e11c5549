import type { SurfacePlace } from '../core/measured'
import type { MapScale } from './map-scale'

interface Pixel {
  readonly x: number
  readonly y: number
}

/** Steps that depths are taken in, mm: the finest that a pixel can still tell. */
const depthSteps = [0.1, 0.5, 1, 5, 10, 50] as const

/**
 * The place that a drag from one pixel to another marks, in whichever direction: depths within the bore, to a step
 * that pixels can tell; angles to a degree. A drag may run past the sides of the map: it goes on around, and from
 * a whole turn on it is all round.
 */
export function draggedPlace(scale: MapScale, from: Pixel, to: Pixel): SurfacePlace {
  const depth = (y: number) => {
    const mm = ((y - scale.top) / scale.height) * scale.lengthMm
    return Math.max(0, Math.min(scale.lengthMm, toStep(mm, stepOf(scale))))
  }
  const angle = (x: number) => Math.round(((x - scale.left) / scale.width) * 360 + 180)
  const [top, bottom] = inOrder(depth(from.y), depth(to.y))
  const [first, last] = inOrder(angle(from.x), angle(to.x))
  const isAllRound = last - first >= 360
  return {
    fromDepthMm: top,
    toDepthMm: bottom,
    fromDegrees: isAllRound ? 0 : withinTurn(first),
    toDegrees: isAllRound ? 360 : withinTurn(last),
  }
}

function stepOf({ lengthMm, height }: MapScale): number {
  const perPixel = lengthMm / height
  return depthSteps.find((step) => step >= perPixel) ?? 100
}

/** Without the dust of binary fractions. */
function toStep(mm: number, step: number): number {
  return Number((Math.round(mm / step) * step).toFixed(1))
}

function inOrder(a: number, b: number): readonly [number, number] {
  return a <= b ? [a, b] : [b, a]
}

function withinTurn(degrees: number): number {
  return ((degrees % 360) + 360) % 360
}
