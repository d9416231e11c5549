import { words } from './words'

/** The letters that spreadsheets name a column by: A for 0, Z for 25, AA for 26. */
export function columnLetters(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26))
  return column < 26 ? letter : `${columnLetters(Math.floor(column / 26) - 1)}${letter}`
}

/** A column by its letters and by what stands at its head. */
export function columnName(column: number, heads: readonly string[]): string {
  return words.table.headOf(columnLetters(column), (heads[column] ?? '').trim())
}

interface Cell {
  /** From 0. */
  readonly row: number
  readonly column: number
}

/** Where a cell stands, as a spreadsheet counts: row 7, column C (size_mm). */
export function cellPlace({ row, column }: Cell, heads: readonly string[]): string {
  return words.table.place(String(row + 1), columnName(column, heads))
}

export type RefusalName = keyof typeof words.table.refused

/** What a cell holds and why it was refused. */
export function refusalText({ text, why }: { readonly text: string; readonly why: RefusalName }): string {
  return `${words.table.cell(text.trim())}: ${words.table.refused[why]}`
}

/** Refused cells as a block that a spreadsheet takes: row, column, cell, why. */
export function refusedBlock(
  cells: readonly (Cell & { readonly text: string; readonly why: RefusalName })[],
  heads: readonly string[],
): string {
  const plain = (text: string) => text.replace(/[\t\r\n]+/g, ' ')
  const rows = cells.map(({ row, column, text, why }) =>
    [String(row + 1), columnName(column, heads), text, words.table.refused[why]].map(plain).join('\t'),
  )
  return [words.table.report.heads.join('\t'), ...rows].join('\n')
}
