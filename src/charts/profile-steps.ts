import { type MapContact, nextContact } from './map-contacts'
import type { MapPlace } from './map-scale'

/**
 * The reading that an arrow key leads to on a profile: up and down along its own axis, left and right to the axis
 * before or after, at the level nearest to this one. Without a place to start from, the first of the axis.
 */
export function nextOnProfile(
  axisDegrees: number,
  angleDegrees: number,
): (contacts: readonly MapContact[], from: MapPlace | undefined, key: string) => MapPlace | undefined {
  return (contacts, from, key) => {
    const here = contacts.filter((one) => one.angleDegrees === angleDegrees)
    if (key === 'ArrowUp' || key === 'ArrowDown') return nextContact(here, from, key)
    if (key !== 'ArrowLeft' && key !== 'ArrowRight') return undefined
    const axes = [...new Set(contacts.map(({ station }) => station.axisDegrees))].sort((a, b) => a - b)
    const at = axes.indexOf(axisDegrees)
    const axis = axes[(at + (key === 'ArrowRight' ? 1 : -1) + axes.length) % axes.length]
    const depthMm = from?.depthMm ?? here[0]?.depthMm ?? 0
    const there = contacts.filter(({ angleDegrees: angle }) => angle === axis)
    const nearest = there.reduce<MapContact | undefined>(
      (best, one) =>
        best && Math.abs(best.depthMm - depthMm) <= Math.abs(one.depthMm - depthMm) ? best : one,
      undefined,
    )
    return nearest && { depthMm: nearest.depthMm, angleDegrees: nearest.angleDegrees }
  }
}
