import papa from 'papaparse'

/** What stands between two cells of a row. */
export const separators = ['\t', ';', ','] as const
export type Separator = (typeof separators)[number]

/** Cells of text as they stand, row by row; rows may differ in length. */
export type TableRows = readonly (readonly string[])[]

export type ReadTable =
  | { readonly ok: true; readonly rows: TableRows; readonly separator: Separator | undefined }
  | { readonly ok: false; readonly why: 'empty' | 'too-large' | 'commas-only' }
  /** A cell that begins with a quotation mark has no second one. `row` counts from 0. */
  | { readonly ok: false; readonly why: 'quote-left-open'; readonly row: number }

/** Bounds on what a text can make us do: one that is pasted, and one that comes as a file and is read aside. */
export const mostOfTable = { characters: 4_000_000, cells: 200_000 } as const
export const mostOfTableFile = { characters: 20_000_000, cells: 2_000_000 } as const

/**
 * Reads what a spreadsheet copies or writes (tabs), and what it exports (semicolons or commas), into cells of
 * text; quoted cells may hold separators and line ends. Line ends at the end make no row. No cell is read as a
 * number here. Where commas alone could part cells and could be decimal marks, neither is guessed.
 */
export function readTable(
  text: string,
  given?: Separator,
  most: { readonly characters: number; readonly cells: number } = mostOfTable,
): ReadTable {
  const whole = text.replace(/^\uFEFF/, '').replace(/[\r\n]+$/, '')
  if (whole.trim() === '') return { ok: false, why: 'empty' }
  if (whole.length > most.characters) return { ok: false, why: 'too-large' }
  const separator = given ?? separatorOf(whole)
  if (separator === 'unclear') return { ok: false, why: 'commas-only' }
  // Without a separator a row is one cell: none of them can hold this sign.
  const { data, errors } = papa.parse<string[]>(whole, {
    delimiter: separator ?? '\u001F',
    skipEmptyLines: false,
  })
  const open = errors.find(({ code }) => code === 'MissingQuotes')
  if (open) return { ok: false, why: 'quote-left-open', row: open.row ?? data.length - 1 }
  const cells = data.reduce((sum, row) => sum + row.length, 0)
  return cells > most.cells ? { ok: false, why: 'too-large' } : { ok: true, rows: data, separator }
}

/**
 * Tabs part cells wherever there are any, then semicolons. A comma parts cells where it cannot be a decimal mark:
 * beside numbers with a decimal point, before a space, a sign, a letter or a quotation mark, or at an end of a
 * line; one between two digits is a decimal mark, and several in one number are unclear.
 */
export function separatorOf(text: string): Separator | 'unclear' | undefined {
  // A quotation mark within a cell is an inch mark.
  const unquoted = text.replace(/(?<=^|[\t;,\r\n])"(?:[^"]|"")*"/g, 'q')
  if (unquoted.includes('\t')) return '\t'
  if (unquoted.includes(';')) return ';'
  if (!unquoted.includes(',')) return undefined
  if (/\d\.\d/.test(unquoted)) return ','
  if (/,(?!\d)|(?<!\d),/.test(unquoted)) return ','
  return /\d,\d+,/.test(unquoted) ? 'unclear' : undefined
}
