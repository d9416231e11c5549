import type { LimitPair } from '../core/findings'
import type { WallGrid } from '../core/surface/wall-grid'
import { outerDeviation } from './bore-extent'
import { type Beside, DrawnPlaces } from './drawn-places'
import { deviationAt } from './grid-reading'

/** What places of a bore are worked out from. */
export interface PlacedBore {
  readonly grid: WallGrid
  readonly pair: LimitPair | undefined
  /** Where it is not the bore in hand. */
  readonly beside?: Beside
}

interface WallPlace {
  readonly depthMm: number
  readonly angle: number
}

const silhouetteSteps = 72

/** How squarely a wall place must face the eye to carry a label: cosine. */
export const squareEnough = -0.4
/** A sign stands by its patch as long as that can be seen at all: cosine. */
export const anyFarWall = -0.05
/** Below this width, CSS pixels, only top, bottom and the level pointed at are labelled, and no lines. */
export const narrowPx = 480
/** Above this elevation, rad, the levels lie inside one another and their labels would stand on the wall. */
export const steepestForDepths = 1.05

/** Places on the drawn wall. */
export function wallPlaces({ grid }: PlacedBore, places: readonly WallPlace[]): DrawnPlaces {
  return new DrawnPlaces(
    grid,
    places.map((place) => ({ ...place, deviationUm: deviationAt(grid, place.depthMm, place.angle) })),
  )
}

/** The outline of what is drawn at a depth: wall or outer limit, whichever is wider. */
export function outlineAt(bore: PlacedBore, depthMm: number): DrawnPlaces {
  return ringPlaces(bore, depthMm, (angle) => outerDeviation(bore, depthMm, angle))
}

/** A ring at a depth, its deviation in µm given for each angle. */
export function ringPlaces(
  { grid, beside }: PlacedBore,
  depthMm: number,
  deviationUm: (angle: number) => number,
): DrawnPlaces {
  const places = Array.from({ length: silhouetteSteps }, (_, step) => {
    const angle = (step / silhouetteSteps) * 2 * Math.PI
    return { depthMm, angle, deviationUm: deviationUm(angle) }
  })
  return new DrawnPlaces({ middleMm: grid.middleMm, lengthMm: grid.lengthMm, beside }, places)
}
