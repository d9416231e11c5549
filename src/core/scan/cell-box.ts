/** The smallest box around cells of a map that closes around: rows from and to, columns from one clockwise. */
export interface CellBox {
  readonly top: number
  readonly bottom: number
  /** In [0, columns). */
  readonly left: number
  /** Columns from the left one on, itself included; all of them where it goes all round. */
  readonly wide: number
}

/** The box around cells, each [row · columns + column]; its columns leave out the widest gap. Throws for none. */
export function cellBox(cells: readonly number[], columns: number): CellBox {
  if (cells.length === 0) throw new RangeError('cellBox of no cells')
  let top = Number.POSITIVE_INFINITY
  let bottom = 0
  const held = new Uint8Array(columns)
  for (const cell of cells) {
    const row = Math.floor(cell / columns)
    top = Math.min(top, row)
    bottom = Math.max(bottom, row)
    held[cell % columns] = 1
  }
  return { top, bottom, ...arcOf(held) }
}

/** From the end of the longest run of columns without a cell to its beginning. */
function arcOf(held: Uint8Array): { left: number; wide: number } {
  const columns = held.length
  const start = held.indexOf(1)
  let run = 0
  let longest = 0
  let left = start
  for (let step = 1; step <= columns; step++) {
    const at = (start + step) % columns
    if (held[at] === 0) {
      run++
      continue
    }
    if (run > longest) {
      longest = run
      left = at
    }
    run = 0
  }
  return { left, wide: columns - longest }
}

/** Whether a cell lies in a box or within so many rows and columns of it. */
export function isInBox(
  { top, bottom, left, wide }: CellBox,
  columns: number,
  cell: number,
  rowMargin = 0,
  columnMargin = 0,
): boolean {
  const row = Math.floor(cell / columns)
  if (row < top - rowMargin || row > bottom + rowMargin) return false
  const reach = wide + 2 * columnMargin
  const from = (cell % columns) - left + columnMargin
  return reach >= columns || ((from % columns) + columns) % columns < reach
}
