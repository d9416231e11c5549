import type { Place } from '../findings'
import { typicalContactHalfWidthMm } from '../gauge/presets'
import type { Bore, Gauge } from '../measured'
import { contactAngles } from './contact-angles'
import { isWithinPort } from './port-at'

/** Width of a port's chamfer, where a contact finds no wall either, mm (typical). */
export const chamferMm = 1

/** Rounding of a depth that a belt's edge forgives, mm. */
const forgivenMm = 1e-9

/**
 * Names of the ports and belts that keep a gauge from reading a station: empty where every contact stands
 * on metal. A contact is in the way of a port when its centre lies within the half-width of its footprint
 * (the gauge's own, else 2.5 mm) and a chamfer of 1 mm of the port, along the depth and around, edges
 * included; of a belt when its centre lies within the belt, edges included. All contacts are looked at: both
 * ends of the axis, or three 120° apart. Each name once, ports before belts, in their own order.
 *
 * `diameterMm` turns mm around the bore into angle and need be no better than 1 %. Own derivation.
 */
export function blockedBy(
  bore: Pick<Bore, 'ports' | 'belts'>,
  gauge: Pick<Gauge, 'kind' | 'contactHalfWidthMm'> | undefined,
  place: Place,
  diameterMm: number,
): string[] {
  if (!(diameterMm > 0 && Number.isFinite(diameterMm))) {
    throw new RangeError(`blockedBy: expected a diameter above 0 mm, got ${diameterMm}`)
  }
  const marginMm = (gauge?.contactHalfWidthMm ?? typicalContactHalfWidthMm) + chamferMm
  const marginDegrees = (marginMm / (diameterMm / 2)) * (180 / Math.PI)
  const contacts = contactAngles(gauge?.kind).map((offset) => place.axisDegrees + offset)
  const ports = bore.ports.filter((port) =>
    contacts.some((angle) => isWithinPort(port, place.depthMm, angle, marginMm, marginDegrees)),
  )
  const belts = bore.belts.filter(
    (belt) => place.depthMm >= belt.fromDepthMm - forgivenMm && place.depthMm <= belt.toDepthMm + forgivenMm,
  )
  return [...new Set([...ports, ...belts].map((obstacle) => obstacle.name))]
}
