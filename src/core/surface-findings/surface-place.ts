import type { SurfacePlace } from '../measured'
import { portWidthDegrees } from '../ports/port-at'

/** Rounding of degrees and mm that an edge forgives. */
const forgiven = 1e-9

/** How far a place reaches around the bore, degrees from 0 (a line along the stroke) to 360 (all round). */
export function surfaceWidthDegrees(place: SurfacePlace): number {
  return portWidthDegrees(place)
}

/**
 * Whether a place on the wall lies in that of a surface finding or within a margin of it, edges included: depth
 * and margin along the depth in mm, angle (any, taken modulo 360) and margin around in degrees.
 */
export function isWithinSurface(
  place: SurfacePlace,
  depthMm: number,
  angleDegrees: number,
  marginMm = 0,
  marginDegrees = 0,
): boolean {
  if (depthMm < place.fromDepthMm - marginMm - forgiven) return false
  if (depthMm > place.toDepthMm + marginMm + forgiven) return false
  const reach = surfaceWidthDegrees(place) + 2 * marginDegrees
  const fromEdge = modulo(angleDegrees - place.fromDegrees + marginDegrees, 360)
  return reach >= 360 || fromEdge <= reach + forgiven || fromEdge >= 360 - forgiven
}

/** A narrow mark is pointed at from so far, as a share of the length drawn and in degrees. */
const nearShare = 0.015
const nearDegrees = 2.5

/** Those of a bore's surface findings that a place of the wall lies in or next to; length drawn in mm. */
export function surfaceNear<Finding extends SurfacePlace>(
  findings: readonly Finding[],
  { depthMm, angleDegrees }: { readonly depthMm: number; readonly angleDegrees: number },
  lengthMm: number,
): readonly Finding[] {
  return findings.filter((finding) =>
    isWithinSurface(finding, depthMm, angleDegrees, nearShare * lengthMm, nearDegrees),
  )
}

/** The middle of a place: depth in mm, angle in degrees in [0, 360); all round, the angle it is written from. */
export function middleOfSurface(place: SurfacePlace): {
  readonly depthMm: number
  readonly angleDegrees: number
} {
  const width = surfaceWidthDegrees(place)
  return {
    depthMm: (place.fromDepthMm + place.toDepthMm) / 2,
    angleDegrees: modulo(place.fromDegrees + (width < 360 ? width / 2 : 0), 360),
  }
}

function modulo(value: number, period: number): number {
  return ((value % period) + period) % period
}
