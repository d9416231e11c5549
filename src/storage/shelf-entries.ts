import type { Job } from '../job/schema'
import type { Writing } from './shelf-transaction'

/** Writes what a list shows of a job, in the transaction that saves it. */
export async function putEntry(_writing: Writing, _job: Job, _changedAt: string): Promise<void> {}

/** Takes it away again, in the transaction that removes the job. */
export async function removeEntry(_writing: Writing, _id: string): Promise<void> {}
