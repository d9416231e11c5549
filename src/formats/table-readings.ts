import { type ColumnMeaning, depthInMm, isDepth, isValue, type KeptValue, keptValue } from './column-meaning'
import { textFromCell } from './guarded-text'
import { readTableDay } from './table-day'
import { angleOfHead, firstRow, type TableMapping } from './table-mapping'
import { readTableNumber, type TableNumberRefusal } from './table-number'
import type { TableRows } from './table-text'

/** A reading of a table with the place it came from. */
export interface TableReading extends KeptValue {
  /** From 0, in the table as it stands. */
  readonly row: number
  readonly column: number
  readonly text: string
  readonly depthMm: number
  /** From 0 to below 180: with two contacts the other half is the same axis. */
  readonly axisDegrees: number
  readonly repeat?: number
  readonly bore?: string
  readonly survey?: string
  readonly date?: string
  readonly hoursRun?: number
}

export type CellRefusal =
  | TableNumberRefusal
  | 'not-an-angle'
  | 'not-whole'
  | 'thousands-or-decimals'
  | 'not-a-day'
  | 'day-order-open'
  | 'unit-open'
  | 'control-character'
  | 'no-depth'
  | 'no-axis'
  /** Another cell of its row that says where or of what it is was refused. */
  | 'row-refused'
  /** The row has more cells than there are heads: one may have been parted in two. */
  | 'too-many-cells'

/** A cell that holds something and was not taken. */
export interface RefusedCell<Why extends string = CellRefusal> {
  readonly row: number
  readonly column: number
  readonly text: string
  readonly why: Why
}

/** What a cell became. */
export type ReadCell =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'kept'; readonly kept: KeptValue }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'refused'; readonly why: CellRefusal }

export interface TableReadings {
  readonly readings: readonly TableReading[]
  readonly refused: readonly RefusedCell[]
  /** Rows that hold anything. */
  readonly rows: number
  /** Angles on both halves of the circle were read as the axes they lie on. */
  readonly isFolded: boolean
}

/** Rows between two reports of how far it is. */
const rowsPerStep = 1000

/**
 * The readings of a table, and every cell that holds something and is none, as a generator that yields how many rows
 * are done. Empty cells are no readings and no refusals.
 */
export function* readReadings(rows: TableRows, mapping: TableMapping): Generator<number, TableReadings> {
  const reader = rowReader(rows, mapping)
  const readings: TableReading[] = []
  const refused: RefusedCell[] = []
  let filled = 0
  let isFolded = false
  for (let row = firstRow(mapping.headRow); row < rows.length; row++) {
    const cells = rows[row] ?? []
    if (cells.some((text) => text.trim() !== '')) {
      filled += 1
      const read = reader(cells, row)
      for (const reading of read.readings) readings.push(reading)
      for (const cell of read.refused) refused.push(cell)
      isFolded ||= read.isFolded
    }
    if (row % rowsPerStep === 0) yield row
  }
  return { readings, refused, rows: filled, isFolded }
}

interface ReadRow {
  readonly readings: readonly TableReading[]
  readonly refused: readonly RefusedCell[]
  readonly isFolded: boolean
}

function rowReader(rows: TableRows, mapping: TableMapping) {
  const { columns, headRow, decimal } = mapping
  const heads = headRow === undefined ? undefined : rows[headRow]
  const width = heads ? heads.findLastIndex((text) => text.trim() !== '') + 1 : Number.POSITIVE_INFINITY
  const hasAxis = columns.includes('axis')
  const headAngles = hasAxis ? [] : columns.map((_, column) => angleOfHead(heads?.[column] ?? '', decimal))
  return (cells: readonly string[], row: number): ReadRow => {
    const refused: RefusedCell[] = []
    const read = columns.map((meaning, column) => {
      const cell = readCell(cells[column] ?? '', meaning, mapping)
      if (cell.kind === 'refused') refused.push({ row, column, text: cells[column] ?? '', why: cell.why })
      return cell
    })
    const isLong = cells.findLastIndex((text) => text.trim() !== '') >= width
    const about = aboutRow(read, columns)
    const readings: TableReading[] = []
    let isFolded = false
    for (const [column, cell] of read.entries()) {
      if (cell.kind !== 'kept') continue
      const text = cells[column] ?? ''
      const angle = hasAxis ? about.axis : headAngles[column]
      const why = isLong ? 'too-many-cells' : whyNoPlace(about, angle)
      if (why !== undefined || about.depthMm === undefined || angle === undefined) {
        refused.push({ row, column, text, why: why ?? 'row-refused' })
        continue
      }
      isFolded ||= axisOfAngle(angle) !== angle
      const { depthMm, names } = about
      readings.push({ row, column, text, depthMm, axisDegrees: axisOfAngle(angle), ...cell.kept, ...names })
    }
    return { readings, refused, isFolded }
  }
}

