import { type PerspectiveCamera, Vector3 } from 'three'
import type { Point } from './bore-space'

/** Where things of bore space are on the picture, for one frame. CSS pixels, y down. */
export interface PictureView {
  readonly width: number
  readonly height: number
  /** CSS pixels for one drawn mm at the middle of the bore. */
  readonly pixelsPerMm: number
  readonly exaggeration: number
  /** Between the line of sight and the plane of the deck, rad; π/2 looks straight down the bore. */
  readonly elevation: number
  /** How far to the right of where the eye looks the bore in hand is drawn, CSS pixels: all places are that bore's. */
  readonly shiftPx: number
  /** Undefined behind the eye. */
  project(point: Point): { readonly x: number; readonly y: number } | undefined
  /** Cosine between the outward direction at an angle and the direction to the eye: positive is the near wall. */
  facing(angle: number, place: Point): number
}

const scratch = new Vector3()

interface Seen {
  readonly width: number
  readonly height: number
  /** From the eye to the middle of the bore, mm. */
  readonly distance: number
  readonly exaggeration: number
  /** How far to the right of the middle of the row the bore in hand stands, mm. */
  readonly offset: number
}

/**
 * What a camera sees now. Holds for this frame only: it reads the camera as it is when asked. A bore of a row is
 * seen from straight before it and moved on the picture to where it stands, as the shaders do.
 */
export function pictureView(
  camera: PerspectiveCamera,
  { width, height, distance, exaggeration, offset }: Seen,
): PictureView {
  const half = Math.tan((camera.fov * Math.PI) / 360)
  const eye = camera.position
  const pixelsPerMm = height / (2 * half * distance)
  const shiftPx = offset * pixelsPerMm
  return {
    width,
    height,
    pixelsPerMm,
    exaggeration,
    shiftPx,
    elevation: Math.asin(Math.min(1, Math.max(-1, -camera.getWorldDirection(scratch).y))),
    project(point) {
      scratch.set(point.x, point.y, point.z)
      scratch.applyMatrix4(camera.matrixWorldInverse)
      if (scratch.z > -camera.near) return undefined
      scratch.applyMatrix4(camera.projectionMatrix)
      return { x: ((scratch.x + 1) / 2) * width + shiftPx, y: ((1 - scratch.y) / 2) * height }
    },
    facing(angle, place) {
      const [x, y, z] = [eye.x - place.x, eye.y - place.y, eye.z - place.z]
      return (-Math.sin(angle) * x + Math.cos(angle) * z) / Math.hypot(x, y, z)
    },
  }
}
