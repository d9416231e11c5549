import { useEffect, useRef, useState } from 'react'
import { useStore } from 'zustand'
import type { RadialScan } from '../core/scan/radial-scan'
import type { ScanChoices } from '../formats/scan-table'
import { jobStore } from '../job/job-store'
import { newId } from '../job/new-id'
import { newJob } from '../job/new-job'
import { addScan } from '../job/scan-commands'
import type { Job } from '../job/schema'
import { surveyOf } from '../job/selectors'
import { fetchScanParts } from '../pages/bench/scan-parts'
import { type SaidOfScan, ScanImport } from '../pages/import/ScanImport'
import { lookAtScan, setScanFigures } from '../session/scan-view'
import { session, showPart } from '../session/session'
import { ShelfError } from '../storage/shelf-error'
import { problemText } from '../words/problems'
import { scanTableWords } from '../words/scan-table-words'
import { words } from '../words/words'
import { useChosenBore } from './BoreTabs'
import { changeOver, desk, layOut, say } from './desk'
import { closeTable, showTable, type TableToImport } from './questions'
import { beginAhead, drawnAhead, dropAhead, fitAsked, standBy } from './scan-fit'
import { keepScan } from './scans-here'
import { useScanTable } from './use-scan-table'

/** A file of radii, looked at and taken: into the bore on the bench, or as a new job. */
export function ImportScan({ table }: { readonly table: TableToImport }) {
  const { name, bytes } = table
  const [choices, setChoices] = useState<ScanChoices>({})
  const bore = useChosenBore()
  const hasJob = useStore(desk, ({ shows, behindShelf }) => shows === 'bench' || behindShelf === 'bench')
  const inHand = hasJob ? bore : undefined
  const chosen = useStore(session, ({ surveyId }) => surveyId)
  useEffect(standBy, [])
  useEffect(() => {
    fetchScanParts().catch(reportError)
  }, [])
  const { state, stop, again } = useScanTable(bytes, choices, (read) => {
    if (!read.ok || read.open.length > 0) return dropAhead()
    beginAhead({ ...askedOf(read.scan, inHand?.id, chosen), scan: read.scan })
  })
  const isTaken = useRef(false)
  useEffect(
    () => () => {
      if (!isTaken.current) dropAhead()
    },
    [],
  )
  const taking = async (take: Promise<readonly string[]>) => {
    isTaken.current = true
    const why = await take
    isTaken.current = why.length === 0
    return why
  }
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
      onTake={async (scan, said) => (inHand ? taking(takeInto(inHand.id, scan, said)) : [])}
      onNewJob={(scan, said) => taking(takeAsNewJob(name, scan, said))}
    />
  )
}

/** What will be asked of the scan once it is taken: into the bore, or where there is none into a new job. */
function askedOf(scan: RadialScan, boreId: string | undefined, surveyId: string | undefined) {
  const job = boreId === undefined ? newJob(newId) : jobStore.getState().job
  const bore = job.bores.find(({ id }) => id === boreId) ?? job.bores[0]
  const survey = bore && surveyOf(bore, surveyId)
  if (!bore || !survey) throw new Error('A job has a bore with a survey')
  return fitAsked(job, bore, survey, entryOf(scan, '', {}))
}

/** Keeps the radii first: a job never names a scan that is nowhere. What is in the way, in words. */
async function takeInto(boreId: string, scan: RadialScan, said: SaidOfScan): Promise<readonly string[]> {
  const kept = await keptHash(scan)
  if (!kept.ok) return [kept.why]
  const drawn = await drawnAhead(scan)
  const entry = entryOf(scan, kept.hash, said)
  if (drawn) setScanFigures(entry.id, { kind: 'fitted', ...drawn })
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
  let values = 0
  for (let place = 0; place < scan.radiiUm.length; place++) if (!Number.isNaN(scan.radiiUm[place])) values++
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
