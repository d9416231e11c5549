import type { Rect } from './hatched-rects'
import type { MapScale } from './map-scale'

/** Between hatch lines, 1.2 mm on paper, and between dots of a row and every other row of dots, CSS pixels. */
const hatchPitch = 4.535
export const dotPitch = 5

/**
 * 45° lines over the whole wall, to be clipped. Lines, not an SVG pattern: browsers print a pattern as a coarse
 * bitmap.
 */
export function hatchLines({ left, top, width, height }: MapScale): string {
  const step = hatchPitch * Math.SQRT2
  const count = Math.floor((width + height) / step)
  return Array.from({ length: count }, (_, i) => {
    const x = left + (i + 1) * step
    return `M${x.toFixed(1)},${top}l${-height},${height}`
  }).join('')
}

/** Rows over the whole wall, to be clipped: dashed by no length and a pitch, with round caps, they are dots. */
export function dotRows({ left, top, width, height }: MapScale): string {
  const between = dotPitch / 2
  return Array.from({ length: Math.floor(height / between) }, (_, row) => {
    const indent = between / 2 + (row % 2) * between
    return `M${left + indent},${(top + (row + 0.5) * between).toFixed(2)}H${left + width}`
  }).join('')
}

/** The rectangles as one path: browsers clip by one shape without making a bitmap of it. */
export function pathOfRects(rects: readonly Rect[]): string {
  return rects.map(({ x, y, width, height }) => `M${x},${y}h${width}v${height}h${-width}Z`).join('')
}
