import type { Point } from './bore-space'
import type { Box } from './place-labels'

/** Room to leave free at the edges of the picture, CSS pixels. */
export interface Margins {
  readonly top: number
  readonly right: number
  readonly bottom: number
  readonly left: number
}

export interface Frame {
  readonly width: number
  readonly height: number
  /** Full vertical field of view, rad. */
  readonly fieldOfView: number
  readonly margins: Margins
  /** Boxes at the corners that nothing may be drawn under. */
  readonly corners: readonly Box[]
}

/** Directions of a camera that looks at the origin of bore space, as camera-controls counts them, rad. */
export interface Aim {
  /** From +z toward +x. */
  readonly azimuth: number
  /** From +y: 0 looks straight down the bore. */
  readonly polar: number
}

export interface Fit {
  /** From the middle of the bore to the eye, mm. */
  readonly distance: number
  /** How far the eye and its aim are moved along the picture's up direction, mm. */
  readonly shiftUp: number
}

interface CameraAxes {
  readonly right: Point
  readonly up: Point
  readonly toEye: Point
}

export function cameraAxes({ azimuth, polar }: Aim): CameraAxes {
  const [sinA, cosA, sinP, cosP] = [Math.sin(azimuth), Math.cos(azimuth), Math.sin(polar), Math.cos(polar)]
  return {
    right: { x: cosA, y: 0, z: -sinA },
    up: { x: -cosP * sinA, y: sinP, z: -cosP * cosA },
    toEye: { x: sinP * sinA, y: cosP, z: sinP * cosA },
  }
}

/** Points of a bore, mm in bore space, and how far to the right of the middle of its row it is drawn, mm. */
export interface Extent {
  readonly points: readonly Point[]
  readonly offsetMm: number
}

const dot = (a: Point, b: Point) => a.x * b.x + a.y * b.y + a.z * b.z

/** A point's parts to the right, up and to the eye, and the place of its bore in the row, mm. */
type Seen = readonly [right: number, up: number, toEye: number, offset: number]

/** No point comes nearer to the eye, mm. */
const nearest = 10
const stepsBack = 40
const stepBack = 1.015

/**
 * The nearest distance from which all points of these bores lie within the margins and, as far as that is
 * to be had by stepping back to 1.8 times as far, outside the corners; and the shift along the picture's up
 * direction that leaves equal room above and below.
 */
export function fitCamera(bores: readonly Extent[], aim: Aim, frame: Frame): Fit {
  const { right, up, toEye } = cameraAxes(aim)
  const seen = bores.flatMap(({ points, offsetMm }) =>
    points.map((point): Seen => [dot(point, right), dot(point, up), dot(point, toEye), offsetMm]),
  )
  let fit = fitInMargins(seen, frame, 0)
  for (let step = 0; step < stepsBack && isInCorner(seen, fit, frame); step++) {
    fit = fitInMargins(seen, frame, fit.distance * stepBack)
  }
  return fit
}

/**
 * Each point asks of the distance d, after the shift s, y − s ≤ (d − z)·tan above and s − y ≤ (d − z)·tan below,
 * y and z being its parts up and to the eye and the tangents those of the half angles left by the margins: linear
 * in d and s; and to the sides what `distanceFor` gives (own derivation).
 */
function fitInMargins(points: readonly Seen[], frame: Frame, least: number): Fit {
  const half = Math.tan(frame.fieldOfView / 2)
  const { margins, width, height } = frame
  const above = half * Math.max(0.1, 1 - (2 * margins.top) / height)
  const below = half * Math.max(0.1, 1 - (2 * margins.bottom) / height)
  const perSide = (margin: number) => ((half * width) / height) * Math.max(0.1, 1 - (2 * margin) / width)
  const aside = perSide(Math.max(margins.left, margins.right))
  let top = Number.NEGATIVE_INFINITY
  let bottom = Number.NEGATIVE_INFINITY
  let sides = least
  for (const [x, y, z, offset] of points) {
    top = Math.max(top, y / above + z)
    bottom = Math.max(bottom, -y / below + z)
    const [left, right] = [distanceFor(-x, z, -offset, aside), distanceFor(x, z, offset, aside)]
    sides = Math.max(sides, left, right, z + nearest)
  }
  const balanced = (top - bottom) / (1 / above + 1 / below)
  const distance = Math.max(top - balanced / above, sides)
  return { distance, shiftUp: ((top - distance) * above + (distance - bottom) * below) / 2 }
}

/**
 * From where on a point x to one side and z to the eye, of a bore drawn o to that side, stays within a tangent t:
 * x/(d − z) + o/d ≤ t, for d beyond z and 0 the same as t·d² − (t·z + x + o)·d + o·z ≥ 0, which holds from the larger
 * root on, and everywhere without one (own derivation). All mm.
 */
function distanceFor(x: number, z: number, offset: number, tangent: number): number {
  const linear = tangent * z + x + offset
  const square = linear ** 2 - 4 * tangent * offset * z
  return square < 0 ? 0 : (linear + Math.sqrt(square)) / (2 * tangent)
}

function isInCorner(points: readonly Seen[], { distance, shiftUp }: Fit, frame: Frame): boolean {
  const pixels = frame.height / 2 / Math.tan(frame.fieldOfView / 2)
  return points.some(([right, up, toEye, offset]) => {
    const scale = pixels / (distance - toEye)
    const x = frame.width / 2 + right * scale + (offset * pixels) / distance
    const y = frame.height / 2 - (up - shiftUp) * scale
    return frame.corners.some(
      (box) => x > box.x && x < box.x + box.width && y > box.y && y < box.y + box.height,
    )
  })
}
