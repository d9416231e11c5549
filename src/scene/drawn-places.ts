import { Vector3 } from 'three'
import type { PictureView } from './picture-view'

/** A bore that is not the one in hand: its exaggeration, and how far to the right of that one it stands, mm. */
export interface Beside {
  readonly exaggeration: number
  readonly offsetMm: number
}

/** The bore that places are of. */
interface PlacedBore {
  readonly middleMm: number
  readonly lengthMm: number
  readonly beside?: Beside | undefined
}

/** Angle in rad clockwise from the deck, depth in mm; µm on the diameter, or `axis` for the axis of the bore. */
interface DrawnPlace {
  readonly angle: number
  readonly depthMm: number
  readonly deviationUm: number | 'axis'
}

/** Numbers kept of a place: outward x and z, height, deviation, and 1, or 0 on the axis. */
const perPlace = 5

const outward = new Vector3()
const place = new Vector3()
/** How far the furthest place lies: a number on its way round a loop would be made anew each time. */
const most = new Float64Array(1)

/**
 * Places of a bore whose positions on the picture are asked for at every frame. All that does not change from frame
 * to frame is worked out once, and an answer is left in fields: a look makes nothing.
 */
export class DrawnPlaces {
  readonly count: number
  /** The answer, of the place looked at last: CSS pixels, and the cosine between outward and the eye, positive on the near wall. */
  x = 0
  y = 0
  facing = 0

  readonly #kept: Float64Array
  readonly #middleMm: number
  readonly #isBeside: boolean
  readonly #beside: Float64Array

  constructor({ middleMm, lengthMm, beside }: PlacedBore, places: readonly DrawnPlace[]) {
    this.count = places.length
    this.#middleMm = middleMm
    this.#isBeside = beside !== undefined
    this.#beside = Float64Array.of(beside?.exaggeration ?? 1, beside?.offsetMm ?? 0)
    this.#kept = Float64Array.from(
      places.flatMap(({ angle, depthMm, deviationUm }) => [
        -Math.sin(angle),
        Math.cos(angle),
        lengthMm / 2 - depthMm,
        deviationUm === 'axis' ? 0 : deviationUm,
        deviationUm === 'axis' ? 0 : 1,
      ]),
    )
  }

  /** Looks at one of the places; false where it is behind the eye. */
  look(view: PictureView, index: number): boolean {
    const from = index * perPlace
    const kept = this.#kept
    const exaggeration = this.#isBeside ? (this.#beside[0] ?? 1) : view.exaggeration
    const deviationMm = (kept[from + 3] ?? 0) / 1000
    const radius = ((kept[from + 4] ?? 0) * (this.#middleMm + exaggeration * deviationMm)) / 2
    outward.x = kept[from] ?? 0
    outward.z = kept[from + 1] ?? 0
    place.x = outward.x * radius
    place.y = kept[from + 2] ?? 0
    place.z = outward.z * radius
    if (!view.project(place)) return false
    this.x = view.x + (this.#beside[1] ?? 0) * view.pixelsPerMm
    this.y = view.y
    this.facing = view.facing(outward, place)
    return true
  }

  /** Moves the answer, CSS pixels. */
  moveBy(toRight: number, toFoot: number): void {
    this.x += toRight
    this.y += toFoot
  }

  /** Looks at the place that lies furthest in a direction of the picture; false where all are behind the eye. */
  lookFurthest(view: PictureView, toRight: number, toFoot: number): boolean {
    let furthest = -1
    most[0] = Number.NEGATIVE_INFINITY
    for (let index = 0; index < this.count; index++) {
      if (!this.look(view, index)) continue
      const far = toRight * this.x + toFoot * this.y
      if (far <= (most[0] ?? 0)) continue
      most[0] = far
      furthest = index
    }
    return furthest >= 0 && this.look(view, furthest)
  }
}
