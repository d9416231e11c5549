import * as z from 'zod/mini'
import { type ReadResult, readJob } from '../job/read-job'
import type { JobRecord } from './shelf-stores'

// Fields that a newer Borewall may have added are no reason to call a record unreadable.
const recordSchema = z.object({
  id: z.string(),
  formatVersion: z.number(),
  changedAt: z.string(),
  name: z.string(),
  text: z.string(),
})

/** A stored value as the record of a job; undefined where it is of another shape. */
export function recordOf(stored: unknown): JobRecord | undefined {
  const record = recordSchema.safeParse(stored)
  return record.success ? record.data : undefined
}

export interface StoredJob {
  readonly result: ReadResult
  /** The text as it was saved, where the record has one. */
  readonly text: string | undefined
}

/** The job in a stored record. */
export function jobIn(stored: unknown): StoredJob {
  const record = recordOf(stored)
  return record
    ? { result: readJob(record.text), text: record.text }
    : { result: { ok: false, problems: [{ code: 'not-a-job', path: '' }] }, text: undefined }
}
