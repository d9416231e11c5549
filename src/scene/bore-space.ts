import { drawnDiameter } from '../core/surface/exaggeration'

/** A place or direction in bore space, mm: y along the axis, deck at +length/2, 0° toward +z, 90° toward −x. */
export interface Point {
  readonly x: number
  readonly y: number
  readonly z: number
}

/** Drawn radius, mm, of a deviation on the diameter in µm. */
export function drawnRadius(middleMm: number, exaggeration: number, deviationUm: number): number {
  return drawnDiameter(middleMm, exaggeration, middleMm + deviationUm / 1000) / 2
}

/** A place on a circle about the axis: angle in rad clockwise seen from the deck, depth and radius in mm. */
export function onCircle(lengthMm: number, angle: number, depthMm: number, radiusMm: number): Point {
  return { x: -Math.sin(angle) * radiusMm, y: lengthMm / 2 - depthMm, z: Math.cos(angle) * radiusMm }
}

/** Angle in rad, clockwise seen from the deck, in (−π, π]. */
export function angleOf(point: Point): number {
  return Math.atan2(-point.x, point.z)
}

/** The same angle in rad brought into [0, 2π). */
export function turnedInto(angle: number): number {
  const turn = 2 * Math.PI
  return ((angle % turn) + turn) % turn
}
