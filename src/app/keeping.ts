/** How the job of this page is kept: every change is saved with what can be undone of it. */
import { type History, readHistory, writeHistory } from '../job/job-history'
import { jobStore } from '../job/job-store'
import type { Job } from '../job/schema'
import type { KeptJob } from '../storage/kept-job'
import { createSaveLoop } from './save-loop'
import { shelf } from './shelf-here'

const now = () => new Date()

/** What could be undone and redone of each document when it was handed over. */
const histories = new WeakMap<Job, History>()

export const saveLoop = createSaveLoop({
  async save(job) {
    const history = histories.get(job)
    await (await shelf()).save(job, history ? { history: writeHistory(job, history) } : {})
  },
  now,
})

/** Hands over the job on the bench, to be saved. */
export function keepJob(): void {
  const { job, past, future } = jobStore.getState()
  histories.set(job, { past, future })
  saveLoop.put(job)
}

/** Lays a job that was read from the shelf on the bench, with what can be undone of it. */
export function takeKept(
  kept: KeptJob & { readonly ok: true },
  layOut: (job: Job, history: History) => void,
) {
  const { job, history } = kept
  saveLoop.take(job, now())
  layOut(job, history === undefined ? { past: [], future: [] } : readHistory(history, job))
}
