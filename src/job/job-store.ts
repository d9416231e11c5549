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
  /** The last change that was refused, until one is performed, undone or redone. */
  readonly refused: { readonly label: string; readonly problems: readonly Problem[] } | undefined
  /**
   * Makes a change that can be undone. Consecutive changes with the same `merge` key (the same cell, say)
   * are one entry. A change that returns the same object makes no entry.
   */
  perform(label: string, change: (job: Job) => Job, options?: { readonly merge?: string }): Performed
  undo(): void
  redo(): void
  /** Takes another job; nothing before it can be undone. */
  openJob(job: Job): void
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
    perform(label, change, { merge } = {}) {
      const state = get()
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
      if (!entry) return
      const undone = { label: entry.label, job: state.job }
      set({ ...next(state, entry.job), past: state.past.slice(0, -1), future: [undone, ...state.future] })
    },
    redo() {
      const state = get()
      const [entry, ...future] = state.future
      if (!entry) return
      // Without its merge key: typing after a redo is a change of its own.
      set({
        ...next(state, entry.job),
        past: [...state.past, { label: entry.label, job: state.job }],
        future,
      })
    },
    openJob(job) {
      set({ ...next(get(), job), past: [], future: [] })
    },
  }))
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
