import type { CellBox } from './cell-box'
import type { MarkSign } from './scan-marks'
import { type MapWindow, type RingMap, windowMeans } from './window-means'

/** The area is chosen by its mean less so many standard deviations of it, so that noise does not choose. */
const cautious = 3

/** The small area of a mark that stands out most: its middle cell, its mean (signed) and how many values it rests on. */
export interface MarkHeight {
  readonly cell: number
  readonly window: MapWindow
  readonly mean: number
  readonly count: number
}

/**
 * How high a mark is: of all windows about its own cells, to half of its size,, the one whose mean is surest to stand out
 * far, |mean| − 3·σ/√n. A single value is never taken for a height that its neighbours do not have.
 */
export function heightOf(
  map: RingMap,
  core: readonly number[],
  { top, bottom, wide }: CellBox,
  sign: MarkSign,
  sigma: number,
): MarkHeight {
  const { columns } = map
  const means = windowMeans(map)
  const side = sign === 'larger' ? 1 : -1
  const windows = windowsWithin(bottom - top + 1, wide)
  let best: MarkHeight | undefined
  let bestBound = Number.NEGATIVE_INFINITY
  for (const cell of core) {
    const row = Math.floor(cell / columns)
    for (const window of windows) {
      const here = means.meanAt(row, cell % columns, window)
      if (!here) continue
      const bound = side * here.mean - (cautious * sigma) / Math.sqrt(here.count)
      if (bound <= bestBound) continue
      bestBound = bound
      best = { cell, window, ...here }
    }
  }
  if (!best) throw new RangeError('heightOf: a mark without a value')
  return best
}

/** Odd sizes to about the half of a mark each way. */
function windowsWithin(high: number, wide: number): MapWindow[] {
  const sizes = (most: number) => [1, 3, 5, 9, 15, 25].filter((size) => size <= most / 2 + 1)
  return sizes(high).flatMap((rows) => sizes(wide).map((across) => ({ high: rows, wide: across })))
}
