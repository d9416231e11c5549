import { isBundle } from '../job/job-bundle'
import { jobStore } from '../job/job-store'
import { newId } from '../job/new-id'
import { readJob } from '../job/read-job'
import type { Job } from '../job/schema'
import { writeJob } from '../job/write-job'
import { ShelfError } from '../storage/shelf-error'
import { words } from '../words/words'
import { noteCopies } from './copy-reminder'
import { changeOver, layOut, say } from './desk'
import { fetchImportScan, fetchImportTable } from './imports'
import { damagedText, jobFromFile } from './job-for-file'
import { jobPen, saveLoop } from './keeping'
import { ask, showProblems, showTable, tell } from './questions'
import { shelf, unlessShelfFails } from './shelf-here'

/**
 * Reads a file and lays its job on the bench, or shows the table of readings in it; whatever is wrong is said and the
 * job there stays.
 */
export async function openFile(file: File): Promise<void> {
  const bytes = await bytesOf(file)
  if (bytes === undefined) return tell(words.file.notRead(file.name))
  if (isTable(file.name, bytes)) {
    const { looksLikeScan } = await import('../formats/looks-like-scan')
    const holds = looksLikeScan(bytes) ? 'scan' : 'readings'
    await (holds === 'scan' ? fetchImportScan() : fetchImportTable())
    return showTable({ name: file.name, bytes, holds })
  }
  if (isBundle(bytes)) return (await import('./open-jobs')).openJobs(file.name, bytes)
  const read = readJob(bytes)
  if (!read.ok) return showProblems(file.name, read.problems)
  const fromFile = jobFromFile(read.job)
  const job = await withIdentity(fromFile.job)
  if (job === undefined) return
  await fromFile.keepInMind()
  const damaged = await unlessShelfFails((open) => fromFile.takeIn(open))
  const said = damaged && damagedText(damaged)
  if (said !== undefined) await tell(said)
  await changeOver(() => {
    layOut(job)
    say(words.file.opened(file.name))
  })
  // The file is the copy outside of the browser, once the job is kept as it stands in it.
  await saveLoop.settled()
  if (jobStore.getState().job === job) await noteCopies([job.id])
}

/** By its name; a text that begins like a job is one. */
function isTable(name: string, bytes: Uint8Array): boolean {
  const start = new TextDecoder().decode(bytes.subarray(0, 100)).trimStart()
  return /\.(csv|tsv|txt)$/i.test(name) && !start.startsWith('{')
}

async function bytesOf(file: File): Promise<Uint8Array | undefined> {
  try {
    return new Uint8Array(await file.arrayBuffer())
  } catch (error) {
    // The browser could not get at the bytes: moved, deleted, or no leave to read it.
    if (error instanceof DOMException) return undefined
    throw error
  }
}

/** The job under its own id, or under a fresh one where a different job is kept under it. */
export async function withIdentity(job: Job): Promise<Job | undefined> {
  const kept = await keptText(job.id)
  if (kept === undefined || kept === writeJob(job)) return job
  const answer = await ask(words.file.replaceAsk, [
    { answer: 'copy', label: words.file.openAsCopy },
    { answer: 'replace', label: words.file.replace },
  ])
  if (answer === 'copy') return { ...job, id: newId() }
  if (answer !== 'replace') return undefined
  if (await jobPen.isElsewhere(job.id)) {
    await tell(words.pen.notReplaced)
    return undefined
  }
  await keepBefore(job.id)
  return job
}

/** The job that the file takes the place of stays among its earlier versions. */
async function keepBefore(id: string): Promise<void> {
  try {
    const open = await shelf()
    if ((await open.read(id))?.ok) await open.keepVersion(id, 'replace')
  } catch (error) {
    // The save that follows meets the same trouble and says so on the page.
    if (!(error instanceof ShelfError)) throw error
  }
}

/** What is kept under an id, on the bench or on the shelf, as text. */
async function keptText(id: string): Promise<string | undefined> {
  const { job } = jobStore.getState()
  if (job.id === id) return writeJob(job)
  try {
    const kept = await (await shelf()).peek(id)
    if (kept === undefined) return undefined
    return kept.ok ? writeJob(kept.job) : ''
  } catch (error) {
    if (error instanceof ShelfError) return undefined
    throw error
  }
}
