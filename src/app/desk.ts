/** What the bar does with whole jobs: opening, changing over to another, saving, keeping. */
import { createStore } from 'zustand/vanilla'
import type { History } from '../job/job-history'
import { jobStore } from '../job/job-store'
import { newId } from '../job/new-id'
import { newJob } from '../job/new-job'
import type { Job } from '../job/schema'
import { startScanView } from '../session/scan-view'
import { type PageName, session, showPage, startSession } from '../session/session'
import type { KeptJob } from '../storage/kept-job'
import { ShelfError, type ShelfErrorCode } from '../storage/shelf-error'
import { words } from '../words/words'
import { noteCopies } from './copy-reminder'
import { askedIn, type ExampleName, loadExample, shelfAddress } from './examples'
import { downloadText, saveToFile } from './job-file'
import { type JobFromFile, jobForFile, jobFromFile, leftBehind } from './job-for-file'
import { jobPen, keepJob, onReplaced, readWithPen, saveLoop, takeKept } from './keeping'
import { addressOf, pageIn } from './page-address'
import { ask, showProblems, tell } from './questions'
import { shelf, unlessShelfFails } from './shelf-here'

const now = () => new Date()

/** What the page shows, and the last thing done with a file, in words. */
export interface Desk {
  /** The first page stands where this browser has no job to go on with. */
  readonly shows: 'nothing' | 'first-page' | 'bench' | 'shelf'
  /** What the shelf stands in front of. */
  readonly behindShelf?: 'first-page' | 'bench'
  readonly said?: string
  /** On the first page: something lies on the shelf all the same, as where the last job could not be read. */
  readonly hasKept?: true
  /** On the first page: why the shelf could not be reached. */
  readonly trouble?: ShelfErrorCode
}

export const desk = createStore<Desk>(() => ({ shows: 'nothing' }))

export function say(said: string) {
  desk.setState({ said })
}

/** The job that was laid on the bench as it came, not yet changed by anybody: it is not kept. */
let untouched: { readonly job: Job; readonly example?: ExampleName } | undefined

function isUntouched(): boolean {
  return untouched?.job === jobStore.getState().job
}

/** The example on the bench, while it is as it came. */
function untouchedExample(): ExampleName | undefined {
  return isBenchLaid() && isUntouched() ? untouched?.example : undefined
}

/** A job lies on the bench, be it behind the shelf. */
function isBenchLaid(): boolean {
  const { shows, behindShelf } = desk.getState()
  return shows === 'bench' || (shows === 'shelf' && behindShelf === 'bench')
}

/** Shows all kept jobs, and what is there now when they are left again. */
export function showShelf(): void {
  const { shows } = desk.getState()
  if (shows !== 'bench' && shows !== 'first-page') return
  if (location.hash !== shelfAddress) history.pushState(null, '', shelfAddress)
  desk.setState({ shows: 'shelf', behindShelf: shows })
}

/** Goes back to what the shelf stands in front of. */
export function leaveShelf(): void {
  const { shows, behindShelf } = desk.getState()
  if (shows !== 'shelf' || behindShelf === undefined) return
  const { behindShelf: _, ...rest } = desk.getState()
  desk.setState({ ...rest, shows: behindShelf }, true)
  showAddress()
}

export function layOut(job: Job, history?: History) {
  desk.setState({ shows: 'bench' }, true)
  startSession()
  startScanView()
  jobPen.release(job.id)
  jobStore.getState().openJob(job, history)
  showAddress()
}

function layOutFresh(job: Job, example?: ExampleName) {
  untouched = { job, ...(example === undefined ? {} : { example }) }
  layOut(job)
}

/** Lets the address name the example on the bench, so that a reload or a link finds it again. */
function showAddress() {
  if (desk.getState().shows === 'shelf') return
  const example = untouchedExample()
  const fragment = addressOf(example, session.getState().page)
  if (location.hash === fragment) return
  const address = `${location.pathname}${location.search}${fragment}`
  // From the bench back leads to the list that the job was chosen from.
  if (location.hash === shelfAddress) history.pushState(null, '', address)
  else history.replaceState(history.state, '', address)
}

/** Goes to another page of the job on the bench; back leads to the one before. */
export function goToPage(page: PageName): void {
  if (session.getState().page === page) return
  showPage(page)
  const address = addressOf(untouchedExample(), page)
  history.pushState(null, '', `${location.pathname}${location.search}${address}`)
}

let openCode: (code: string) => Promise<boolean> = async () => true

/** What is done with a job that stands in the address; it gives false where the address is still needed. */
export function onCodeInAddress(open: (code: string) => Promise<boolean>): void {
  openCode = open
}

/** Opens what the address asks for, else what was open last, and from then on keeps every change. */
export async function startDesk(): Promise<void> {
  jobStore.subscribe(({ revision }, before) => {
    if (revision === before.revision) return
    if (isUntouched()) {
      jobPen.release()
      return saveLoop.rest()
    }
    untouched = undefined
    if (!jobStore.getState().readOnly) keepJob()
    showAddress()
  })
  onReplaced(() => say(words.pen.replaced))
  window.addEventListener('hashchange', () => void followAddress())
  await followAddress()
}

