import type { SurfaceFinding } from '../core/measured'
import { middleOfSurface, surfaceWidthDegrees } from '../core/surface-findings/surface-place'
import type { DrawnPlaces } from './drawn-places'
import { anyFarWall, type PlacedBore, wallPlaces } from './label-places'
import type { PictureLabels } from './picture-labels'
import type { PictureView } from './picture-view'
import { type LabelRoom, parts } from './place-labels'
import type { Label } from './stand-labels'

interface ScarredBore extends PlacedBore {
  readonly surface: readonly SurfaceFinding[]
  readonly labels: PictureLabels
}

const besidePx = 7
/** Places along a finding that are looked at for where it shows on the far wall. */
const placesAlong = 13
const radians = Math.PI / 180

/** Places along a finding: down its middle, and at its ends. */
interface FindingPlaces {
  readonly middle: DrawnPlaces
  readonly from: DrawnPlaces
  readonly to: DrawnPlaces
}

/** Beside each surface finding on the far wall: to its sides, above or below. */
export function surfaceLabels(bore: ScarredBore): readonly Label[] {
  return bore.surface.map((finding, index) => {
    const places = placesOf(bore, finding)
    return {
      text: bore.labels.surface(index + 1, finding),
      kind: 'surface',
      offer: (view, room) => offerBesideFinding(places, view, room),
    }
  })
}

function placesOf(bore: ScarredBore, finding: SurfaceFinding): FindingPlaces {
  const width = surfaceWidthDegrees(finding)
  const at = (depthMm: number) =>
    wallPlaces(
      bore,
      Array.from({ length: placesAlong }, (_, index) => ({
        depthMm,
        angle: (finding.fromDegrees + (width * index) / (placesAlong - 1)) * radians,
      })),
    )
  return {
    middle: at(middleOfSurface(finding).depthMm),
    from: at(finding.fromDepthMm),
    to: at(finding.toDepthMm),
  }
}

function offerBesideFinding({ middle, from, to }: FindingPlaces, view: PictureView, room: LabelRoom): void {
  let left = -1
  let right = -1
  let squarest = -1
  let leftX = Number.POSITIVE_INFINITY
  let rightX = Number.NEGATIVE_INFINITY
  let facing: number = anyFarWall
  for (let index = 0; index < middle.count; index++) {
    if (!isSeen(middle, view, index)) continue
    if (middle.x < leftX) left = index
    if (middle.x > rightX) right = index
    if (middle.facing < facing) squarest = index
    leftX = Math.min(leftX, middle.x)
    rightX = Math.max(rightX, middle.x)
    facing = Math.min(facing, middle.facing)
  }
  if (squarest < 0) return
  middle.look(view, right)
  middle.moveBy(besidePx, 0)
  if (room.offer(middle, parts.left)) return
  middle.look(view, left)
  middle.moveBy(-besidePx, 0)
  if (room.offer(middle, parts.right)) return
  if (isSeen(from, view, squarest)) {
    from.moveBy(0, -besidePx)
    if (room.offer(from, parts.foot)) return
  }
  if (isSeen(to, view, squarest)) {
    to.moveBy(0, besidePx)
    if (room.offer(to, parts.top)) return
  }
  middle.look(view, squarest)
  room.offer(middle, parts.middle)
}

function isSeen(places: DrawnPlaces, view: PictureView, index: number): boolean {
  return places.look(view, index) && places.facing < anyFarWall
}
