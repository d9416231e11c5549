/**
 * The round number of µm on the diameter (1, 2 or 5 · 10ⁿ) whose bar is the longest that fits, and that
 * bar's length in CSS pixels. On the picture the two walls move apart by exaggeration × the change of the
 * diameter, so the bar is that many drawn mm, in pixels at the middle of the bore.
 */
export function scaleBar(exaggeration: number, pixelsPerMm: number, longestPx: number) {
  const pixelsPerUm = (exaggeration * pixelsPerMm) / 1000
  const most = longestPx / pixelsPerUm
  const decade = 10 ** Math.floor(Math.log10(most))
  const step = [5, 2].find((candidate) => candidate * decade <= most) ?? 1
  const micrometres = step * decade
  return { micrometres, lengthPx: micrometres * pixelsPerUm }
}
