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
  /** Toward the right of the picture, of unit length. */
  readonly right: Point
  /** Where the middle of the bore in hand stands, mm: all places are given from there. */
  readonly origin: Point
  /** Undefined behind the eye. */
  project(point: Point): { readonly x: number; readonly y: number } | undefined
  /** Cosine between the outward direction at an angle and the direction to the eye: positive is the near wall. */
  facing(angle: number, place: Point): number
}

const scratch = new Vector3()

/** The same view with places given from another bore of the row, so many mm to the right of the one in hand. */
export function viewFrom(view: PictureView, camera: PerspectiveCamera, mm: number, exaggeration: number) {
  const offset = view.origin.x * view.right.x + view.origin.y * view.right.y + view.origin.z * view.right.z
  const distance = view.height / (2 * Math.tan((camera.fov * Math.PI) / 360) * view.pixelsPerMm)
  return pictureView(camera, { ...view, distance, exaggeration, offset: offset + mm })
}

interface Seen {
  readonly width: number
  readonly height: number
  /** From the eye to the middle of the bore, mm. */
  readonly distance: number
  readonly exaggeration: number
  /** How far to the right of the middle of the picture the bore in hand stands, mm. */
  readonly offset: number
}

/** What a camera sees now. Holds for this frame only: it reads the camera as it is when asked. */
export function pictureView(
  camera: PerspectiveCamera,
  { width, height, distance, exaggeration, offset }: Seen,
): PictureView {
  const half = Math.tan((camera.fov * Math.PI) / 360)
  const eye = camera.position
  const [rightX = 1, rightY = 0, rightZ = 0] = camera.matrixWorld.elements
  const right = { x: rightX, y: rightY, z: rightZ }
  const origin = { x: rightX * offset, y: rightY * offset, z: rightZ * offset }
  return {
    width,
    height,
    pixelsPerMm: height / (2 * half * distance),
    exaggeration,
    right,
    origin,
    elevation: Math.asin(Math.min(1, Math.max(-1, -camera.getWorldDirection(scratch).y))),
    project(point) {
      scratch.set(point.x + origin.x, point.y + origin.y, point.z + origin.z)
      scratch.applyMatrix4(camera.matrixWorldInverse)
      if (scratch.z > -camera.near) return undefined
      scratch.applyMatrix4(camera.projectionMatrix)
      return { x: ((scratch.x + 1) / 2) * width, y: ((1 - scratch.y) / 2) * height }
    },
    facing(angle, place) {
      const [x, y, z] = [eye.x - origin.x - place.x, eye.y - origin.y - place.y, eye.z - origin.z - place.z]
      return (-Math.sin(angle) * x + Math.cos(angle) * z) / Math.hypot(x, y, z)
    },
  }
}
