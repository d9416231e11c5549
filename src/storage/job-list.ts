import type { BoreMap } from '../job/job-summary'
import { type ListedJob, listedJob, storedMaps } from '../job/listed-job'
import type { Job } from '../job/schema'
import { writeJob } from '../job/write-job'
import { recordOf } from './job-record'
import { lastOpenMark } from './last-open'
import { afterMaps, mapsKey, markEntry, putEntry, renewEntry } from './shelf-entries'
import { ShelfError } from './shelf-error'
import { type Attempt, type Database, type Writing, write } from './shelf-transaction'

/** What a list of all jobs is made from, without reading any job. */
export interface JobList {
  /** The jobs on the shelf that changed last, the latest first: so many at most, archived and deleted ones left out. */
  newest(most: number): Promise<readonly ListedJob[]>
  /** How many jobs are kept, archived and deleted ones with them. */
  count(): Promise<number>
  /** The name under which a job is kept. */
  nameOf(id: string): Promise<string | undefined>
  /** Keeps a job that is not there yet; which was open last stays as it was. */
  add(job: Job): Promise<ListedJob | undefined>
  /** All of them, in no order; those that have no entry yet are missing. */
  all(): Promise<readonly ListedJob[]>
  /** Ids of kept jobs whose entry is missing, damaged or of another version. */
  unlisted(): Promise<readonly string[]>
  /** The maps of these jobs, by their id. */
  maps(ids: readonly string[]): Promise<ReadonlyMap<string, readonly BoreMap[]>>
  /** Makes the entry of a job anew. */
  renew(id: string): Promise<ListedJob | undefined>
  /** Puts a job away, or takes it back to the shelf. */
  archive(id: string, isArchived: boolean): Promise<void>
  /** Marks a job as deleted, or takes that back; it stays in the database. */
  markDeleted(id: string, isDeleted: boolean): Promise<void>
}

export function jobListOn(attempt: Attempt, now: () => Date): JobList {
  const writing = (step: (writing: Writing) => Promise<void>) => attempt((database) => write(database, step))
  return {
    newest: (most) => attempt((database) => newest(database, most)),
    count: () => attempt((database) => database.count('jobs')),
    nameOf: (id) => attempt(async (database) => recordOf(await database.get('jobs', id))?.name),
    add: (job) => attempt((database) => add(database, job, now)),
    all: () => attempt(all),
    unlisted: () => attempt(unlisted),
    maps: (ids) => attempt((database) => mapsOf(database, ids)),
    renew: (id) =>
      attempt(async (database) => {
        await write(database, (renewing) => renewEntry(renewing, id))
        return listedJob(await database.get('entries', id))
      }),
    archive: (id, isArchived) =>
      writing((one) => markEntry(one, id, { archivedAt: isArchived ? now().toISOString() : undefined })),
    markDeleted: (id, isDeleted) =>
      writing(async (one) => {
        await markEntry(one, id, { deletedAt: isDeleted ? now().toISOString() : undefined })
        const marks = one.objectStore('marks')
        if (isDeleted && (await marks.get(lastOpenMark)) === id) await marks.delete(lastOpenMark)
      }),
  }
}

async function add(database: Database, job: Job, now: () => Date): Promise<ListedJob | undefined> {
  const { id, name, formatVersion } = job
  const changedAt = now().toISOString()
  const text = writeJob(job)
  await write(database, async (writing) => {
    await writing.objectStore('jobs').add({ id, formatVersion, changedAt, name, text })
    await putEntry(writing, job, changedAt)
  })
  if (recordOf(await database.get('jobs', id))?.text !== text) throw new ShelfError('mismatch')
  return listedJob(await database.get('entries', id))
}

/** Archived and deleted jobs are passed over, so more are looked at than asked for; seldom twice. */
async function newest(database: Database, most: number): Promise<ListedJob[]> {
  const byChanged = database.transaction('entries').store.index('by-changed')
  for (let looked = most + 20; ; looked *= 4) {
    // Where the latest so many begin; a cursor through all of them would be a question to the database for each.
    const cursor = await byChanged.openKeyCursor(null, 'prev')
    const from = await cursor?.advance(looked)
    const stored: unknown[] = await byChanged.getAll(from ? IDBKeyRange.lowerBound(from.key) : null)
    const found = stored.flatMap((one) => onShelf(one) ?? []).reverse()
    if (found.length >= most || !from) return found.slice(0, most)
  }
}

function onShelf(stored: unknown): ListedJob | undefined {
  const entry = listedJob(stored)
  return entry?.archivedAt === undefined && entry?.deletedAt === undefined ? entry : undefined
}

/** So many at once: between two lots the page can answer. */
const lot = 2500

async function all(database: Database): Promise<ListedJob[]> {
  const listed: ListedJob[] = []
  let from = IDBKeyRange.lowerBound(afterMaps)
  for (;;) {
    const stored: unknown[] = await database.getAll('entries', from, lot)
    for (const one of stored) {
      const entry = listedJob(one)
      if (entry) listed.push(entry)
    }
    const last = stored.at(-1)
    if (stored.length < lot || last === undefined) return listed
    from = IDBKeyRange.lowerBound(keyOf(last), true)
  }
}

/** The store takes in no record without one. */
function keyOf(stored: unknown): string {
  const key: unknown = typeof stored === 'object' && stored !== null ? Reflect.get(stored, 'id') : undefined
  if (typeof key !== 'string') throw new Error('An entry of the list has no id')
  return key
}

async function unlisted(database: Database): Promise<string[]> {
  const listed = new Set((await all(database)).map(({ id }) => id))
  return (await database.getAllKeys('jobs')).filter((id) => !listed.has(id))
}

async function mapsOf(
  database: Database,
  ids: readonly string[],
): Promise<ReadonlyMap<string, readonly BoreMap[]>> {
  const { store } = database.transaction('entries')
  const maps = await Promise.all(
    ids.map(async (id) => [id, storedMaps(await store.get(mapsKey(id))) ?? []] as const),
  )
  return new Map(maps)
}
