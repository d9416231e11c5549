import type { TableRows } from '../../formats/table-text'
import { readNumber } from '../../words/read-number'

/** The stations of a bore that a pasted block may fill. */
export interface SheetOfBore {
  readonly boreId: string
  readonly surveyId: string
  readonly name: string
  /** In order of depth and of angle, as in the grid. */
  readonly levelsMm: readonly number[]
  readonly axesDegrees: readonly number[]
}

/** What stands at the edges of a pasted block: so many rows and columns of heads, and what each head names. */
export interface PastedHeads {
  readonly rows: number
  readonly columns: number
  /** By column of the text, where a row of heads names axes. */
  readonly axes?: readonly (number | string)[]
  /** By column of the text: the name of a bore, where a row of heads names bores. */
  readonly bores?: readonly (SheetOfBore | string)[]
  /** By row of the text, where the first column names depths. */
  readonly depths?: readonly (number | string)[]
  /** By row of the text, where the second column names axes. */
  readonly rowAxes?: readonly (number | string)[]
}

export interface PasteSheets {
  readonly sheets: readonly SheetOfBore[]
  /** The sheet that is pasted onto. */
  readonly here: SheetOfBore
  /** Whether a text could be a reading here: what could be one is no head without need. */
  readonly couldBeReading: (text: string) => boolean
}

/** A head as it was read: what it names, or its own text where it names nothing here. */
interface Head<Named> {
  readonly named: Named | string
  readonly text: string
  /** It says what it is: by a degree sign, by mm, by the word bore. */
  readonly isMarked: boolean
}

const noHeads: PastedHeads = { rows: 0, columns: 0 }

/**
 * Finds the heads of a pasted block: depths down the first column (axes down the second), axes or bores across the
 * first row, or both, one above the other. Heads are taken for heads where they say so (45°, 8 mm, bore 2), where
 * they cannot be readings, or where the corner between them holds no number and every one names a level or an axis
 * of the sheet. Otherwise the block is all readings.
 */
export function headsOf(rows: TableRows, paste: PasteSheets): PastedHeads {
  for (const columns of [2, 1, 0]) {
    for (const headRows of [2, 1, 0]) {
      const heads = tried(rows, headRows, columns, paste)
      if (heads) return heads
    }
  }
  return noHeads
}

function tried(
  rows: TableRows,
  headRows: number,
  columns: number,
  paste: PasteSheets,
): PastedHeads | undefined {
  if (headRows + columns === 0) return noHeads
  const width = Math.max(0, ...rows.map((row) => row.length))
  if (rows.length <= headRows || width <= columns) return undefined
  const across = acrossHeads(rows.slice(0, headRows), columns, paste)
  const down = downHeads(rows.slice(headRows), columns, paste)
  if (!across || !down) return undefined
  const corner = rows.slice(0, headRows).flatMap((row) => row.slice(0, columns))
  const hasCorner = corner.length > 0 && corner.every((text) => !readNumber(text).ok)
  const isSure = (heads: readonly Head<unknown>[], known: (named: unknown) => boolean) =>
    heads.some(({ isMarked }) => isMarked) ||
    (heads.every(({ named }) => known(named)) &&
      (hasCorner || heads.some(({ text }) => !paste.couldBeReading(text)))) ||
    heads.every(({ text }) => !paste.couldBeReading(text))
  const isKnown = (named: unknown) =>
    typeof named !== 'string' &&
    (typeof named !== 'number' ||
      paste.sheets.some((s) => s.levelsMm.includes(named) || s.axesDegrees.includes(named)))
  const groups = [...across.groups, ...down.groups]
  if (!groups.every((heads) => isSure(heads, isKnown))) return undefined
  return { rows: headRows, columns, ...across.heads, ...down.heads }
}

