import { type ClipboardEvent, type FocusEvent, type KeyboardEvent, type RefObject, useState } from 'react'
import type { Place } from '../../core/findings'
import type { PlannedStation } from '../../job/selectors'
import {
  blockAfterKey,
  type CellAt,
  firstOfBlock,
  type GridBlock,
  isInBlock,
  rowsInBlock,
} from './grid-block'
import { stationsText } from './grid-clipboard'
import type { OnBench } from './use-job'

interface GridBlockOf {
  readonly table: RefObject<HTMLTableElement | null>
  readonly rows: readonly (readonly PlannedStation[])[]
  readonly bench: OnBench
  readonly clear: (places: readonly Place[]) => void
  readonly paste: ((text: string, from: CellAt) => void) | undefined
}

/** The cells that are chosen in the grid of readings, and what keys and clipboard do with them. */
export function useGridBlock({ table, rows, bench, clear, paste }: GridBlockOf) {
  const [block, setBlock] = useState<GridBlock>()
  const size = { rows: rows.length, columns: rows[0]?.length ?? 0 }
  const chosen = () => (block ? rowsInBlock(rows, block) : [])
  const focusOn = ({ row, column }: CellAt) =>
    table.current?.querySelector<HTMLElement>(`[data-cell="${row} ${column}"]`)?.focus()
  const onKeyDown = (event: KeyboardEvent) => {
    if (!block || !isCell(event.target)) return
    const next = blockAfterKey(block, event, size)
    if (next) {
      event.preventDefault()
      setBlock(next)
      focusOn(next.to)
    } else if ((event.key === 'Delete' || event.key === 'Backspace') && !event.ctrlKey && !event.metaKey) {
      event.preventDefault()
      clear(chosen().flat())
    } else if (event.key === 'Escape') setBlock({ from: block.to, to: block.to })
  }
  const write = (event: ClipboardEvent) => {
    if (!block || !isCell(event.target)) return false
    event.preventDefault()
    event.clipboardData.setData('text/plain', stationsText(chosen(), bench.setUp, bench.gauge))
    return true
  }
  return {
    block,
    isChosen: (at: CellAt) => block !== undefined && isInBlock(block, at),
    /** A cell got the focus: alone, unless it is an end of what is chosen already. */
    onCellFocus: (at: CellAt) =>
      setBlock((before) => (before && sameCell(before.to, at) ? before : { from: at, to: at })),
    /** A press with Shift held down reaches from the cell that has the focus. */
    reachTo: (at: CellAt) => setBlock((before) => ({ from: before?.from ?? at, to: at })),
    handlers: {
      onKeyDown,
      onCopy: write,
      onCut: (event: ClipboardEvent) => {
        if (write(event)) clear(chosen().flat())
      },
      onPaste: (event: ClipboardEvent) => {
        if (!block || !paste || !isCell(event.target)) return
        event.preventDefault()
        paste(event.clipboardData.getData('text/plain'), firstOfBlock(block))
      },
      onBlur: (event: FocusEvent) => {
        if (!event.currentTarget.contains(event.relatedTarget)) setBlock(undefined)
      },
    },
  }
}

function isCell(target: EventTarget): boolean {
  return target instanceof HTMLElement && target.dataset.cell !== undefined
}

function sameCell(one: CellAt, other: CellAt): boolean {
  return one.row === other.row && one.column === other.column
}
