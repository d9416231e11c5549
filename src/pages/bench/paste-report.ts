import { createStore } from 'zustand/vanilla'
import { newId } from '../../job/new-id'
import type { PasteTarget } from './pasted-block'

/** A station that a pasted block filled. */
export interface StationTaken {
  readonly key: string
  readonly where: string
  /** How many readings stood there before. */
  readonly replaces: number
}

/** A cell that was not taken, with its text as it was pasted or mended since. */
export interface RefusedCell {
  readonly key: string
  readonly where: string
  readonly text: string
  readonly why: string
  /** Absent where it has no station to go to. */
  readonly to?: PasteTarget
}

/** What came of the block that was pasted last. */
export interface PasteReport {
  readonly id: string
  readonly jobId: string
  readonly taken: readonly (StationTaken & { readonly text: string })[]
  /** How many readings were taken in all. */
  readonly readings: number
  readonly refused: readonly RefusedCell[]
  /** How the block was read: what its heads named. */
  readonly heads?: readonly ('depths' | 'axes' | 'bores')[]
  /** Why the text as a whole could not be read, with the text. */
  readonly unreadable?: string
  readonly text?: string
}

/** The report of this tab; it stays until it is closed or the next block is pasted. */
export const pasteReport = createStore<{ readonly report: PasteReport | undefined }>(() => ({
  report: undefined,
}))

export function emptyReport(jobId: string): PasteReport {
  return { id: newId(), jobId, taken: [], readings: 0, refused: [] }
}

export function showPasted(report: PasteReport | undefined): void {
  pasteReport.setState({ report })
}

/** A refused cell was mended and taken. */
export function dropRefused(key: string): void {
  const { report } = pasteReport.getState()
  if (!report) return
  showPasted({ ...report, refused: report.refused.filter((cell) => cell.key !== key) })
}
