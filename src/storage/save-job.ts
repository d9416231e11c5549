import { readJob } from '../job/read-job'
import { type Job, jobFormatVersion } from '../job/schema'
import { writeJob } from '../job/write-job'
import { putAside } from './aside-pile'
import { recordOf } from './job-record'
import { lastOpenMark } from './last-open'
import { putEntry } from './shelf-entries'
import { ShelfError } from './shelf-error'
import type { JobRecord } from './shelf-stores'
import { type Database, type Writing, write } from './shelf-transaction'

export interface Saving {
  /** Texts of the jobs as this page last read or wrote them: what it may write over. */
  readonly known: Map<string, string>
  readonly now: () => Date
}

/** Writes a job with all that belongs to it in one transaction, then reads it back. */
export async function saveJob(database: Database, job: Job, { known, now }: Saving): Promise<void> {
  const { id, name, formatVersion } = job
  const changedAt = now().toISOString()
  const text = writeJob(job)
  const record: JobRecord = { id, formatVersion, changedAt, name, text }
  await write(database, async (writing) => {
    const jobs = writing.objectStore('jobs')
    const before = await jobs.get(id)
    if (before !== undefined) await keepWhatIsNotOurs(writing, before, { known: known.get(id), text, now })
    await jobs.put(record)
    await putEntry(writing, job, changedAt)
    await writing.objectStore('marks').put(id, lastOpenMark)
  })
  known.set(id, text)
  if (recordOf(await database.get('jobs', id))?.text !== text) throw new ShelfError('mismatch')
}

interface Replacing {
  readonly known: string | undefined
  readonly text: string
  readonly now: () => Date
}

async function keepWhatIsNotOurs(writing: Writing, before: unknown, replacing: Replacing): Promise<void> {
  const record = recordOf(before)
  if (record && record.formatVersion > jobFormatVersion) throw new ShelfError('newer')
  const stored = record?.text
  if (stored !== undefined && (stored === replacing.known || stored === replacing.text)) return
  const readable = stored !== undefined && readJob(stored).ok
  await putAside(writing, before, readable ? 'replaced' : 'unreadable', replacing.now)
}
