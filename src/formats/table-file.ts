import { type TableEncoding, tableText } from './table-bytes'
import { type MappingChoices, mappingOf, type OpenQuestion, openIn, type TableMapping } from './table-mapping'
import { type ReadCell, readCell, readReadings, type TableReadings } from './table-readings'
import { mostOfTableFile, type ReadTable, readTable, type Separator } from './table-text'

export interface TableChoices extends MappingChoices {
  readonly separator?: Separator | undefined
}

export type TableFile =
  | ({ readonly ok: true } & ReadTableFile)
  | {
      readonly ok: false
      readonly why: 'no-text' | Extract<ReadTable, { ok: false }>['why']
      readonly row?: number
    }

export interface ReadTableFile {
  readonly encoding: TableEncoding
  readonly separator: Separator | undefined
  readonly mapping: TableMapping
  /** What must be said before anything of it can be taken. */
  readonly open: readonly OpenQuestion[]
  /** Rows in all, heads and empty ones too. */
  readonly rowCount: number
  /** The texts of the row of heads; none without one. */
  readonly heads: readonly string[]
  readonly preview: readonly PreviewRow[]
  readonly content: TableReadings
}

/** A row as it stands, and what each of its cells becomes; a row of heads or above has only texts. */
export interface PreviewRow {
  /** From 0. */
  readonly row: number
  readonly texts: readonly string[]
  readonly cells?: readonly ReadCell[]
}

/** So many rows are shown. */
const previewRows = 12

/**
 * Reads a file as a table of readings, by what was chosen and else by what its heads say, as a generator that yields
 * how many rows are done and of how many.
 */
export function* readTableFile(
  bytes: Uint8Array,
  choices: TableChoices = {},
): Generator<{ readonly done: number; readonly all: number }, TableFile> {
  const decoded = tableText(bytes)
  if (!decoded.ok) return decoded
  const table = readTable(decoded.text, choices.separator, mostOfTableFile)
  if (!table.ok) return table
  const { rows, separator } = table
  const mapping = mappingOf(rows, choices)
  const reading = readReadings(rows, mapping)
  let step = reading.next()
  for (; !step.done; step = reading.next()) yield { done: step.value, all: rows.length }
  return {
    ok: true,
    encoding: decoded.encoding,
    separator,
    mapping,
    open: openIn(rows, mapping),
    rowCount: rows.length,
    heads: mapping.headRow === undefined ? [] : (rows[mapping.headRow] ?? []),
    preview: rows.slice(0, previewRows).map((texts, row) => previewRow(texts, row, mapping)),
    content: step.value,
  }
}

function previewRow(texts: readonly string[], row: number, mapping: TableMapping): PreviewRow {
  if (mapping.headRow !== undefined && row <= mapping.headRow) return { row, texts }
  return {
    row,
    texts,
    cells: mapping.columns.map((meaning, column) => readCell(texts[column] ?? '', meaning, mapping)),
  }
}

/** All steps at once, for those who have nothing else to do meanwhile. */
export function readWholeTableFile(bytes: Uint8Array, choices: TableChoices = {}): TableFile {
  const reading = readTableFile(bytes, choices)
  for (let step = reading.next(); ; step = reading.next()) if (step.done) return step.value
}