interface AboutRow {
  readonly depthMm: number | undefined
  readonly axis: number | undefined
  readonly isRefused: boolean
  readonly names: Pick<TableReading, 'repeat' | 'bore' | 'survey' | 'date' | 'hoursRun'>
}

/** Where and of what the readings of a row are. */
function aboutRow(read: readonly ReadCell[], columns: readonly ColumnMeaning[]): AboutRow {
  const at = (wanted: (meaning: ColumnMeaning) => boolean) => read[columns.findIndex(wanted)]
  const number = (meaning: ColumnMeaning) => {
    const cell = at((one) => one === meaning)
    return cell?.kind === 'number' ? cell.value : undefined
  }
  const text = (meaning: ColumnMeaning) => {
    const cell = at((one) => one === meaning)
    return cell?.kind === 'text' ? cell.text : undefined
  }
  const depth = at(isDepth)
  return {
    depthMm: depth?.kind === 'number' ? depth.value : undefined,
    axis: number('axis'),
    isRefused: read.some((cell, column) => cell.kind === 'refused' && !isValue(columns[column] ?? 'ignored')),
    names: present({
      repeat: number('repeat'),
      bore: text('bore'),
      survey: text('survey'),
      date: text('date'),
      hoursRun: number('hours'),
    }),
  }
}

/** Without the fields that are undefined. */
function present(names: { readonly [Key in keyof AboutRow['names']]: AboutRow['names'][Key] | undefined }) {
  return Object.fromEntries(
    Object.entries(names).filter(([, value]) => value !== undefined),
  ) as AboutRow['names']
}

function whyNoPlace({ isRefused, depthMm }: AboutRow, angle: number | undefined): CellRefusal | undefined {
  if (isRefused) return 'row-refused'
  if (depthMm === undefined) return 'no-depth'
  return angle === undefined ? 'no-axis' : undefined
}

/** The axis from 0 to below 180 that an angle lies on. */
export function axisOfAngle(angle: number): number {
  const turned = ((angle % 180) + 180) % 180
  // Half turns of binary decimals: 359.9 − 180 is not quite 179.9.
  return turned === angle ? angle : (Math.round(turned * 1e6) / 1e6) % 180
}

/** What one cell becomes in a column of a meaning. */
export function readCell(text: string, meaning: ColumnMeaning, mapping: TableMapping): ReadCell {
  const trimmed = text.trim()
  if (trimmed === '' || meaning === 'ignored') return { kind: 'nothing' }
  if (meaning === 'bore' || meaning === 'survey') return textCell(trimmed)
  if (meaning === 'date') {
    const day = readTableDay(trimmed, mapping.dayOrder)
    return day.ok ? { kind: 'text', text: day.day } : { kind: 'refused', why: day.why }
  }
  const plain = meaning === 'axis' ? trimmed.replace(/\s*(°|deg\.?|degrees?)$/i, '') : trimmed
  const number = readTableNumber(plain, mapping.decimal)
  if (!number.ok) return { kind: 'refused', why: number.why }
  return numberCell(number.value, trimmed, meaning)
}

function textCell(trimmed: string): ReadCell {
  const text = textFromCell(trimmed)
  return /\p{Cc}/u.test(text) ? { kind: 'refused', why: 'control-character' } : { kind: 'text', text }
}

function numberCell(value: number, text: string, meaning: ColumnMeaning): ReadCell {
  if (isValue(meaning)) {
    const kept = keptValue(value, meaning)
    return kept ? { kind: 'kept', kept } : { kind: 'refused', why: 'unit-open' }
  }
  if (isDepth(meaning)) {
    const mm = depthInMm(value, meaning)
    return mm === undefined ? { kind: 'refused', why: 'unit-open' } : { kind: 'number', value: mm }
  }
  if (meaning === 'axis' && Math.abs(value) > 360) return { kind: 'refused', why: 'not-an-angle' }
  if (meaning === 'repeat' && !(Number.isInteger(value) && value >= 0))
    return { kind: 'refused', why: 'not-whole' }
  // Thousands of hours are run, and a clock shows decimals of them: 4,200 can be either.
  if (meaning === 'hours' && /^\d{1,3}[.,]\d{3}$/.test(text))
    return { kind: 'refused', why: 'thousands-or-decimals' }
  return { kind: 'number', value }
}
