import { jobStore } from '../../job/job-store'
import { words } from '../../words/words'
import type { CellAt } from './grid-block'
import { emptyReport, type RefusedCell, showPasted } from './paste-report'
import type { Refusal } from './TypedField'

/** What reads pasted blocks is loaded with the first of them. */
const loaded = () => import('./paste-readings')

/** Takes a block of text laid against a cell of the grid; what comes of it is reported beneath. */
export async function pasteBlock(text: string, from: CellAt): Promise<void> {
  const reader = await loaded().catch(() => undefined)
  if (reader) reader.pasteReadings(text, from)
  else showPasted({ ...emptyReport(jobStore.getState().job.id), unreadable: words.paste.notLoaded, text })
}

/** Takes a refused cell that was mended; says why it is refused still. */
export async function mendPasted(cell: RefusedCell, typed: string, isAdded: boolean): Promise<Refusal> {
  const reader = await loaded().catch(() => undefined)
  return reader ? reader.mendRefused(cell, typed, isAdded) : words.paste.notLoaded
}
