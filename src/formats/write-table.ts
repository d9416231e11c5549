import papa from 'papaparse'
import { textForCell } from './guarded-text'
import { type DecimalMark, writeTableNumber } from './table-number'
import type { Separator } from './table-text'

/** How a table is written for the spreadsheet that is to open it. */
export interface TableStyle {
  readonly decimal: DecimalMark
  readonly separator: Separator
}

/** What spreadsheets expect: commas beside decimal points, semicolons beside decimal commas. */
export const tableStyles: Readonly<Record<DecimalMark, TableStyle>> = {
  point: { decimal: 'point', separator: ',' },
  comma: { decimal: 'comma', separator: ';' },
}

export type TableCell = number | string | undefined

/**
 * A table as the text of a file, after RFC 4180: line ends of two characters, cells quoted where they must be. A byte
 * order mark in front, without which some spreadsheets take UTF-8 for an older encoding. No text is taken for a
 * formula; numbers keep their sign.
 */
export function writeTable(
  heads: readonly string[],
  rows: readonly (readonly TableCell[])[],
  { decimal, separator }: TableStyle,
): string {
  const written = (cell: TableCell) => {
    if (cell === undefined) return ''
    return typeof cell === 'number' ? writeTableNumber(cell, decimal) : textForCell(cell)
  }
  const fields = [[...heads], ...rows.map((row) => row.map(written))]
  return `\uFEFF${papa.unparse(fields, { delimiter: separator, newline: '\r\n', quotes: holdsSeparator })}\r\n`
}

/** A text that holds any separator is quoted, lest that be taken for the one of the table. */
function holdsSeparator(text: unknown): boolean {
  return typeof text === 'string' && /[\t;,]/.test(text) && !/^-?\d+,\d+$/.test(text)
}
