import type { DrawnStation } from '../core/findings'
import type { DrawnPlaces } from './drawn-places'
import { isoMarks } from './iso-marks'
import { narrowPx, type PlacedBore, squareEnough, wallPlaces } from './label-places'
import type { PictureLabels } from './picture-labels'
import type { PictureView } from './picture-view'
import { type LabelRoom, parts, type Spot } from './place-labels'
import { contactsOf } from './proven-marks'
import type { Label } from './stand-labels'

interface LinedBore extends PlacedBore {
  readonly stations: readonly DrawnStation[]
  readonly isoStepUm: number
  readonly labels: PictureLabels
}

/** Signs on lines keep this far from discs, CSS pixels. */
const clearOfDiscsPx = 18
/** Stands for a place that cannot be had: no cosine is as large. */
const unfit = 2

/** The outermost lines first, then inward: where there is no room for all, those tell most. */
export function isoLabels(bore: LinedBore): readonly Label[] {
  const discs = new SeenDiscs(wallPlaces(bore, bore.stations.flatMap(contactsOf)))
  return [...isoMarks(bore.grid, bore.isoStepUm)]
    .sort((one, other) => Math.abs(other.deviationUm) - Math.abs(one.deviationUm))
    .map(({ deviationUm, places }) => {
      const onLine = wallPlaces(bore, places)
      const facings = new Float64Array(onLine.count)
      return {
        text: bore.labels.deviation(deviationUm),
        kind: 'iso',
        gapPx: 12,
        offer(view, room) {
          if (view.width >= narrowPx) offerSquarest(onLine, facings, discs, view, room)
        },
      }
    })
}

/** Offers the places that face the eye most squarely first, clear of discs. `facings` is written over. */
function offerSquarest(
  places: DrawnPlaces,
  facings: Float64Array,
  discs: SeenDiscs,
  view: PictureView,
  room: LabelRoom,
): void {
  for (let index = 0; index < places.count; index++) {
    const isSquare = places.look(view, index) && places.facing < squareEnough
    facings[index] = isSquare ? places.facing : unfit
  }
  discs.see(view)
  for (;;) {
    const best = leastOf(facings)
    if (best < 0) return
    facings[best] = unfit
    places.look(view, best)
    if (discs.areClearOf(places) && room.offer(places, parts.middle)) return
  }
}

/** Which is the least, the first of several alike; −1 where none is fit. */
function leastOf(facings: Float64Array): number {
  let best = -1
  let least = unfit
  for (let index = 0; index < facings.length; index++) {
    const facing = facings[index] ?? unfit
    if (facing >= least) continue
    least = facing
    best = index
  }
  return best
}

/** Where the discs of the far wall are on the picture, looked at once for each frame. */
class SeenDiscs {
  readonly #places: DrawnPlaces
  readonly #x: Float64Array
  readonly #y: Float64Array
  #count = 0
  #frame = -1
  #view: PictureView | undefined

  constructor(places: DrawnPlaces) {
    this.#places = places
    this.#x = new Float64Array(places.count)
    this.#y = new Float64Array(places.count)
  }

  see(view: PictureView): void {
    if (this.#view === view && this.#frame === view.frame) return
    this.#view = view
    this.#frame = view.frame
    this.#count = 0
    for (let index = 0; index < this.#places.count; index++) {
      if (!this.#places.look(view, index) || this.#places.facing >= squareEnough) continue
      this.#x[this.#count] = this.#places.x
      this.#y[this.#count] = this.#places.y
      this.#count += 1
    }
  }

  areClearOf({ x, y }: Spot): boolean {
    for (let index = 0; index < this.#count; index++) {
      const dx = (this.#x[index] ?? 0) - x
      const dy = (this.#y[index] ?? 0) - y
      if (dx * dx + dy * dy <= clearOfDiscsPx * clearOfDiscsPx) return false
    }
    return true
  }
}
