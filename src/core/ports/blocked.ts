import type { Place } from '../findings'
import { typicalContactHalfWidthMm } from '../gauge/presets'
import type { Bore, Gauge } from '../measured'
import { contactAngles } from './contact-angles'
import { isWithinPort } from './port-at'

/** Width of a port's chamfer, where a contact finds no wall either, mm (typical). */
export const chamferMm = 1

/** Rounding of a depth that a belt's edge forgives, mm. */
const forgivenMm = 1e-9

/** What of a gauge decides where it can stand. */
export type Footing = Pick<Gauge, 'kind' | 'contactHalfWidthMm' | 'feetOffsetMm'>

/** How far the centre of a contact or foot must keep from the edge of a port, mm: its half-width and a chamfer. */
export function portMarginMm(gauge: Pick<Gauge, 'contactHalfWidthMm'> | undefined): number {
  return (gauge?.contactHalfWidthMm ?? typicalContactHalfWidthMm) + chamferMm
}

/** An arc along the wall in degrees. Throws for a diameter that is none. */
export function arcDegrees(arcMm: number, diameterMm: number): number {
  if (!(diameterMm > 0 && Number.isFinite(diameterMm))) {
    throw new RangeError(`arcDegrees: expected a diameter above 0 mm, got ${diameterMm}`)
  }
  return (arcMm / (diameterMm / 2)) * (180 / Math.PI)
}

/**
 * Names of the ports and belts that keep a gauge from reading a station: empty where every contact stands
 * on metal. A contact is in the way of a port when its centre lies within the half-width of its footprint
 * (the gauge's own, else 2.5 mm) and a chamfer of 1 mm of the port, along the depth and around, edges
 * included; of a belt when its centre lies within the belt, edges included. All contacts are looked at: both
 * ends of the axis, or three 120° apart. The two feet of a centraliser, where the gauge has one, stand at the
 * depth of the contacts either side of one of them, as broad as a contact; since the gauge can be turned round,
 * they are in the way only when they are so beside each of the contacts, and those of the first are named.
 * Each name once, ports before belts, in their own order.
 *
 * `diameterMm` turns mm around the bore into angle and need be no better than 1 %. Own derivation.
 */
export function blockedBy(
  bore: Pick<Bore, 'ports' | 'belts'>,
  gauge: Footing | undefined,
  place: Place,
  diameterMm: number,
): string[] {
  const marginMm = portMarginMm(gauge)
  const marginDegrees = arcDegrees(marginMm, diameterMm)
  const contacts = contactAngles(gauge?.kind).map((offset) => place.axisDegrees + offset)
  const portsAt = (angles: readonly number[]) =>
    bore.ports.filter((port) =>
      angles.some((angle) => isWithinPort(port, place.depthMm, angle, marginMm, marginDegrees)),
    )
  const ports = new Set([...portsAt(contacts), ...underFeet(gauge, contacts, diameterMm, portsAt)])
  const belts = bore.belts.filter(
    (belt) => place.depthMm >= belt.fromDepthMm - forgivenMm && place.depthMm <= belt.toDepthMm + forgivenMm,
  )
  const inTheWay = [...bore.ports.filter((port) => ports.has(port)), ...belts]
  return [...new Set(inTheWay.map((obstacle) => obstacle.name))]
}

function underFeet<Obstacle>(
  gauge: Footing | undefined,
  contacts: readonly number[],
  diameterMm: number,
  portsAt: (angles: readonly number[]) => readonly Obstacle[],
): readonly Obstacle[] {
  if (gauge?.feetOffsetMm === undefined) return []
  const apart = arcDegrees(gauge.feetOffsetMm, diameterMm)
  const waysRound = contacts.map((contact) => portsAt([contact - apart, contact + apart]))
  return waysRound.every((ports) => ports.length > 0) ? (waysRound[0] ?? []) : []
}
