/** The points of a grid, closed round from the last column to the first. */
export interface RoundGrid {
  readonly rows: number
  readonly columns: number
}

/**
 * Marks the patches that hold a seed: 1 at every point that can be reached from a seed through points that
 * are `beyond`, stepping to the row above or below or to the column on either side, round the bore. A seed
 * is marked even where it is not beyond. All arrays are row by row, [row · columns + column].
 */
export function patchesWith(
  seeds: Iterable<number>,
  beyond: Uint8Array,
  { rows, columns }: RoundGrid,
): Uint8Array {
  const marked = new Uint8Array(rows * columns)
  const open: number[] = []
  const mark = (point: number) => {
    if (marked[point] === 1) return
    marked[point] = 1
    open.push(point)
  }
  for (const seed of seeds) mark(seed)
  for (let point = open.pop(); point !== undefined; point = open.pop()) {
    const column = point % columns
    const start = point - column
    const neighbours = [
      point - columns,
      point + columns,
      start + ((column + 1) % columns),
      start + ((column + columns - 1) % columns),
    ]
    for (const neighbour of neighbours) if (beyond[neighbour] === 1) mark(neighbour)
  }
  return marked
}
