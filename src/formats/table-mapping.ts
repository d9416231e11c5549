import {
  type ColumnMeaning,
  isDepth,
  isValue,
  meaningOfHead,
  unitIn,
  type ValueMeaning,
  valueMeaning,
} from './column-meaning'
import { type DayOrder, dayOrderOf } from './table-day'
import { type DecimalMark, decimalMarkOf } from './table-number'
import type { TableRows } from './table-text'

/** How a table of readings is read. What is undefined is open: it could be either, and somebody must say. */
export interface TableMapping {
  /** The row that names the columns, from 0. Rows above it are not read. Absent: none does. */
  readonly headRow?: number | undefined
  readonly columns: readonly ColumnMeaning[]
  readonly decimal?: DecimalMark | undefined
  readonly dayOrder?: DayOrder | undefined
}

/** What somebody chose in the place of what was found. Columns go with the row of heads they were chosen under. */
export interface MappingChoices {
  readonly headRow?: number | 'none' | undefined
  readonly columns?: readonly ColumnMeaning[] | undefined
  readonly decimal?: DecimalMark | undefined
  readonly dayOrder?: DayOrder | undefined
}

export const openQuestions = [
  'no-readings',
  'no-depth',
  'several-depths',
  'no-axis',
  'several-of-one-kind',
  'depth-unit',
  'value-unit',
  'decimal-mark',
  'day-order',
] as const
/** What must be said before a table can be taken. */
export type OpenQuestion = (typeof openQuestions)[number]

/** Heads are looked for in so many rows. */
const headsWithin = 20
/** More columns than this no survey has. */
export const mostColumns = 400

/** The way to read a table: what was chosen, and beside it what its heads and its cells say. */
export function mappingOf(rows: TableRows, choices: MappingChoices = {}): TableMapping {
  const headRow = choices.headRow === 'none' ? undefined : (choices.headRow ?? headRowOf(rows))
  const columns = choices.columns ?? columnsOf(rows, headRow)
  const numbers = columns.flatMap((meaning, column) => (isNumeric(meaning) ? [column] : []))
  const dates = columns.flatMap((meaning, column) => (meaning === 'date' ? [column] : []))
  return {
    headRow,
    columns,
    decimal: choices.decimal ?? decimalMarkOf(cellsOf(rows, headRow, numbers)),
    dayOrder: choices.dayOrder ?? dayOrderOf(cellsOf(rows, headRow, dates)),
  }
}

function isNumeric(meaning: ColumnMeaning): boolean {
  return isDepth(meaning) || isValue(meaning) || ['axis', 'repeat', 'hours'].includes(meaning)
}

function* cellsOf(rows: TableRows, headRow: number | undefined, columns: readonly number[]) {
  for (let row = firstRow(headRow); row < rows.length; row++) {
    for (const column of columns) yield rows[row]?.[column] ?? ''
  }
}

/** The first row that holds readings. */
export function firstRow(headRow: number | undefined): number {
  return headRow === undefined ? 0 : headRow + 1
}

/** The first row that names two columns or more, or a depth and axes; undefined where none does. */
function headRowOf(rows: TableRows): number | undefined {
  const found = rows.slice(0, headsWithin).findIndex((row) => {
    const known = row.filter((text) => (meaningOfHead(text) ?? 'ignored') !== 'ignored').length
    return known >= 2 || isGridHead(row)
  })
  return found < 0 ? undefined : found
}

/** A corner that is no number, and angles beside it. */
function isGridHead([corner = '', ...heads]: readonly string[]): boolean {
  const named = heads.filter((text) => text.trim() !== '')
  return !/^[\s\d.,+-]+$/.test(`${corner} 0`.replace(/^ 0$/, 'x')) && named.length > 0 && named.every(isAngle)
}

function isAngle(text: string): boolean {
  return angleOfHead(text, text.includes(',') ? 'comma' : 'point') !== undefined
}

