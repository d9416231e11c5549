/** What the bar does with whole jobs: opening, changing over to another, saving, keeping. */
import { createStore } from 'zustand/vanilla'
import exampleText from '../../scenarios/A-two-stroke-single.json?raw'
import { jobStore } from '../job/job-store'
import { newId } from '../job/new-id'
import { newJob } from '../job/new-job'
import { type ReadResult, readJob } from '../job/read-job'
import type { Job } from '../job/schema'
import { writeJob } from '../job/write-job'
import { startSession } from '../session/session'
import { openShelf, type Shelf } from '../storage/job-shelf'
import { ShelfError } from '../storage/shelf-error'
import { words } from '../words/words'
import { downloadText, saveToFile } from './job-file'
import { ask, showProblems, tell } from './questions'
import { createSaveLoop } from './save-loop'

const now = () => new Date()

let opened: Promise<Shelf> | undefined

/** The shelf of this browser; a shelf that could not be opened is tried again at each call. */
export function shelf(): Promise<Shelf> {
  opened ??= openShelf({ now }).catch((error: unknown) => {
    opened = undefined
    throw error
  })
  return opened
}

export const saveLoop = createSaveLoop({ save: async (job) => (await shelf()).save(job), now })

/** Whether there is a job to show yet, and the last thing done with a file, in words. */
export interface Desk {
  readonly ready: boolean
  readonly said?: string
}

export const desk = createStore<Desk>(() => ({ ready: false }))

function say(said: string) {
  desk.setState({ said })
}

/** The job that was laid on the bench as it came, not yet changed by anybody. */
let untouched: Job | undefined

function layOut(job: Job) {
  desk.setState({ ready: true }, true)
  startSession()
  jobStore.getState().openJob(job)
}

function layOutFresh(job: Job) {
  untouched = job
  layOut(job)
}

/** Opens what was open last, or the example, and from then on saves every change. */
export async function startDesk(): Promise<void> {
  const kept = await lastJob()
  jobStore.subscribe(({ job, revision }, before) => {
    if (revision !== before.revision) saveLoop.put(job)
  })
  if (kept) {
    saveLoop.take(kept, now())
    layOut(kept)
  } else layOutFresh(exampleJob())
}

async function lastJob(): Promise<Job | undefined> {
  try {
    const open = await shelf()
    const kept = await open.list()
    const last = (await open.lastOpen()) ?? kept[0]?.id
    const result = last === undefined ? undefined : await open.read(last)
    if (result?.ok) return result.job
    if (result) showProblems(nameOr(kept.find(({ id }) => id === last)?.name), result.problems)
  } catch (error) {
    // The first save meets the same trouble and says so on the page.
    if (!(error instanceof ShelfError)) throw error
  }
  return undefined
}

export function nameOr(name: string | undefined): string {
  return name === undefined || name.trim() === '' ? words.app.untitled : name
}

function exampleJob(): Job {
  const read = readJob(exampleText)
  if (!read.ok) throw new Error(`The example is no job: ${JSON.stringify(read.problems)}`)
  return { ...read.job, id: newId() }
}

/** True once the job on the bench is kept, or the user was asked and lets it go. */
async function mayLeave(): Promise<boolean> {
  for (;;) {
    const state = await saveLoop.settled()
    if (state.kind !== 'failed' || jobStore.getState().job === untouched) return true
    const { saving } = words
    const answer = await ask(`${saving.leaving} ${saving.errors[state.code]}`, [
      { answer: 'retry', label: saving.retry },
      { answer: 'file', label: saving.toFile },
      { answer: 'leave', label: saving.leaveAnyway },
    ])
    if (answer === 'file') return saveJobToFile(false)
    if (answer !== 'retry') return answer === 'leave'
    saveLoop.retry()
  }
}

/** Lays another job on the bench once the one there is kept. A new job left as it came is not kept. */
async function changeOver(next: () => void | Promise<void>): Promise<void> {
  if (!(await mayLeave())) return
  const { job } = jobStore.getState()
  const isEmpty = job === untouched && job.invented !== true
  await next()
  if (isEmpty && jobStore.getState().job.id !== job.id) await removeKept(job.id)
}

export async function startNewJob(): Promise<void> {
  const { job } = jobStore.getState()
  if (job === untouched && job.invented !== true) return
  await changeOver(() => layOutFresh(newJob(newId)))
}

export async function openExample(): Promise<void> {
  const { job } = jobStore.getState()
  if (job === untouched && job.invented === true) return
  await changeOver(() => layOutFresh(exampleJob()))
}

export async function copyAsNewJob(): Promise<void> {
  await changeOver(() => {
    const { job } = jobStore.getState()
    layOut({ ...job, id: newId(), name: job.name === '' ? '' : words.file.copyName(job.name) })
  })
}

/** Reads a file and lays its job on the bench; whatever is wrong is said and the job there stays. */
export async function openFile(file: File): Promise<void> {
  const read = await readFile(file)
  if (read === undefined) return tell(words.file.notRead(file.name))
  if (!read.ok) return showProblems(file.name, read.problems)
  const job = await withIdentity(read.job)
  if (job === undefined) return
  await changeOver(() => {
    layOut(job)
    say(words.file.opened(file.name))
  })
}

async function readFile(file: File): Promise<ReadResult | undefined> {
  try {
    return readJob(new Uint8Array(await file.arrayBuffer()))
  } catch (error) {
    // The browser could not get at the bytes: moved, deleted, or no leave to read it.
    if (error instanceof DOMException) return undefined
    throw error
  }
}

/** The job under its own id, or under a fresh one where a different job is kept under it. */
async function withIdentity(job: Job): Promise<Job | undefined> {
  const kept = await keptText(job.id)
  if (kept === undefined || kept === writeJob(job)) return job
  const answer = await ask(words.file.replaceAsk, [
    { answer: 'copy', label: words.file.openAsCopy },
    { answer: 'replace', label: words.file.replace },
  ])
  if (answer === 'copy') return { ...job, id: newId() }
  return answer === 'replace' ? job : undefined
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

/** Lays a kept job on the bench; true once it lies there. */
export async function openKept(id: string, name: string): Promise<boolean> {
  let done = false
  await changeOver(async () => {
    const read = await unlessShelfFails(async (open) => open.read(id))
    if (read?.ok) {
      untouched = undefined
      saveLoop.take(read.job, now())
      layOut(read.job)
      done = true
    } else if (read) showProblems(nameOr(name), read.problems)
  })
  return done
}

/** Takes a job off the shelf for good. */
export async function removeKept(id: string): Promise<void> {
  await unlessShelfFails((open) => open.remove(id))
}

/** Does something with the shelf; where the shelf fails, says so in front of the page. */
export async function unlessShelfFails<Result>(
  step: (shelf: Shelf) => Promise<Result>,
): Promise<Result | undefined> {
  try {
    return await step(await shelf())
  } catch (error) {
    if (!(error instanceof ShelfError)) throw error
    await tell(words.saving.errors[error.code])
    return undefined
  }
}

/** True once the job is in a file. */
export async function saveJobToFile(askWhere: boolean): Promise<boolean> {
  const written = await saveToFile(jobStore.getState().job, now(), askWhere)
  if (written.kind === 'written') say(words.file.savedFile(written.name))
  if (written.kind === 'failed') await tell(words.file.notWritten(written.name))
  return written.kind === 'written'
}

/** A record that was set aside, as a file. */
export function saveSetAside(name: string, text: string): void {
  downloadText(`${nameOr(name).replace(/[^\p{L}\p{N}]+/gu, '-')}.json`, text)
}
