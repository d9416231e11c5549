import { studentQuantile } from '../statistics/student'
import type { CellBox } from './cell-box'
import type { MarkSign } from './scan-marks'
import { type MapWindow, type RingMap, windowMeans } from './window-means'

/** Chance with which noise alone would choose the area. */
const chosenByNoise = 0.05

/** The small area of a mark that stands out most: its middle cell, its mean (signed) and how many values it rests on. */
export interface MarkHeight {
  readonly cell: number
  readonly window: MapWindow
  readonly mean: number
  readonly count: number
  /** What the largest of the means of so many windows stays below with a chance of 95 %, in their standard deviations. */
  readonly factor: number
}

/**
 * How high a mark is: of all windows about its own cells, no larger than it, the one whose mean is surest to stand out
 * far: |mean| − k·σ/√n, k what the largest of so many means stays below with a chance of 95 %. A single value is never taken for a height that its neighbours do not have.
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
  const factor = studentQuantile(1 - chosenByNoise / (core.length * windows.length), Number.POSITIVE_INFINITY)
  let best: MarkHeight | undefined
  let bestBound = Number.NEGATIVE_INFINITY
  for (const cell of core) {
    const row = Math.floor(cell / columns)
    for (const window of windows) {
      const here = means.meanAt(row, cell % columns, window)
      if (!here) continue
      const bound = side * here.mean - (factor * sigma) / Math.sqrt(here.count)
      if (bound <= bestBound) continue
      bestBound = bound
      best = { cell, window, factor, ...here }
    }
  }
  if (!best) throw new RangeError('heightOf: a mark without a value')
  return best
}

/** Odd sizes to that of the mark each way. */
function windowsWithin(high: number, wide: number): MapWindow[] {
  const sizes = (most: number) => [1, 3, 5, 9, 15, 25].filter((size) => size <= most)
  return sizes(high).flatMap((rows) => sizes(wide).map((across) => ({ high: rows, wide: across })))
}
