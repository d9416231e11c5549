import {
  type Cylinder,
  type CylinderPoints,
  distanceFromAxis,
  leastSquaresCylinder,
} from './least-squares-cylinder'
import { narrowestBand } from './narrowest-band'
import type { Across } from './radial-scan'
import { type ScanRange, scanRange } from './range-of-many'

/** A reference cylinder of a scan. */
export interface ScanCylinder {
  /** Where its axis stands at depth 0 and how it leans, counted from the axis of the scan. */
  readonly atDeckUm: Across
  readonly leanUmPerMm: Across
  /** Its radius, counted as the radii of the scan; for the minimum zone that of the cylinder half way between. */
  readonly radiusUm: number
  /** Greatest less least distance of the wall from its axis: the cylindricity deviation. */
  readonly cylindricity: ScanRange
  /** Places that hold it; none for least squares. */
  readonly contacts: readonly { readonly depthMm: number; readonly angleDegrees: number }[]
  /** What terms of the second order may have made of it, e²/2R + Rφ²/2, µm. */
  readonly secondOrderUm: number
}

/** Both cylinders, or why there is none: fewer than two levels are there all round. */
export type CylinderForm =
  | { readonly known: true; readonly leastSquares: ScanCylinder; readonly minimumZone: ScanCylinder }
  | { readonly known: false; readonly reason: 'one-level' }

/** Radii about the axis of a scan, row by row, with what they are counted from. */
export interface CylinderInput {
  readonly depthsMm: readonly number[]
  readonly anglesDegrees: readonly number[]
  /** µm, less half of the near diameter; NaN in ports. */
  readonly aboutAxisUm: Float64Array
  readonly nearRadiusUm: number
  /** Standard uncertainty of a radius and its degrees of freedom. */
  readonly u: number
  readonly degreesOfFreedom: number
}

/**
 * Least-squares and minimum-zone cylinder of a scan (ISO 12180-1:2011, LSCY and MZCY). The least-squares one on true
 * distances. The minimum zone is the true minimum of the programme that is linear in the axis about the least-squares
 * one (`narrowestBand`), its width then taken from true distances. Of the second order, which is stated: a shift e at a
 * level makes a distance longer by e²/2R at most, R the radius (the direction to a place turns), and a tilt φ makes it
 * shorter by Rφ²/2 at most (a tilted cylinder is cut in an ellipse); own derivation, from d² = |v|² − (v·s)²/(1 + s²).
 * Needs two levels all round; `allRound` says how many there are.
 */
export function cylinderForm(input: CylinderInput, allRound: number): CylinderForm {
  if (allRound < 2) return { known: false, reason: 'one-level' }
  const { points, places } = placesOf(input)
  const { cylinder } = leastSquaresCylinder(points, {
    x: 0,
    y: 0,
    leanX: 0,
    leanY: 0,
    radius: input.nearRadiusUm,
  })
  const zone = minimumZone(points, cylinder, input)
  const made = (one: Cylinder, contacts: readonly number[], secondOrderUm: number): ScanCylinder => {
    const { largest, smallest } = distances(points, one)
    return {
      atDeckUm: { x: one.x, y: one.y },
      leanUmPerMm: { x: 1000 * one.leanX, y: 1000 * one.leanY },
      radiusUm: (contacts.length > 0 ? (largest + smallest) / 2 : one.radius) - input.nearRadiusUm,
      cylindricity: scanRange(largest - smallest, points.x.length, input.u, input.degreesOfFreedom),
      contacts: contacts.map((index) => placeOf(input, places[index] ?? 0)),
      secondOrderUm,
    }
  }
  return {
    known: true,
    leastSquares: made(cylinder, [], 0),
    minimumZone: made(zone.cylinder, zone.contacts, zone.secondOrderUm),
  }
}

