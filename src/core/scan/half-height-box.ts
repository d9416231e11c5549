import { type CellBox, cellBox } from './cell-box'
import type { MarkSign } from './scan-marks'
import type { RingMap } from './window-means'

/** A line's mean is known well enough when its standard deviation is this share of the height. */
const knownTo = 1 / 6
/** A mark reaches to this share of its height. */
const edgeShare = 0.5
/** Noise may take so many of its standard deviations from a line at the edge. */
const forgiven = 1.5

/**
 * The box of some cells without the rows and columns at its ends whose mean is below half of the highest such mean, by more than noise
 * takes from it.
 * Where the cells of one row (or column) are too few to tell, the mean over some neighbouring ones is taken. `sigma`
 * is the standard deviation of a value. Own derivation.
 */
export function halfHeightBox(
  map: RingMap,
  cells: readonly number[],
  sign: MarkSign,
  sigma: number,
): CellBox {
  const side = sign === 'larger' ? 1 : -1
  const box = cellBox(cells, map.columns)
  const rows = linesOf(box.bottom - box.top + 1)
  const columns = linesOf(box.wide)
  for (const cell of cells) {
    const value = side * (map.values[cell] ?? Number.NaN)
    if (Number.isNaN(value)) continue
    add(rows, Math.floor(cell / map.columns) - box.top, value)
    add(columns, ((cell % map.columns) - box.left + map.columns) % map.columns, value)
  }
  const [firstRow, lastRow] = trimmed(rows, sigma)
  const [firstColumn, lastColumn] = trimmed(columns, sigma)
  return {
    top: box.top + firstRow,
    bottom: box.top + lastRow,
    left: (box.left + firstColumn) % map.columns,
    wide: lastColumn - firstColumn + 1,
  }
}

interface Lines {
  readonly sums: number[]
  readonly counts: number[]
}

function linesOf(count: number): Lines {
  return { sums: new Array<number>(count).fill(0), counts: new Array<number>(count).fill(0) }
}

function add({ sums, counts }: Lines, line: number, value: number): void {
  sums[line] = (sums[line] ?? 0) + value
  counts[line] = (counts[line] ?? 0) + 1
}

/** The first and the last line that has half of the height. */
function trimmed({ sums, counts }: Lines, sigma: number): [number, number] {
  for (let reach = 0; ; reach++) {
    const profile = sums.map((_, line) => around(sums, counts, line, reach))
    const highest = profile.reduce((best, here) => (here.mean > best.mean ? here : best))
    const isKnown = sigma / Math.sqrt(highest.count) <= knownTo * highest.mean
    if (!isKnown && 2 * reach + 1 < sums.length) continue
    const stands = profile.map(
      ({ mean, count }) => mean + (forgiven * sigma) / Math.sqrt(count) >= edgeShare * highest.mean,
    )
    return [stands.indexOf(true), stands.lastIndexOf(true)]
  }
}

function around(sums: readonly number[], counts: readonly number[], line: number, reach: number) {
  let sum = 0
  let count = 0
  for (let at = Math.max(0, line - reach); at <= Math.min(sums.length - 1, line + reach); at++) {
    sum += sums[at] ?? 0
    count += counts[at] ?? 0
  }
  return { mean: count === 0 ? Number.NEGATIVE_INFINITY : sum / count, count: Math.max(1, count) }
}
