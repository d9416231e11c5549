/** A cell of the grid, counted from 0. */
export interface CellAt {
  readonly row: number
  readonly column: number
}

/** Cells chosen together: all between two corners. */
export interface GridBlock {
  /** Where the choosing began. */
  readonly from: CellAt
  /** Where it has come to; this cell has the focus. */
  readonly to: CellAt
}

export interface GridSize {
  readonly rows: number
  readonly columns: number
}

export interface GridPress {
  readonly key: string
  readonly shiftKey: boolean
  readonly ctrlKey: boolean
  readonly metaKey: boolean
  readonly altKey: boolean
}

/**
 * The block after a key, as in the grid of the ARIA Authoring Practices: arrows go by one cell, Home and End to
 * the ends of the row, with Control to the first and the last cell; with Shift the block grows to there; Control
 * and A choose everything. Undefined for a key that is not the grid's.
 */
export function blockAfterKey(block: GridBlock, press: GridPress, size: GridSize): GridBlock | undefined {
  if (press.altKey) return undefined
  const withControl = press.ctrlKey || press.metaKey
  const last = { row: size.rows - 1, column: size.columns - 1 }
  if (withControl && press.key.toLowerCase() === 'a') return { from: { row: 0, column: 0 }, to: last }
  const target = targetOf(press.key, withControl, block.to, last)
  if (!target) return undefined
  const to = { row: within(target.row, last.row), column: within(target.column, last.column) }
  return { from: press.shiftKey ? block.from : to, to }
}

function targetOf(key: string, withControl: boolean, { row, column }: CellAt, last: CellAt) {
  if (key === 'Home') return { row: withControl ? 0 : row, column: 0 }
  if (key === 'End') return { row: withControl ? last.row : row, column: last.column }
  if (withControl) return undefined
  if (key === 'ArrowUp') return { row: row - 1, column }
  if (key === 'ArrowDown') return { row: row + 1, column }
  if (key === 'ArrowLeft') return { row, column: column - 1 }
  if (key === 'ArrowRight') return { row, column: column + 1 }
  return undefined
}

function within(value: number, last: number): number {
  return Math.min(Math.max(value, 0), last)
}

export function isInBlock({ from, to }: GridBlock, { row, column }: CellAt): boolean {
  return (
    row >= Math.min(from.row, to.row) &&
    row <= Math.max(from.row, to.row) &&
    column >= Math.min(from.column, to.column) &&
    column <= Math.max(from.column, to.column)
  )
}

/** The cells of a block, row by row. */
export function rowsInBlock<Cell>(rows: readonly (readonly Cell[])[], block: GridBlock): Cell[][] {
  return rows.flatMap((cells, row) => {
    const chosen = cells.filter((_, column) => isInBlock(block, { row, column }))
    return chosen.length > 0 ? [chosen] : []
  })
}

/** The corner of a block that a pasted one is laid against. */
export function firstOfBlock({ from, to }: GridBlock): CellAt {
  return { row: Math.min(from.row, to.row), column: Math.min(from.column, to.column) }
}
