import { createStore, type StoreApi } from 'zustand/vanilla'
import type { Problem } from '../core/problem'
import { checkJob } from './check-job'
import { newId } from './new-id'
import { newJob } from './new-job'
import type { Job } from './schema'

/** A document as it was before (or after) a change, and the change's label. */
export interface Entry {
  readonly label: string
  readonly job: Job
  readonly merge?: string
  /** It was kept with the job and is checked against the schema before it becomes the job again. */
  readonly unchecked?: true
}

export type Performed =
  | { readonly ok: true }
  /** The change would have made a document that no file may hold; nothing was changed. */
  | { readonly ok: false; readonly problems: readonly Problem[] }

export interface JobState {
  readonly job: Job
  /** What can be undone, oldest first: the job before each change. */
  readonly past: readonly Entry[]
  /** What can be done again, next first: the job after each change. */
  readonly future: readonly Entry[]
  /** Counts every change of the job, undo and opening included: what is saved is compared with it. */
  readonly revision: number
  readonly readOnly: boolean
  /** The last change that was refused, until one is performed, undone or redone. */
  readonly refused: { readonly label: string; readonly problems: readonly Problem[] } | undefined
  /**
   * Makes a change that can be undone. Consecutive changes with the same `merge` key (the same cell, say)
   * are one entry. A change that returns the same object makes no entry.
   */
  perform(label: string, change: (job: Job) => Job, options?: { readonly merge?: string }): Performed
  undo(): void
  redo(): void
  /** Takes another job with what can be undone and redone of it, which is nothing where it is not given. */
  openJob(job: Job, history?: Pick<JobState, 'past' | 'future'>): void
  /** While it is true no change is performed, undone or redone: the job is written elsewhere. */
  setReadOnly(readOnly: boolean): void
}

/** So many changes can be undone. */
export const mostUndone = 500

export function createJobStore(first: Job): StoreApi<JobState> {
  return createStore<JobState>()((set, get) => ({
    job: first,
    past: [],
    future: [],
    revision: 0,
    refused: undefined,
    readOnly: false,
    perform(label, change, { merge } = {}) {
      const state = get()
      if (state.readOnly) {
        const problems: readonly Problem[] = [{ code: 'read-only', path: '' }]
        set({ refused: { label, problems } })
        return { ok: false, problems }
      }
      const job = change(state.job)
      if (job === state.job) {
        set({ refused: undefined })
        return { ok: true }
      }
      const checked = checkJob(job)
      if (!checked.ok) {
        const problems = checked.problems.map(({ problem }) => problem)
        set({ refused: { label, problems } })
        return { ok: false, problems }
      }
      set({ ...next(state, job), past: pastWith(state, label, merge), future: [] })
      return { ok: true }
    },
    undo() {
      const state = get()
      const entry = state.past.at(-1)
      if (!entry || state.readOnly) return
      const job = checkedJob(entry)
      if (!job) return set({ past: [] })
      const undone = { label: entry.label, job: state.job }
      set({ ...next(state, job), past: state.past.slice(0, -1), future: [undone, ...state.future] })
    },
    redo() {
      const state = get()
      const [entry, ...future] = state.future
      if (!entry || state.readOnly) return
      const job = checkedJob(entry)
      if (!job) return set({ future: [] })
      // Without its merge key: typing after a redo is a change of its own.
      const past = [...state.past, { label: entry.label, job: state.job }]
      set({ ...next(state, job), past, future })
    },
    openJob(job, { past, future } = { past: [], future: [] }) {
      set({ ...next(get(), job), past, future })
    },
    setReadOnly(readOnly) {
      if (readOnly !== get().readOnly) set({ readOnly })
    },
  }))
}

/** The job of an entry; undefined where it was kept and is no job any more. */
function checkedJob({ job, unchecked }: Entry): Job | undefined {
  if (!unchecked) return job
  const checked = checkJob(job)
  return checked.ok ? checked.job : undefined
}

function next(state: JobState, job: Job): Pick<JobState, 'job' | 'revision' | 'refused'> {
  return { job, revision: state.revision + 1, refused: undefined }
}

function pastWith(state: JobState, label: string, merge: string | undefined): readonly Entry[] {
  const last = state.past.at(-1)
  const merges = merge !== undefined && last?.merge === merge && state.future.length === 0
  if (merges) return state.past
  const entry: Entry = { label, job: state.job, ...(merge === undefined ? {} : { merge }) }
  return [...state.past, entry].slice(-mostUndone)
}

/** The job of this page. */
export const jobStore: StoreApi<JobState> = createJobStore(newJob(newId))
