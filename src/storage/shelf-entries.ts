import { boreMapsOf, folded, type JobSummary, summaryOf, summaryVersion } from '../job/job-summary'
import { type EntryMarks, entryMarksSchema, type UnreadReason } from '../job/listed-job'
import type { Job } from '../job/schema'
import { jobIn, recordOf } from './job-record'
import type { Writing } from './shelf-transaction'

/**
 * The maps of a job lie in a record of their own: a list reads the summaries of all jobs and the maps of a few. No
 * id of a job begins with a control character.
 */
const mapsPrefix = '\u0001'

export function mapsKey(id: string): string {
  return `${mapsPrefix}${id}`
}

/** Where the keys of entries begin, past those of all maps. */
export const afterMaps = '\u0002'

/** Writes what a list shows of a job, in the transaction that saves it. A job that changes comes back to the shelf. */
export async function putEntry(writing: Writing, job: Job, changedAt: string): Promise<void> {
  const { id } = job
  const said = summedUp(job)
  await putRecords(writing, { id, changedAt, ...said.summary }, said.maps)
}

/** Takes it away again, in the transaction that removes the job. */
export async function removeEntry(writing: Writing, id: string): Promise<void> {
  const entries = writing.objectStore('entries')
  await entries.delete(id)
  await entries.delete(mapsKey(id))
}

/** Makes the entry of a kept job anew; what was marked on it by hand stays. */
export async function renewEntry(writing: Writing, id: string): Promise<void> {
  const stored: unknown = await writing.objectStore('jobs').get(id)
  if (stored === undefined) return removeEntry(writing, id)
  const before = entryMarksSchema.safeParse(await writing.objectStore('entries').get(id))
  const marks: EntryMarks = before.success ? before.data : {}
  const record = recordOf(stored)
  const { result } = jobIn(stored)
  const changedAt = record?.changedAt ?? ''
  if (result.ok) {
    const said = summedUp(result.job)
    return putRecords(writing, { id, changedAt, ...said.summary, ...marks }, said.maps)
  }
  const isNewer = result.problems.some(({ code }) => code === 'newer-version')
  const unread = unreadSummary(record?.name ?? '', isNewer ? 'newer' : 'unreadable')
  return putRecords(writing, { id, changedAt, ...unread, ...marks }, [])
}

/** Marks an entry by hand, or takes a mark off. */
export async function markEntry(
  writing: Writing,
  id: string,
  marks: { readonly archivedAt?: string | undefined; readonly deletedAt?: string | undefined },
): Promise<void> {
  const entries = writing.objectStore('entries')
  if ((await entries.get(id)) === undefined) await renewEntry(writing, id)
  const stored: unknown = await entries.get(id)
  if (typeof stored !== 'object' || stored === null) return
  const marked = { ...stored, ...marks }
  for (const [field, value] of Object.entries(marks)) {
    if (value === undefined) Reflect.deleteProperty(marked, field)
  }
  await entries.put(marked)
}

async function putRecords(
  writing: Writing,
  entry: JobSummary & { readonly id: string; readonly changedAt: string },
  maps: ReturnType<typeof boreMapsOf>,
): Promise<void> {
  const entries = writing.objectStore('entries')
  await entries.put({ version: summaryVersion, ...entry })
  await entries.put({ id: mapsKey(entry.id), maps })
}

/** A job is saved whether or not it can be summed up; why it could not is an error of ours, and is reported. */
function summedUp(job: Job): {
  readonly summary: JobSummary & { readonly unread?: UnreadReason }
  readonly maps: ReturnType<typeof boreMapsOf>
} {
  try {
    return { summary: summaryOf(job), maps: boreMapsOf(job) }
  } catch (error) {
    reportError(error)
    return { summary: unreadSummary(job.name, 'not-summed-up'), maps: [] }
  }
}

function unreadSummary(name: string, unread: UnreadReason): JobSummary & { readonly unread: UnreadReason } {
  return { name, readings: 0, bores: 0, judged: 0, marked: 0, sought: folded(name), unread }
}
