/** A wall whose length is not known is drawn so far past the deepest place that is recorded, mm. */
export const drawnPastLevelsMm = 10

/**
 * How long the wall of a scan is drawn, mm: as long as the bore, or where that is not known as far as its readings are
 * drawn or 10 mm past its own deepest level; never shorter than it was scanned.
 */
export function drawnLengthOfScan(
  { lengthMm }: { readonly lengthMm?: number },
  drawnLengthMm: number,
  depthsMm: readonly number[],
): number {
  const deepest = depthsMm[depthsMm.length - 1] ?? 0
  return lengthMm === undefined
    ? Math.max(drawnLengthMm, deepest + drawnPastLevelsMm)
    : Math.max(lengthMm, deepest)
}
