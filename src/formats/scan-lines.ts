import papa from 'papaparse'
import type { Separator } from './table-text'

/** A row of a text, with the line it stands in, from 1. */
export interface ScanLine {
  readonly line: number
  /** Undefined: it has a quotation mark that is never closed. */
  readonly cells: readonly string[] | undefined
  /** Characters of the text that are done with this line. */
  readonly done: number
}

/**
 * The rows of a text one by one, without those that are empty. A row is a line: a million of them are split by hand,
 * and only one with a quotation mark is taken apart by the library.
 */
export function* scanLines(text: string, separator: Separator): Generator<ScanLine, void> {
  const end = text.includes('\n') ? '\n' : '\r'
  const hasQuotes = text.includes('"')
  let line = 0
  for (let start = 0; start < text.length; ) {
    const found = text.indexOf(end, start)
    const stop = found < 0 ? text.length : found
    const row = text.slice(start, stop > start && text[stop - 1] === '\r' ? stop - 1 : stop)
    line += 1
    start = stop + 1
    if (row.trim() === '') continue
    const cells = hasQuotes ? cellsOf(row, separator) : row.split(separator)
    yield { line, cells, done: Math.min(start, text.length) }
  }
}

function cellsOf(row: string, separator: Separator): readonly string[] | undefined {
  if (!row.includes('"')) return row.split(separator)
  const { data, errors } = papa.parse<string[]>(row, { delimiter: separator })
  return errors.some(({ code }) => code === 'MissingQuotes') ? undefined : (data[0] ?? [])
}
