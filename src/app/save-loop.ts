import { createStore, type StoreApi } from 'zustand/vanilla'
import type { Job } from '../job/schema'
import { type ShelfErrorCode, shelfErrorOf } from '../storage/shelf-error'

export type SaveState =
  /** No job has been handed over, or none that needs saving. */
  | { readonly kind: 'nothing' }
  | { readonly kind: 'saving' }
  /** The last job handed over is on the disk, and was read back. */
  | { readonly kind: 'saved'; readonly at: Date }
  /** The last job handed over is only in memory. */
  | { readonly kind: 'failed'; readonly code: ShelfErrorCode }

export interface SaveLoop {
  readonly state: StoreApi<SaveState>
  /** Hands over the job as it is now. Saves run one after another; of those that wait, only the last is run. */
  put(job: Job): void
  /** There is nothing to save until the next job is handed over. */
  rest(): void
  /** Tries again what failed. */
  retry(): void
  /** What was saved is not there any more. */
  fail(code: ShelfErrorCode): void
  /** Takes a job as saved already: it was just read from where it would be saved to. */
  take(job: Job, at: Date): void
  /** Resolves when nothing is being saved any more, with how it went. */
  settled(): Promise<SaveState>
}

export interface SaveLoopOptions {
  readonly save: (job: Job) => Promise<void>
  readonly now: () => Date
}

/** Saves a job each time it is handed over; the state says saved only once that is true of the last one. */
export function createSaveLoop({ save, now }: SaveLoopOptions): SaveLoop {
  const state = createStore<SaveState>(() => ({ kind: 'nothing' }))
  let latest: Job | undefined
  let saved: Job | undefined
  let running: Promise<void> | undefined

  async function run() {
    try {
      while (latest !== undefined && latest !== saved) {
        const job = latest
        state.setState({ kind: 'saving' }, true)
        try {
          await save(job)
        } catch (error) {
          saved = undefined
          // One handed over meanwhile gets its own try: it may be smaller, or another job altogether.
          if (latest !== job) continue
          state.setState({ kind: 'failed', code: shelfErrorOf(error).code }, true)
          return
        }
        saved = job
        if (latest === job) state.setState({ kind: 'saved', at: now() }, true)
      }
      if (latest === undefined) state.setState({ kind: 'nothing' }, true)
    } finally {
      // At once, not a turn later: what is handed over in between would wait for the next.
      running = undefined
    }
  }

  function start() {
    if (latest !== undefined && latest !== saved) running ??= run()
  }

  return {
    state,
    put(job) {
      if (job === latest) return
      latest = job
      start()
    },
    rest() {
      latest = undefined
      saved = undefined
      if (running === undefined) state.setState({ kind: 'nothing' }, true)
    },
    retry: start,
    fail(code) {
      if (state.getState().kind !== 'saved') return
      saved = undefined
      state.setState({ kind: 'failed', code }, true)
    },
    take(job, at) {
      latest = job
      saved = job
      state.setState({ kind: 'saved', at }, true)
    },
    async settled() {
      while (running !== undefined) await running
      return state.getState()
    },
  }
}
