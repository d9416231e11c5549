import { type PerspectiveCamera, Vector3 } from 'three'
import type { DrawnStation } from '../core/findings'
import type { WallGrid } from '../core/surface/wall-grid'
import { drawnRadius, onCircle } from './bore-space'
import type { PictureView } from './picture-view'
import { pointAtWall } from './point-at-wall'
import { contactDegreesOf, contactsOf } from './proven-marks'

/** A reading this near to the pointer, CSS pixels, is what is meant. */
const snapPx = 9
const degrees = 180 / Math.PI

interface PointedPicture {
  readonly grid: WallGrid
  readonly stations: readonly DrawnStation[]
  readonly exaggeration: number
}

/**
 * The place of the far wall under a place of the picture (CSS pixels, y down, of the bore in hand): a station's own where its disc
 * is that near, else to a tenth of a millimetre and of a degree. Undefined off the wall.
 */
export function placeUnder(
  picture: PointedPicture,
  view: PictureView,
  camera: PerspectiveCamera,
  x: number,
  y: number,
): { depthMm: number; angleDegrees: number } | undefined {
  const station = stationUnder(picture, view, x, y)
  if (station) return { depthMm: station.depthMm, angleDegrees: station.angleDegrees }
  const along = new Vector3(((x - view.shiftPx) / view.width) * 2 - 1, 1 - (y / view.height) * 2, 0.5)
  along.unproject(camera).sub(camera.position)
  const place = pointAtWall(picture.grid, picture.exaggeration, { from: camera.position, along })
  return place && { depthMm: tenths(place.depthMm), angleDegrees: tenths(place.angle * degrees) % 360 }
}

function tenths(value: number): number {
  return Math.round(value * 10) / 10
}

function stationUnder(
  { grid, stations, exaggeration }: PointedPicture,
  view: PictureView,
  x: number,
  y: number,
) {
  let nearest: { depthMm: number; angleDegrees: number } | undefined
  let reach = snapPx
  for (const station of stations) {
    const radius = drawnRadius(grid.middleMm, exaggeration, (station.diameterMm - grid.middleMm) * 1000)
    const angles = contactDegreesOf(station)
    for (const [index, contact] of contactsOf(station).entries()) {
      const place = onCircle(grid.lengthMm, contact.angle, contact.depthMm, radius)
      const outward = onCircle(0, contact.angle, 0, 1)
      const isFar = view.facing(outward, place) < 0 && view.project(place)
      const away = isFar ? Math.hypot(view.x - x, view.y - y) : Number.POSITIVE_INFINITY
      if (away > reach) continue
      reach = away
      nearest = { depthMm: station.depthMm, angleDegrees: angles[index] ?? 0 }
    }
  }
  return nearest
}
