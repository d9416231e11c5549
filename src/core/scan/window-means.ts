/** Values on a cylinder: rows along the depth, columns around, the last beside the first; NaN is a gap. */
export interface RingMap {
  readonly rows: number
  readonly columns: number
  /** [row · columns + column] */
  readonly values: Float64Array
}

/** A window of so many rows by columns, both odd, about the cell in its middle. */
export interface MapWindow {
  readonly high: number
  readonly wide: number
}

/** sum/√n of windows, the cells in their middle, and n. */
export interface StandardisedMeans {
  readonly at: Int32Array
  readonly values: Float64Array
  readonly counts: Float64Array
}

/** Sums over any window of a map in constant time. */
export interface WindowMeans {
  /**
   * sum/√n over the n values of the windows about rows and columns so many steps apart, left out where their middle is a
   * gap or less than half of the window has values; and the cells in their middle.
   */
  standardised(window: MapWindow, rowStep: number, columnStep: number): StandardisedMeans
  /** Mean over the window about a cell and how many values it rests on; undefined where there are none. */
  meanAt(row: number, column: number, window: MapWindow): { mean: number; count: number } | undefined
}

/**
 * Means over windows of a map that closes around, by summed-area tables (Crow, Computer Graphics 18 (1984)) of the
 * values and of how many there are. A window ends at the first and last row and leaves gaps out. Accuracy: rounding,
 * some 1e-12 of the sum of all values.
 */
export function windowMeans(map: RingMap): WindowMeans {
  const { rows, columns } = map
  const span = 2 * columns + 1
  const { sums, counts } = tables(map, span)
  const room = {
    at: new Int32Array(rows * columns),
    values: new Float64Array(rows * columns),
    counts: new Float64Array(rows * columns),
  }
  return {
    standardised({ high, wide }, rowStep, columnStep) {
      const around = Math.min(wide, columns)
      const needed = Math.max(2, (high * around) / 2)
      let found = 0
      for (let row = 0; row < rows; row += rowStep) {
        const top = Math.max(0, row - (high >> 1)) * span
        const bottom = Math.min(rows, row + (high >> 1) + 1) * span
        for (let column = 0; column < columns; column += columnStep) {
          if (Number.isNaN(map.values[row * columns + column] ?? Number.NaN)) continue
          const left = (column - (around >> 1) + columns) % columns
          const count = within(counts, top, bottom, left, left + around)
          if (count < needed) continue
          room.at[found] = row * columns + column
          room.counts[found] = count
          room.values[found++] = within(sums, top, bottom, left, left + around) / Math.sqrt(count)
        }
      }
      return {
        at: room.at.subarray(0, found),
        values: room.values.subarray(0, found),
        counts: room.counts.subarray(0, found),
      }
    },
    meanAt(row, column, { high, wide }) {
      const around = Math.min(wide, columns)
      const top = Math.max(0, row - (high >> 1)) * span
      const bottom = Math.min(rows, row + (high >> 1) + 1) * span
      const left = (column - (around >> 1) + columns) % columns
      const count = within(counts, top, bottom, left, left + around)
      if (count === 0) return undefined
      return { mean: within(sums, top, bottom, left, left + around) / count, count }
    },
  }
}

/** The sum over a window: edges of its columns, and where the rows of its edges begin in the table. */
function within(table: Float64Array, top: number, bottom: number, left: number, right: number): number {
  return (
    (table[bottom + right] ?? 0) -
    (table[top + right] ?? 0) -
    (table[bottom + left] ?? 0) +
    (table[top + left] ?? 0)
  )
}

function tables({ rows, columns, values }: RingMap, span: number) {
  const sums = new Float64Array((rows + 1) * span)
  const counts = new Float64Array((rows + 1) * span)
  for (let row = 0; row < rows; row++) {
    let sum = 0
    let count = 0
    for (let at = 0; at < 2 * columns; at++) {
      const value = values[row * columns + (at % columns)] ?? Number.NaN
      if (!Number.isNaN(value)) {
        sum += value
        count++
      }
      const below = (row + 1) * span + at + 1
      sums[below] = (sums[below - span] ?? 0) + sum
      counts[below] = (counts[below - span] ?? 0) + count
    }
  }
  return { sums, counts }
}
