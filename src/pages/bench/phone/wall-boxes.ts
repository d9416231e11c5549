import type { Size } from '../use-size'

/** Sizes of picture and map for the room there is, pixels. */
export interface WallBoxes {
  /** One beneath the other; the same with one row of controls; map and read-out beside the picture. */
  readonly form: 'narrow' | 'broad' | 'beside'
  readonly picture: Size | undefined
  readonly map: Size
}

const row = 48
const strip = 84
const space = 8

/**
 * In an upright window the picture is 360 high and the map 240, and the page scrolls; where there is more
 * width than height, all is seen at once.
 */
export function wallBoxes(
  { width, height }: Size,
  { hasPicture, hasStrip }: { readonly hasPicture: boolean; readonly hasStrip: boolean },
): WallBoxes {
  const below = space + (hasStrip ? strip : 0)
  if (!hasPicture) {
    return {
      form: 'narrow',
      picture: undefined,
      map: { width, height: Math.max(240, height - row - space - below) },
    }
  }
  if (width > 560 && height < 400) {
    const half = Math.floor((width - space) / 2)
    return {
      form: 'beside',
      picture: { width: half, height: Math.max(180, height - row) },
      map: { width: width - space - half, height: Math.max(140, height - 2 * row - below) },
    }
  }
  const isBroad = width > 560
  const map = { width, height: isBroad ? (hasStrip ? 150 : 180) : 240 }
  const left = height - (isBroad ? 2 : 3) * row - map.height - below
  const picture = { width, height: Math.min(560, Math.max(isBroad ? 270 : 360, left)) }
  return { form: isBroad ? 'broad' : 'narrow', picture, map }
}
