import { readJob } from '../job/read-job'
import { type Job, jobFormatVersion } from '../job/schema'
import { writeJob } from '../job/write-job'
import { putAside } from './aside-pile'
import { recordOf } from './job-record'
import { keepVersion } from './job-versions'
import { putHistory } from './kept-history'
import { lastOpenMark } from './last-open'
import { putEntry } from './shelf-entries'
import { ShelfError } from './shelf-error'
import type { JobRecord } from './shelf-stores'
import { type Database, write } from './shelf-transaction'

/** What a page knows of the shelf. */
export interface Knowing {
  /** Texts of the jobs as this page last read or wrote them: what it may write over. */
  readonly texts: Map<string, string>
  /** Jobs that this page has saved, and when first, ms since 1970. */
  readonly saved: Map<string, number>
  readonly now: () => Date
}

export interface SaveOptions {
  /** What can be undone and redone, as text. Where it is not given, nothing of it stays. */
  readonly history?: string
  /** Another tab has taken the job over: what is kept stays, and what was to be saved is set aside where it differs. */
  readonly withoutPen?: boolean
}

/** `replaced`: what this page did not know stood there, and was set aside. */
export type Saved = 'saved' | 'replaced'

/** Writes a job with all that belongs to it in one transaction, then reads it back. */
export async function saveJob(
  database: Database,
  job: Job,
  options: SaveOptions,
  knowing: Knowing,
): Promise<Saved> {
  const { texts, saved, now } = knowing
  const { id, name, formatVersion } = job
  const at = now()
  const record: JobRecord = { id, formatVersion, changedAt: at.toISOString(), name, text: writeJob(job) }
  const done = await write(database, async (writing) => {
    const jobs = writing.objectStore('jobs')
    const before: unknown = await jobs.get(id)
    const found = whatIsThere(before, texts.get(id), record.text)
    if (options.withoutPen) {
      if (found === 'same') return 'saved'
      await putAside(writing, record, 'overtaken', now)
      return 'overtaken'
    }
    if (found === 'strange')
      await putAside(writing, before, readable(before) ? 'replaced' : 'unreadable', now)
    if (found === 'ours') {
      const since = saved.get(id)
      await keepVersion(writing, {
        before,
        now: at,
        ...(since === undefined ? { why: 'session' } : { since }),
      })
    }
    await jobs.put(record)
    await putHistory(writing, id, record.changedAt, options.history)
    await putEntry(writing, job, record.changedAt)
    await writing.objectStore('marks').put(id, lastOpenMark)
    return found === 'strange' ? 'replaced' : 'saved'
  })
  if (done === 'overtaken') throw new ShelfError('overtaken')
  texts.set(id, record.text)
  if (!saved.has(id)) saved.set(id, at.getTime())
  if (recordOf(await database.get('jobs', id))?.text !== record.text) throw new ShelfError('mismatch')
  return done
}

/** Throws where the job may not be written at all. */
function whatIsThere(
  before: unknown,
  known: string | undefined,
  text: string,
): 'nothing' | 'same' | 'ours' | 'strange' {
  if (before === undefined) {
    if (known !== undefined) throw new ShelfError('gone')
    return 'nothing'
  }
  const record = recordOf(before)
  if (record && record.formatVersion > jobFormatVersion) throw new ShelfError('newer')
  if (record?.text === text) return 'same'
  return record !== undefined && record.text === known ? 'ours' : 'strange'
}

function readable(before: unknown): boolean {
  const text = recordOf(before)?.text
  return text !== undefined && readJob(text).ok
}
