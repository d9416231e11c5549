import type { Place } from '../../core/findings'
import type { TableRows } from '../../formats/table-text'
import type { CellAt } from './grid-block'
import { headsOf, type PastedHeads, type PasteSheets, type SheetOfBore } from './pasted-heads'

/** A station of one of the bores. */
export interface PasteTarget {
  readonly boreId: string
  readonly surveyId: string
  readonly boreName: string
  readonly place: Place
}

/** Why a cell has no station to go to; `text` is the head that names none. */
export interface NoStation {
  readonly code: 'no-level' | 'no-axis' | 'no-bore' | 'past-the-grid'
  readonly text: string
}

/** A cell of a pasted block that holds something, and where that goes. Counted from 0 in the text itself. */
export interface PastedCell extends CellAt {
  readonly text: string
  readonly to: PasteTarget | NoStation
}

export interface PastedBlock {
  readonly heads: PastedHeads
  readonly cells: readonly PastedCell[]
}

export interface PasteOnto extends PasteSheets {
  /** The chosen cell of the grid. */
  readonly from: CellAt
}

/**
 * What a pasted block means: which cell goes to which station. Without heads it is laid against the chosen cell.
 * With a column of depths or a row of axes those that the sheet has are found by their numbers, and the rest is
 * counted from the chosen cell; a row of bores sends its columns to these bores, at their latest surveys, on the
 * axis of the chosen cell where no other is named. Empty cells and lone dashes leave their station as it is.
 */
export function pastedBlock(rows: TableRows, onto: PasteOnto): PastedBlock {
  const heads = headsOf(rows, onto)
  const cells = rows.slice(heads.rows).flatMap((row, below) =>
    row.slice(heads.columns).flatMap((cell, beside): PastedCell[] => {
      const text = cell.trim()
      if (text === '' || /^[-\u2012-\u2015\u2212]$/.test(text)) return []
      const at = { row: below + heads.rows, column: beside + heads.columns }
      return [{ ...at, text, to: targetOf(heads, at, onto) }]
    }),
  )
  return { heads, cells }
}

export function hasStation(to: PastedCell['to']): to is PasteTarget {
  return 'place' in to
}

function targetOf(heads: PastedHeads, { row, column }: CellAt, onto: PasteOnto): PasteTarget | NoStation {
  const bore = heads.bores ? (heads.bores[column] ?? '') : onto.here
  if (typeof bore === 'string') return { code: 'no-bore', text: bore }
  const below = onto.from.row + row - heads.rows
  const depthMm = named(heads.depths?.[row - heads.rows], bore.levelsMm, below)
  if (typeof depthMm !== 'number')
    return { code: depthMm.past ? 'past-the-grid' : 'no-level', text: depthMm.text }
  const axisHead = heads.rowAxes?.[row - heads.rows] ?? heads.axes?.[column]
  const beside = heads.bores ? onto.from.column : onto.from.column + column - heads.columns
  const axisDegrees = named(axisHead, bore.axesDegrees, beside)
  if (typeof axisDegrees !== 'number') {
    return { code: axisDegrees.past ? 'past-the-grid' : 'no-axis', text: axisDegrees.text }
  }
  return targetIn(bore, { depthMm, axisDegrees })
}

function targetIn({ boreId, surveyId, name }: SheetOfBore, place: Place): PasteTarget {
  return { boreId, surveyId, boreName: name, place }
}

/** The value that a head names, or that stands so far along where there are no heads. */
function named(
  head: number | string | undefined,
  values: readonly number[],
  index: number,
): number | { readonly text: string; readonly past: boolean } {
  if (head === undefined) return values[index] ?? { text: '', past: true }
  const found = typeof head === 'number' ? values.find((value) => Math.abs(value - head) < 1e-9) : undefined
  return found ?? { text: `${head}`, past: false }
}