function minimumZone(points: CylinderPoints, about: Cylinder, { depthsMm, nearRadiusUm }: CylinderInput) {
  const count = points.x.length
  const top = 1000 * (depthsMm[0] ?? 0)
  const bottom = 1000 * (depthsMm[depthsMm.length - 1] ?? 0)
  const middle = (top + bottom) / 2
  const half = (bottom - top) / 2
  const steep = 1 + about.leanX ** 2 + about.leanY ** 2
  const directions = new Float64Array(4 * count)
  const values = new Float64Array(count)
  for (let i = 0; i < count; i++) {
    const z = points.z[i] ?? 0
    const x = points.x[i] ?? 0
    const y = points.y[i] ?? 0
    const distance = distanceFromAxis(about, x, y, z)
    const vx = x - about.x - about.leanX * z
    const vy = y - about.y - about.leanY * z
    // Down the leaning axis, so that the distance is taken square to it.
    const q = (vx * about.leanX + vy * about.leanY) / steep
    const along = (z - middle + q) / half
    const nx = (vx - q * about.leanX) / distance
    const ny = (vy - q * about.leanY) / distance
    values[i] = distance - about.radius
    directions[4 * i] = nx
    directions[4 * i + 1] = ny
    directions[4 * i + 2] = nx * along
    directions[4 * i + 3] = ny * along
  }
  const band = narrowestBand({ dimensions: 4, directions, values })
  if (!band) throw new Error('cylinderForm: levels all round that leave an axis free')
  const [dx = 0, dy = 0, tiltX = 0, tiltY = 0] = band.shift
  const farthest = Math.max(Math.hypot(dx - tiltX, dy - tiltY), Math.hypot(dx + tiltX, dy + tiltY))
  const cylinder: Cylinder = {
    x: about.x + dx - (tiltX * middle) / half,
    y: about.y + dy - (tiltY * middle) / half,
    leanX: about.leanX + tiltX / half,
    leanY: about.leanY + tiltY / half,
    radius: about.radius,
  }
  return {
    cylinder,
    contacts: band.contacts.map(({ index }) => index),
    secondOrderUm:
      farthest ** 2 / (2 * nearRadiusUm) + (nearRadiusUm * (tiltX ** 2 + tiltY ** 2)) / (2 * half ** 2),
  }
}

function placesOf({ depthsMm, anglesDegrees, aboutAxisUm, nearRadiusUm }: CylinderInput) {
  let count = 0
  for (const radius of aboutAxisUm) if (!Number.isNaN(radius)) count++
  const points = { x: new Float64Array(count), y: new Float64Array(count), z: new Float64Array(count) }
  const places = new Int32Array(count)
  const directions = anglesDegrees.map((degrees) => (degrees * Math.PI) / 180)
  const cosines = Float64Array.from(directions, Math.cos)
  const sines = Float64Array.from(directions, Math.sin)
  const angles = anglesDegrees.length
  let to = 0
  for (let at = 0; at < aboutAxisUm.length; at++) {
    const radius = nearRadiusUm + (aboutAxisUm[at] ?? Number.NaN)
    if (Number.isNaN(radius)) continue
    points.x[to] = radius * (cosines[at % angles] ?? 0)
    points.y[to] = radius * (sines[at % angles] ?? 0)
    points.z[to] = 1000 * (depthsMm[Math.floor(at / angles)] ?? 0)
    places[to++] = at
  }
  return { points, places }
}

function placeOf({ depthsMm, anglesDegrees }: CylinderInput, at: number) {
  const angles = anglesDegrees.length
  return { depthMm: depthsMm[Math.floor(at / angles)] ?? 0, angleDegrees: anglesDegrees[at % angles] ?? 0 }
}

function distances({ x, y, z }: CylinderPoints, cylinder: Cylinder) {
  let largest = Number.NEGATIVE_INFINITY
  let smallest = Number.POSITIVE_INFINITY
  for (let i = 0; i < x.length; i++) {
    const distance = distanceFromAxis(cylinder, x[i] ?? 0, y[i] ?? 0, z[i] ?? 0)
    if (distance > largest) largest = distance
    if (distance < smallest) smallest = distance
  }
  return { largest, smallest }
}