/** Goes where the address says; where it asks for no example, an example that nobody changed makes way. */
async function followAddress(): Promise<void> {
  const asked = askedIn(location.hash)
  const page = pageIn(location.hash)
  if (asked.kind === 'example') await openExample(asked.name)
  const { shows } = desk.getState()
  const leaves = asked.kind === 'nothing' && untouchedExample() !== undefined
  if (shows === 'nothing' || leaves) await openLast()
  if (asked.kind === 'shelf') return showShelf()
  leaveShelf()
  showPage(page)
  const isDone = asked.kind !== 'job' || (await openCode(asked.code))
  if (isDone) showAddress()
  if (asked.kind === 'unknown') await tell(words.examples.unknown(asked.name))
}

/** Opens what was open last, or the first page. */
async function openLast(): Promise<void> {
  const { kept, ...found } = await lastJob()
  untouched = undefined
  if (kept) takeKept(kept, layOut)
  else desk.setState({ shows: 'first-page', ...found }, true)
}

type Last = Pick<Desk, 'hasKept' | 'trouble'> & { readonly kept?: KeptJob & { readonly ok: true } }

async function lastJob(): Promise<Last> {
  try {
    const open = await shelf()
    const last = (await open.lastOpen()) ?? (await open.jobs.newest(1))[0]?.id
    const named = last === undefined ? undefined : await open.jobs.nameOf(last)
    const result = last === undefined ? undefined : await readWithPen(last)
    if (result?.ok) return { kept: result }
    if (result) showProblems(nameOr(named), result.problems)
    const hasKept = (await open.jobs.count()) > 0 || (await open.setAside()).length > 0
    return hasKept ? { hasKept } : {}
  } catch (error) {
    if (!(error instanceof ShelfError)) throw error
    return { trouble: error.code }
  }
}

export function nameOr(name: string | undefined): string {
  return name === undefined || name.trim() === '' ? words.app.untitled : name
}

/** True once the job on the bench is kept, or the user was asked and lets it go. */
async function mayLeave(): Promise<boolean> {
  for (;;) {
    const state = await saveLoop.settled()
    if (state.kind !== 'failed' || isUntouched()) return true
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

/** Lays another job on the bench once the one there is kept; one left as it came need not be. */
export async function changeOver(next: () => void | Promise<void>): Promise<void> {
  if (await mayLeave()) await next()
}

export async function startNewJob(): Promise<void> {
  if (isUntouched() && untouched?.example === undefined) return leaveShelf()
  await changeOver(() => layOutFresh(newJob(newId)))
}

/** Lays a copy of an example on the bench; where it cannot be loaded, says so. */
export async function openExample(name: ExampleName): Promise<void> {
  if (untouchedExample() === name) return
  const job = await loadExample(name)
  if (job === undefined) {
    // Not waited for: the page may have nothing yet for it to stand in front of.
    void tell(words.examples.notLoaded)
    return
  }
  // Another was asked for while this one was on its way.
  const asked = askedIn(location.hash)
  if (asked.kind !== 'example' || asked.name !== name) return
  const fromFile = jobFromFile(job)
  await fromFile.keepInMind()
  // As long as nobody changes the example nothing of it is kept; its scans are, for a job that comes of it names them.
  await keepQuietly(fromFile)
  await changeOver(() => layOutFresh(fromFile.job, name))
}

/** Where the browser keeps nothing an example is looked at all the same. */
async function keepQuietly(fromFile: JobFromFile): Promise<void> {
  try {
    await fromFile.takeIn(await shelf())
  } catch (error) {
    if (!(error instanceof ShelfError)) throw error
  }
}

export async function copyAsNewJob(): Promise<void> {
  await changeOver(() => {
    const { job } = jobStore.getState()
    layOut({ ...job, id: newId(), name: job.name === '' ? '' : words.file.copyName(job.name) })
  })
}

/** Lays a kept job on the bench; true once it lies there. */
export async function openKept(id: string, name: string): Promise<boolean> {
  let done = false
  await changeOver(async () => {
    const read = await unlessShelfFails(() => readWithPen(id))
    if (read?.ok) {
      takeKept(read, layOut)
      done = true
    } else if (read) showProblems(nameOr(name), read.problems)
  })
  return done
}

/** True once the job is in a file. */
export async function saveJobToFile(askWhere: boolean): Promise<boolean> {
  const { job } = jobStore.getState()
  const forFile = await jobForFile(job)
  const written = await saveToFile(forFile.job, now(), askWhere)
  const behind = leftBehind(forFile)
  if (written.kind === 'written') {
    say(words.file.savedFile(written.name))
    await saveLoop.settled()
    if (jobStore.getState().job === job) await noteCopies([job.id])
  }
  if (written.kind === 'written' && behind !== undefined) await tell(behind)
  if (written.kind === 'failed') await tell(words.file.notWritten(written.name))
  return written.kind === 'written'
}

/** A record that was set aside, as a file. */
export function saveSetAside(name: string, text: string): void {
  downloadText(`${nameOr(name).replace(/[^\p{L}\p{N}]+/gu, '-')}.json`, text)
}
