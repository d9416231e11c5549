/** How the job of this page is kept: every change is saved with what can be undone of it, by one tab at a time. */
import { type History, noHistory, readHistory, writeHistory } from '../job/job-history'
import { jobStore } from '../job/job-store'
import type { Job } from '../job/schema'
import type { KeptJob } from '../storage/kept-job'
import { ShelfError } from '../storage/shelf-error'
import { noteChange } from './copy-reminder'
import { createJobPen, type Lost } from './job-pen'
import { askToPersist } from './persistence'
import { createSaveLoop } from './save-loop'
import { isSecondWindow } from './second-window-name'
import { shelf } from './shelf-here'

const now = () => new Date()

/** What could be undone and redone of each document when it was handed over. */
const histories = new WeakMap<Job, History>()

export const saveLoop = createSaveLoop({ save, now })

export const jobPen = createJobPen({
  locks: navigator.locks,
  channel: typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('borewall-jobs'),
  settle: settleHere,
  onSaved: (id) => void follow(id),
  onTaken: goOnWith,
  onLost: saveWhatIsLeft,
  looksOn: isSecondWindow(),
})

jobPen.state.subscribe(({ kind }) => {
  jobStore.getState().setReadOnly(kind === 'following' || kind === 'handing-over')
})

/** To be told when what another tab or a file had put in the place of a job was set aside. */
const replacedListeners: (() => void)[] = []

export function onReplaced(listener: () => void): void {
  replacedListeners.push(listener)
}

async function save(job: Job): Promise<void> {
  const history = histories.get(job)
  const withoutPen = jobPen.state.getState().kind === 'following'
  const saved = await (await shelf()).save(job, {
    ...(history ? { history: writeHistory(job, history) } : {}),
    ...(withoutPen ? { withoutPen } : {}),
  })
  jobPen.tellSaved(job.id)
  void askToPersist()
  void noteChange(job.id, now().toISOString())
  if (saved === 'replaced') for (const listener of replacedListeners) listener()
}

/** Looks, when somebody comes back to this tab, whether the job is still kept. */
export function watchOverJob(): void {
  const look = () => void missJob()
  window.addEventListener('focus', look)
  document.addEventListener('visibilitychange', look)
}

async function missJob(): Promise<void> {
  const { kind } = saveLoop.state.getState()
  if (document.hidden || kind !== 'saved' || jobPen.state.getState().kind === 'following') return
  const { id } = jobStore.getState().job
  const look = () => unlessFailed(async () => (await shelf()).standing(id))
  // Once more where the first look met the connection that the browser closes when it clears its data.
  const standing = (await look()) ?? (await look())
  if (standing === 'gone' && jobStore.getState().job.id === id) saveLoop.fail('gone')
}

/** Keeps the job again where it was found gone. */
export async function keepAgain(): Promise<void> {
  await unlessFailed(async () => (await shelf()).keepAgain(jobStore.getState().job.id))
  saveLoop.retry()
}

/** Hands over the job on the bench, to be saved. */
export function keepJob(): void {
  const { job, past, future } = jobStore.getState()
  histories.set(job, { past, future })
  void jobPen.take(job.id)
  saveLoop.put(job)
}

/** A job from the shelf, read again where another tab wrote it before this one had the pen. */
export async function readWithPen(id: string): Promise<KeptJob | undefined> {
  const open = await shelf()
  const read = await open.read(id)
  if (!read?.ok) return read
  await jobPen.take(id)
  return (await open.standing(id)) === 'changed' ? open.read(id) : read
}

type LayOut = (job: Job, history: History) => void

/** Lays a job that was read from the shelf on the bench, with what can be undone of it. */
export function takeKept(kept: KeptJob & { readonly ok: true }, layOut: LayOut): void {
  const { job, history, changedAt } = kept
  saveLoop.take(job, now())
  layOut(job, history === undefined ? noHistory : readHistory(history, job))
  if (changedAt !== undefined) void noteChange(job.id, changedAt)
}

/** What stands typed in a field is taken first; true once everything is saved. */
async function settleHere(): Promise<boolean> {
  if (document.activeElement instanceof HTMLElement) document.activeElement.blur()
  return (await saveLoop.settled()).kind !== 'failed'
}

/** Shows the job as the tab that writes it has saved it; what this tab could not save stays on its page. */
async function follow(id: string): Promise<void> {
  const read = await unlessFailed(async () => (await shelf()).peek(id))
  if (!read?.ok || jobStore.getState().job.id !== id || hasUnsaved()) return
  saveLoop.take(read.job, now())
  jobStore.getState().openJob(read.job)
}

async function goOnWith(id: string): Promise<void> {
  if (hasUnsaved()) return
  const read = await unlessFailed(async () => (await shelf()).read(id))
  if (read?.ok && jobStore.getState().job.id === id) takeKept(read, jobStore.getState().openJob)
}

async function saveWhatIsLeft(id: string): Promise<Lost> {
  const state = await saveLoop.settled()
  if (state.kind !== 'failed') {
    await follow(id)
    return 'saved'
  }
  if (state.code !== 'overtaken') return 'unsaved'
  await follow(id)
  return 'set-aside'
}

function hasUnsaved(): boolean {
  const state = saveLoop.state.getState()
  return state.kind === 'saving' || (state.kind === 'failed' && state.code !== 'overtaken')
}

/** The shelf in trouble is told of by the next save. */
async function unlessFailed<Result>(step: () => Promise<Result>): Promise<Result | undefined> {
  try {
    return await step()
  } catch (error) {
    if (!(error instanceof ShelfError)) throw error
    return undefined
  }
}
