import { useState } from 'react'
import { useStore } from 'zustand'
import type { RadialScan } from '../core/scan/radial-scan'
import type { ScanChoices } from '../formats/scan-table'
import { jobStore } from '../job/job-store'
import { newId } from '../job/new-id'
import { newJob } from '../job/new-job'
import { addScan } from '../job/scan-commands'
import type { Job } from '../job/schema'
import { type SaidOfScan, ScanImport } from '../pages/import/ScanImport'
import { lookAtScan } from '../session/scan-view'
import { showPart } from '../session/session'
import { ShelfError } from '../storage/shelf-error'
import { problemText } from '../words/problems'
import { scanTableWords } from '../words/scan-table-words'
import { words } from '../words/words'
import { useChosenBore } from './BoreTabs'
import { changeOver, desk, layOut, say } from './desk'
import { closeTable, showTable, type TableToImport } from './questions'
import { keepScan } from './scans-here'
import { useScanTable } from './use-scan-table'

/** A file of radii, looked at and taken: into the bore on the bench, or as a new job. */
export function ImportScan({ table }: { readonly table: TableToImport }) {
  const { name, bytes } = table
  const [choices, setChoices] = useState<ScanChoices>({})
  const { state, stop, again } = useScanTable(bytes, choices)
  const bore = useChosenBore()
  const hasJob = useStore(desk, ({ shows, behindShelf }) => shows === 'bench' || behindShelf === 'bench')
  const inHand = hasJob ? bore : undefined
  return (
    <ScanImport
      name={name.replace(/\.\w+$/, '')}
      state={state}
      choices={choices}
      boreName={inHand?.name}
      onChoose={setChoices}
      onStop={stop}
      onAgain={again}
      onAsReadings={() => showTable({ ...table, holds: 'readings' })}
      onTake={async (scan, said) => (inHand ? takeInto(inHand.id, scan, said) : [])}
      onNewJob={(scan, said) => takeAsNewJob(name, scan, said)}
    />
  )
}

/** Keeps the radii first: a job never names a scan that is nowhere. What is in the way, in words. */
async function takeInto(boreId: string, scan: RadialScan, said: SaidOfScan): Promise<readonly string[]> {
  const kept = await keptHash(scan)
  if (!kept.ok) return [kept.why]
  const entry = entryOf(scan, kept.hash, said)
  const done = jobStore
    .getState()
    .perform(words.scans.changes.taken(entry.name ?? ''), (job) => addScan(job, boreId, entry))
  if (!done.ok) return done.problems.map(problemText)
  show(boreId, entry.id)
  return []
}

async function takeAsNewJob(name: string, scan: RadialScan, said: SaidOfScan): Promise<readonly string[]> {
  const kept = await keptHash(scan)
  if (!kept.ok) return [kept.why]
  const fresh = newJob(newId)
  const [bore] = fresh.bores
  if (!bore) throw new Error('A new job has a bore')
  const entry = entryOf(scan, kept.hash, said)
  const job: Job = addScan(fresh, bore.id, entry)
  await changeOver(() => {
    layOut(job)
    say(words.file.opened(name))
    show(bore.id, entry.id)
  })
  return []
}

function entryOf(scan: RadialScan, hash: string, said: SaidOfScan) {
  const values = scan.radiiUm.reduce((count, radius) => (Number.isNaN(radius) ? count : count + 1), 0)
  return {
    id: newId(),
    ...said,
    hash,
    levels: scan.depthsMm.length,
    angles: scan.anglesDegrees.length,
    values,
  }
}

async function keptHash(
  scan: RadialScan,
): Promise<{ readonly ok: true; readonly hash: string } | { readonly ok: false; readonly why: string }> {
  try {
    return { ok: true, hash: await keepScan(scan) }
  } catch (error) {
    if (!(error instanceof ShelfError)) throw error
    return { ok: false, why: scanTableWords.notKept(words.saving.errors[error.code]) }
  }
}

function show(boreId: string, scanId: string): void {
  closeTable()
  lookAtScan(boreId, scanId)
  showPart('wall')
}
