/**
 * The round number of µm on the diameter (1, 2 or 5 · 10ⁿ, or so many times `stepUm` in another unit) whose bar is the longest that fits, and that
 * bar's length in CSS pixels. On the picture the two walls move apart by exaggeration × the change of the
 * diameter, so the bar is that many drawn mm, in pixels at the middle of the bore.
 */
export function scaleBar(exaggeration: number, pixelsPerMm: number, longestPx: number, stepUm = 1) {
  const pixelsPerUm = (exaggeration * pixelsPerMm) / 1000
  const micrometres = scaleStep(longestPx / pixelsPerUm / stepUm) * stepUm
  return { micrometres, lengthPx: micrometres * pixelsPerUm }
}

/** The largest of 1, 2, 5 · 10ⁿ not above x > 0. */
export function scaleStep(x: number): number {
  const decade = 10 ** Math.floor(Math.log10(x))
  if (5 * decade <= x) return 5 * decade
  return 2 * decade <= x ? 2 * decade : decade
}
