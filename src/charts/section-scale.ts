import { type ScaleLinear, scaleLinear } from 'd3-scale'
import { drawnDiameter } from '../core/surface/exaggeration'

/** How a level is drawn round: front at the top, clockwise as seen from the deck, as in the picture from above. */
export interface SectionScale {
  readonly x: number
  readonly y: number
  /** From a deviation, µm, to the radius that it is drawn at, pixels. */
  readonly radius: ScaleLinear<number, number>
  /** Radius of all that is drawn, the cut wall included, pixels. */
  readonly outer: number
  /** Drawn apart, both walls together, for each µm on the diameter, pixels. */
  readonly pixelsPerUm: number
}

/** Thickness that the wall is shown with where it is cut, pixels. */
export const cutPx = 9

/** The scale at which what reaches furthest out, `highUm`, has its wall just within the outer radius. */
export function sectionScale(
  place: { readonly x: number; readonly y: number; readonly outer: number },
  middleMm: number,
  exaggeration: number,
  highUm: number,
): SectionScale {
  const drawnMm = (um: number) => drawnDiameter(middleMm, exaggeration, middleMm + um / 1000)
  const pixelsPerMm = (2 * (place.outer - cutPx)) / drawnMm(highUm)
  const radius = scaleLinear([0, 1000], [(drawnMm(0) * pixelsPerMm) / 2, (drawnMm(1000) * pixelsPerMm) / 2])
  return { ...place, radius, pixelsPerUm: (exaggeration * pixelsPerMm) / 1000 }
}

/** Where a deviation at an angle, rad, is drawn. */
export function sectionPlace(scale: SectionScale, angleRad: number, radiusPx: number) {
  return { x: scale.x + radiusPx * Math.sin(angleRad), y: scale.y - radiusPx * Math.cos(angleRad) }
}

/** The angle under a pixel, degrees in [0, 360); undefined at the very middle and past everything drawn. */
export function angleUnder(scale: SectionScale, x: number, y: number): number | undefined {
  const away = Math.hypot(x - scale.x, y - scale.y)
  if (away < 4 || away > scale.outer + 24) return undefined
  const degrees = (Math.atan2(x - scale.x, scale.y - y) * 180) / Math.PI
  return (degrees + 360) % 360
}
