import { downOf, type MapScale } from './map-scale'

/** Every level has its tick; a label is left out where it would run into the one above. Pixels. */
export function depthLabels(scale: MapScale, levelsMm: readonly number[], lineHeight: number) {
  let last = Number.NEGATIVE_INFINITY
  return [...levelsMm]
    .sort((a, b) => a - b)
    .map((depthMm) => {
      const y = downOf(scale, depthMm)
      const labelled = y - last >= lineHeight
      if (labelled) last = y
      return { depthMm, y, labelled }
    })
}