/** The angle that a head names: 45, 45°, 22.5 deg, 45° (mm); undefined where it names none from −360 to 360. */
export function angleOfHead(head: string, decimal: DecimalMark | undefined): number | undefined {
  const [, figure = ''] =
    /^\s*([-\u2212]?\d+(?:[.,]\d+)?)\s*(?:°|deg\.?|degrees?)?(?:[\s,(]+[^\d]*\)?)?$/i.exec(head) ?? []
  if (figure === '' || (figure.includes(',') && decimal === 'point')) return undefined
  const angle = Number(figure.replace('\u2212', '-').replace(',', '.'))
  return Math.abs(angle) <= 360 ? angle : undefined
}

function columnsOf(rows: TableRows, headRow: number | undefined): readonly ColumnMeaning[] {
  const width = Math.min(
    mostColumns,
    rows.reduce((widest, row) => Math.max(widest, row.length), 0),
  )
  const heads = headRow === undefined ? [] : (rows[headRow] ?? [])
  const isGrid = isGridHead(heads)
  const above = headRow === undefined ? [] : rows.slice(0, headRow + 1).flat()
  const columns = Array.from({ length: width }, (_, column): ColumnMeaning => {
    const head = heads[column] ?? ''
    if (!isGrid) return meaningOfHead(head) ?? 'ignored'
    if (column === 0) return cornerMeaning(head)
    return isAngle(head) ? gridValue([head, ...above]) : 'ignored'
  })
  return columns.map((meaning) => (meaning === 'depth-open' && isMetric(columns) ? 'depth-mm' : meaning))
}

function cornerMeaning(corner: string): ColumnMeaning {
  const meaning = meaningOfHead(corner)
  return meaning !== undefined && isDepth(meaning) ? meaning : 'depth-open'
}

/** The kind and unit of a table's readings, from the first text above them that names one and is not about depth. */
function gridValue(texts: readonly string[]): ValueMeaning {
  for (const text of texts) {
    const meaning = meaningOfHead(text.replace(/^[\s\d.,°-]+/, ''))
    if (meaning !== undefined && isValue(meaning) && meaning !== 'value-open') return meaning
    const unit = /depth|level/i.test(text) ? undefined : unitIn(text)
    if (unit !== undefined) return unit === 'um' ? 'deviation-um' : valueMeaning('size', unit)
  }
  return 'value-open'
}

/** Where readings are metric, depths without a unit are mm. */
function isMetric(columns: readonly ColumnMeaning[]): boolean {
  const values = columns.filter(isValue)
  return values.length > 0 && values.every((meaning) => /-(mm|um)$/.test(meaning))
}

/** What is still to be said, in the order of `openQuestions`. */
export function openIn(rows: TableRows, mapping: TableMapping): readonly OpenQuestion[] {
  const { columns } = mapping
  const count = (wanted: (meaning: ColumnMeaning) => boolean) => columns.filter(wanted).length
  const heads = mapping.headRow === undefined ? [] : (rows[mapping.headRow] ?? [])
  const isEveryHeadAngle = columns.every(
    (meaning, column) => !isValue(meaning) || angleOfHead(heads[column] ?? '', mapping.decimal) !== undefined,
  )
  const axes = count((meaning) => meaning === 'axis')
  const isTwice = (['axis', 'repeat', 'bore', 'survey', 'date', 'hours'] as const).some(
    (one) => count((meaning) => meaning === one) > 1,
  )
  const open: Record<OpenQuestion, boolean> = {
    'no-readings': count(isValue) === 0,
    'no-depth': count(isDepth) === 0,
    'several-depths': count(isDepth) > 1,
    'no-axis': axes === 0 && count(isValue) > 0 && !isEveryHeadAngle,
    'several-of-one-kind': isTwice,
    'depth-unit': columns.includes('depth-open'),
    'value-unit': columns.includes('value-open'),
    'decimal-mark': mapping.decimal === undefined,
    'day-order': mapping.dayOrder === undefined && hasOpenDay(rows, mapping),
  }
  return openQuestions.filter((question) => open[question])
}

function hasOpenDay(rows: TableRows, { columns, headRow }: TableMapping): boolean {
  const column = columns.indexOf('date')
  if (column < 0) return false
  return rows
    .slice(firstRow(headRow))
    .some((row) => /^\s*\d{1,2}[/-]\d{1,2}[/-]\d{4}\s*$/.test(row[column] ?? ''))
}
