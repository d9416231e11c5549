import { median } from '../blunders/median'
import { type CellBox, isInBox } from './cell-box'
import type { MarkSign } from './scan-marks'
import type { RingMap } from './window-means'

/** Lines up to this width around the bore are looked for within wider marks, mm. */
export const narrowLineMm = 1.4
const sigmaOverMedian = 1.4826022185056018

/** A map without a wide mark: as deviations to be judged, and as heights over the mark. */
export interface WithoutWideMark {
  readonly standing: RingMap
  readonly heights: RingMap
}

/**
 * The map as it would be without a wide mark, so that narrow lines of the other sign within it stand out by
 * themselves: within the mark's box each row less its opening (for a mark that reads smaller; else its closing) by a
 * line of `lineColumns` + 1 cells around, which keeps the mark and leaves out what is narrower; less the middle value
 * that this has there, and scaled to the map's own scatter. Source: the top-hat of Meyer (1979), Serra, Image
 * Analysis and Mathematical Morphology (1982). Own derivation of the scaling.
 */
export function withoutWideMark(
  map: RingMap,
  box: CellBox,
  sign: MarkSign,
  sigma: number,
  lineColumns: number,
): WithoutWideMark {
  const side = sign === 'smaller' ? 1 : -1
  const inside: number[] = []
  for (let cell = 0; cell < map.values.length; cell++) {
    if (isInBox(box, map.columns, cell) && !Number.isNaN(map.values[cell] ?? Number.NaN)) inside.push(cell)
  }
  const standing = map.values.slice()
  const heights = map.values.slice()
  const over = inside.map(
    (cell) => side * (map.values[cell] ?? 0) - opening(map, cell, side, lineColumns + 1),
  )
  if (over.length > 0) {
    const middle = median(over)
    const spread = sigmaOverMedian * median(over.map((value) => Math.abs(value - middle)))
    const scale = sigma / Math.max(sigma, spread)
    for (const [index, cell] of inside.entries()) {
      heights[cell] = side * ((over[index] ?? 0) - middle)
      standing[cell] = scale * (heights[cell] ?? 0)
    }
  }
  return { standing: { ...map, values: standing }, heights: { ...map, values: heights } }
}

/** The largest of the least values of all runs of so many cells around that hold a cell; gaps end a run. */
function opening({ columns, values }: RingMap, cell: number, side: number, length: number): number {
  const row = cell - (cell % columns)
  const at = (offset: number) =>
    side * (values[row + (((((cell % columns) + offset) % columns) + columns) % columns)] ?? Number.NaN)
  let largest = Number.NEGATIVE_INFINITY
  for (let first = 1 - length; first <= 0; first++) {
    let least = at(0)
    for (let step = 0; step < length; step++) {
      const value = at(first + step)
      if (!Number.isNaN(value)) least = Math.min(least, value)
    }
    largest = Math.max(largest, least)
  }
  return largest
}
