import type { Port } from '../measured'

/** Rounding of degrees and mm that an edge forgives. */
const forgiven = 1e-9

/**
 * Width of a port around the bore, degrees in (0, 360]: from `fromDegrees` clockwise to `toDegrees`, which
 * may cross 0°. Edges a whole number of turns apart go all round; equal edges have no width.
 */
export function portWidthDegrees(port: Pick<Port, 'fromDegrees' | 'toDegrees'>): number {
  const turn = modulo(port.toDegrees - port.fromDegrees, 360)
  return turn === 0 && port.toDegrees !== port.fromDegrees ? 360 : turn
}

/**
 * Whether a place on the wall lies in a port or within a margin of it, edges included: depth and margin
 * along the depth in mm, angle (any, taken modulo 360) and margin around in degrees.
 */
export function isWithinPort(
  port: Port,
  depthMm: number,
  angleDegrees: number,
  marginMm = 0,
  marginDegrees = 0,
): boolean {
  if (depthMm < port.fromDepthMm - marginMm - forgiven) return false
  if (depthMm > port.toDepthMm + marginMm + forgiven) return false
  const reach = portWidthDegrees(port) + 2 * marginDegrees
  const fromEdge = modulo(angleDegrees - port.fromDegrees + marginDegrees, 360)
  return reach >= 360 || fromEdge <= reach + forgiven || fromEdge >= 360 - forgiven
}

/** The port that a place on the wall lies in, edges included; the first where ports overlap. */
export function portAt(ports: readonly Port[], depthMm: number, angleDegrees: number): Port | undefined {
  return ports.find((port) => isWithinPort(port, depthMm, angleDegrees))
}

function modulo(value: number, period: number): number {
  return ((value % period) + period) % period
}