function acrossHeads(rows: TableRows, columns: number, paste: PasteSheets) {
  const readAs = rows.map((row) => {
    const cells = row.slice(columns)
    return { axes: named(cells, axisOf), bores: named(filled(cells), (text) => boreOf(text, paste.sheets)) }
  })
  const [first, second] = readAs
  const pad = <T>(heads: readonly Head<T>[]) => [
    ...Array.from({ length: columns }, () => ''),
    ...heads.map(({ named }) => named),
  ]
  if (!first) return { heads: {}, groups: [] }
  if (!second) {
    const { axes, bores } = first
    // Bores called 1 to 4 are no axes at 1 to 4 degrees, unless the sheet has such.
    const isAxes = axes?.some((head) => typeof head.named === 'number' && hasAxis(paste, head.named)) === true
    if (bores && !isAxes) return { heads: { bores: pad(bores) }, groups: [present(bores)] }
    if (axes) return { heads: { axes: pad(axes) }, groups: [present(axes)] }
    // Words over the columns of a list that has its depths, or its depths and axes, in front.
    const isWords = rows[0]?.every((text) => text.trim() === '' || /^\p{L}/u.test(text.trim())) === true
    return columns > 0 && isWords ? { heads: {}, groups: [] } : undefined
  }
  const ways = [
    { bores: first.bores, axes: second.axes },
    { bores: second.bores, axes: first.axes },
  ]
  const way = ways.find(({ bores, axes }) => bores && axes)
  if (!way?.bores || !way.axes) return undefined
  return {
    heads: { bores: pad(way.bores), axes: pad(way.axes) },
    groups: [present(way.bores), present(way.axes)],
  }
}

function downHeads(rows: TableRows, columns: number, paste: PasteSheets) {
  if (columns === 0) return { heads: {}, groups: [] }
  const depths = named(columns === 2 ? filled(columnOf(rows, 0)) : columnOf(rows, 0), depthOf)
  if (!depths) return undefined
  const depthsNamed = depths.map((head) => head.named)
  if (columns === 1) return { heads: { depths: depthsNamed }, groups: [present(depths)] }
  const axes = named(columnOf(rows, 1), axisOf)
  if (!axes?.every(({ named }) => named === '' || (typeof named === 'number' && hasAxis(paste, named)))) {
    return undefined
  }
  const rowAxes = axes.map((head) => head.named)
  return { heads: { depths: depthsNamed, rowAxes }, groups: [present(depths), present(axes)] }
}

function columnOf(rows: TableRows, column: number): readonly string[] {
  return rows.map((row) => row[column] ?? '')
}

/** Blank cells take the text before them: a spreadsheet copies a joined cell so. */
function filled(cells: readonly string[]): readonly string[] {
  let before = ''
  return cells.map((text) => {
    before = text.trim() === '' ? before : text
    return before
  })
}

/**
 * The heads that cells hold; undefined where none names anything or one is a number that names nothing. Words that
 * name nothing (a column of means) stay as they are.
 */
function named<Named>(
  cells: readonly string[],
  read: (text: string) => { named: Named; isMarked: boolean } | undefined,
): readonly Head<Named>[] | undefined {
  const heads: Head<Named>[] = []
  for (const cell of cells) {
    const text = cell.trim()
    const found = text === '' ? undefined : read(text)
    if (!found && text !== '' && !/^\p{L}/u.test(text)) return undefined
    heads.push(found ? { ...found, text } : { named: text, text, isMarked: false })
  }
  return heads.some(({ named }) => typeof named !== 'string') ? heads : undefined
}

function present<Named>(heads: readonly Head<Named>[]): readonly Head<Named>[] {
  return heads.filter(({ named }) => typeof named !== 'string')
}

function hasAxis({ sheets }: PasteSheets, axis: number): boolean {
  return sheets.some(({ axesDegrees }) => axesDegrees.includes(axis))
}

function axisOf(text: string) {
  const [, figure, mark] = /^([\d.,]+)\s*(°|deg\.?|degrees?)?$/i.exec(text) ?? []
  return headNumber(figure, mark)
}

function depthOf(text: string) {
  const [, figure, mark] = /^([\d.,]+)\s*(mm)?$/i.exec(text) ?? []
  return headNumber(figure, mark)
}

function headNumber(figure: string | undefined, mark: string | undefined) {
  const read = readNumber(figure ?? '')
  return read.ok ? { named: read.value, isMarked: mark !== undefined } : undefined
}

function boreOf(text: string, sheets: readonly SheetOfBore[]) {
  const [, prefix, rest = text] = /^(bore|cylinder|cyl\.?|no\.?|#)\s*(.+)$/i.exec(text) ?? []
  const sheet = [text, rest].flatMap((name) => sheets.filter((one) => sameName(one.name, name)))[0]
  const isMarked = prefix !== undefined || /\p{L}/u.test(text)
  return sheet && (sheets.length > 1 || isMarked) ? { named: sheet, isMarked } : undefined
}

function sameName(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase()
}
