import { Matrix4, type PerspectiveCamera, Vector3 } from 'three'
import type { Point } from './bore-space'

/** The part of the page that the picture covers, CSS pixels. */
interface PictureSize {
  readonly width: number
  readonly height: number
}

/**
 * Where things of bore space are on the picture. There is one for all frames, brought up to date before each is
 * drawn: a frame makes nothing, and answers are left in fields. CSS pixels, y down. A bore of a row is seen from
 * straight before it and moved on the picture to where it stands, as the shaders do.
 */
export class PictureView {
  width = 1
  height = 1
  /** CSS pixels for one drawn mm at the middle of the bore. */
  pixelsPerMm = 1
  /** Between the line of sight and the plane of the deck, rad; π/2 looks straight down the bore. */
  elevation = 0
  /** Of the bore in hand. */
  exaggeration = 1
  /** How far to the right of where the eye looks the bore in hand is drawn, CSS pixels: all places are that bore's. */
  shiftPx = 0
  /** It is on its way: another frame follows. */
  isMoving = false
  /** Frames seen so far. */
  frame = 0
  /** The place that `project` found last. */
  x = 0
  y = 0

  readonly #toClip = new Matrix4()
  readonly #eye = new Vector3()
  #near = 0

  /** Sees what a camera sees now, from so far away from the middle of the bore, mm. */
  see(camera: PerspectiveCamera, size: PictureSize, distanceMm: number): void {
    this.frame += 1
    this.width = size.width
    this.height = size.height
    this.pixelsPerMm = size.height / (2 * Math.tan((camera.fov * Math.PI) / 360) * distanceMm)
    // The third axis of a camera points back along its line of sight.
    this.elevation = Math.asin(Math.min(1, Math.max(-1, camera.matrixWorld.elements[9] ?? 0)))
    this.#toClip.multiplyMatrices(camera.projectionMatrix, camera.matrixWorldInverse)
    this.#eye.copy(camera.position)
    this.#near = camera.near
  }

  /** Takes a bore in hand: how it is exaggerated, and how far to the right of the middle of the row it stands, mm. */
  holdBore(exaggeration: number, offsetMm: number): void {
    this.exaggeration = exaggeration
    this.shiftPx = offsetMm * this.pixelsPerMm
  }

  /** Finds where a place, mm, is on the picture; false behind the eye. */
  project(place: Point): boolean {
    const m = this.#toClip.elements
    const { x, y, z } = place
    const ahead = m[3] * x + m[7] * y + m[11] * z + m[15]
    if (ahead < this.#near) return false
    const right = (m[0] * x + m[4] * y + m[8] * z + m[12]) / ahead
    const up = (m[1] * x + m[5] * y + m[9] * z + m[13]) / ahead
    this.x = ((right + 1) / 2) * this.width + this.shiftPx
    this.y = ((1 - up) / 2) * this.height
    return true
  }

  /** Cosine between a direction outward and that from a place to the eye: positive is the near wall. */
  facing(outward: Point, place: Point): number {
    const x = this.#eye.x - place.x
    const y = this.#eye.y - place.y
    const z = this.#eye.z - place.z
    return (outward.x * x + outward.y * y + outward.z * z) / Math.sqrt(x * x + y * y + z * z)
  }
}
