import type { DrawnStation } from '../core/findings'
import { acrossOf, downOf, type MapPlace, type MapScale } from './map-scale'

/** A pointer this near to a reading points at the reading, pixels. */
const snap = 7

/** A place where a contact stood. */
export interface MapContact<Station extends DrawnStation = DrawnStation> extends MapPlace {
  readonly station: Station
}

const bothEnds: readonly number[] = [0, 180]

/** Where the contacts of these stations stood. */
export function contactsOf<Station extends DrawnStation>(
  stations: readonly Station[],
): MapContact<Station>[] {
  return stations.flatMap((station) =>
    (station.contactDegrees ?? bothEnds).map((turn) => ({
      depthMm: station.depthMm,
      angleDegrees: (station.axisDegrees + turn) % 360,
      station,
    })),
  )
}

/** Identity of a contact within the page. */
export function contactId(map: string, { depthMm, angleDegrees }: MapPlace): string {
  return `${map}-${depthMm}-${angleDegrees}`
}

export function samePlace(a: MapPlace, b: MapPlace): boolean {
  return a.depthMm === b.depthMm && a.angleDegrees === b.angleDegrees
}

export function nearContact(
  contacts: readonly MapContact[],
  scale: MapScale,
  x: number,
  y: number,
): MapPlace | undefined {
  const near = contacts.find(
    (c) =>
      Math.hypot(acrossOf(scale, c.angleDegrees) - x, downOf(scale, c.depthMm) - y) <= snap ||
      Math.hypot(acrossOf(scale, c.angleDegrees) + scale.width - x, downOf(scale, c.depthMm) - y) <= snap,
  )
  return near && { depthMm: near.depthMm, angleDegrees: near.angleDegrees }
}

const turned = (angleDegrees: number) => (angleDegrees + 180) % 360

/** The reading next to the place pointed at, the way an arrow key points; the first where none was. */
export function nextContact(
  contacts: readonly MapContact[],
  from: MapPlace | undefined,
  key: string,
): MapPlace | undefined {
  const ways: Record<string, (c: MapPlace, at: MapPlace) => number> = {
    ArrowRight: (c, at) => (c.depthMm === at.depthMm ? turned(c.angleDegrees) - turned(at.angleDegrees) : 0),
    ArrowLeft: (c, at) => (c.depthMm === at.depthMm ? turned(at.angleDegrees) - turned(c.angleDegrees) : 0),
    ArrowDown: (c, at) =>
      c.depthMm - at.depthMm + Math.abs(turned(c.angleDegrees) - turned(at.angleDegrees)) / 1e3,
    ArrowUp: (c, at) =>
      at.depthMm - c.depthMm + Math.abs(turned(c.angleDegrees) - turned(at.angleDegrees)) / 1e3,
  }
  const way = ways[key]
  if (!way) return undefined
  const sorted = [...contacts].sort(
    (a, b) => a.depthMm - b.depthMm || turned(a.angleDegrees) - turned(b.angleDegrees),
  )
  const start = nearestOf(sorted, from)
  if (!start || !from) return sorted[0] && bare(sorted[0])
  const vertical = key === 'ArrowDown' || key === 'ArrowUp'
  const onward = sorted
    .filter((c) => way(c, start) > 0 && (!vertical || c.depthMm !== start.depthMm))
    .sort((a, b) => way(a, start) - way(b, start))[0]
  return bare(onward ?? start)
}

function bare({ depthMm, angleDegrees }: MapPlace): MapPlace {
  return { depthMm, angleDegrees }
}

function nearestOf(contacts: readonly MapContact[], from: MapPlace | undefined): MapContact | undefined {
  if (!from) return contacts[0]
  const away = (c: MapContact) =>
    Math.abs(c.depthMm - from.depthMm) + Math.abs(turned(c.angleDegrees) - turned(from.angleDegrees))
  return contacts.reduce<MapContact | undefined>((a, b) => (a && away(a) <= away(b) ? a : b), undefined)
}
