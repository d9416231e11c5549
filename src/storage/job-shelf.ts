import type { ReadResult } from '../job/read-job'
import type { Job } from '../job/schema'
import { moveAside, type SetAside, setAsideList } from './aside-pile'
import { type JobList, jobListOn } from './job-list'
import { jobIn, recordOf } from './job-record'
import { type KeptSpecs, keptSpecsOn } from './kept-specs'
import { lastOpen, lastOpenMark } from './last-open'
import { type Saving, saveJob } from './save-job'
import { connectionTo } from './shelf-database'
import { removeEntry } from './shelf-entries'
import { attempted, type Database, unlessFull, write } from './shelf-transaction'

export interface ShelfEntry {
  readonly id: string
  readonly name: string
  readonly changedAt: string
}

/** The jobs kept in this browser. Every failure is a `ShelfError` with a code. */
export interface Shelf {
  /** Resolves once the job is on the disk and what was read back equals what was written. */
  save(job: Job): Promise<void>
  /** All jobs, the last changed first. */
  list(): Promise<readonly ShelfEntry[]>
  /** The job; its problems where it cannot be read (it is then set aside, unless it is of a newer version). */
  read(id: string): Promise<ReadResult | undefined>
  /** What `read` would give, with the shelf left as it is: nothing marked, nothing set aside. */
  peek(id: string): Promise<ReadResult | undefined>
  remove(id: string): Promise<void>
  /** Id of the job that was saved or read last. */
  lastOpen(): Promise<string | undefined>
  /** What was set aside, for download. */
  setAside(): Promise<readonly SetAside[]>
  /** Takes a record off the pile once the user has it or does not want it. */
  discardSetAside(key: number): Promise<void>
  /** What a list of all jobs is made from. */
  readonly jobs: JobList
  /** Limits kept for use in other jobs. */
  readonly specs: KeptSpecs
  /** Closes the database; it is opened again when it is needed. */
  close(): Promise<void>
}

export interface ShelfOptions {
  /** The clock. */
  readonly now: () => Date
  readonly databaseName?: string
}

/** Opens the shelf. Rejects with a `ShelfError` where this browser keeps nothing. */
export async function openShelf({ now, databaseName = 'borewall' }: ShelfOptions): Promise<Shelf> {
  const connection = connectionTo(databaseName)
  await connection.open()
  const saving: Saving = { known: new Map(), now }
  const attempt = <Result>(step: (database: Database) => Promise<Result>) => attempted(connection, step)
  let lastSave: Promise<unknown> = Promise.resolve()
  return {
    save(job) {
      // One after the other: a save reads back what it wrote, not what the next one did.
      const done = lastSave.then(() => attempt((database) => saveJob(database, job, saving)))
      lastSave = done.then(nothing, nothing)
      return done
    },
    list: () => attempt((database) => list(database, now)),
    read: (id) => attempt((database) => read(database, id, saving)),
    peek: (id) => attempt((database) => peek(database, id)),
    remove: (id) => attempt((database) => remove(database, id, saving)),
    lastOpen: () => attempt(lastOpen),
    setAside: () => attempt(setAsideList),
    discardSetAside: (key) =>
      attempt((database) => write(database, (writing) => writing.objectStore('aside').delete(key))),
    jobs: jobListOn(attempt, now),
    specs: keptSpecsOn(attempt),
    close: () => connection.close(),
  }
}

function nothing(): void {}

async function list(database: Database, now: () => Date): Promise<readonly ShelfEntry[]> {
  const entries: ShelfEntry[] = []
  const unreadable: string[] = []
  for (const key of await database.getAllKeys('jobs')) {
    const record = recordOf(await database.get('jobs', key))
    if (record) entries.push({ id: record.id, name: record.name, changedAt: record.changedAt })
    else unreadable.push(key)
  }
  for (const key of unreadable) await unlessFull(moveAside(database, key, now))
  return entries.sort((a, b) => b.changedAt.localeCompare(a.changedAt))
}

async function read(database: Database, id: string, { known, now }: Saving): Promise<ReadResult | undefined> {
  const stored: unknown = await database.get('jobs', id)
  if (stored === undefined) return undefined
  const { result, text } = jobIn(stored)
  if (result.ok && text !== undefined) {
    known.set(id, text)
    await unlessFull(
      write(database, async (writing) => {
        await writing.objectStore('marks').put(id, lastOpenMark)
      }),
    )
    return result
  }
  const newer = !result.ok && result.problems.some(({ code }) => code === 'newer-version')
  if (!newer) await moveAside(database, id, now)
  return result
}

async function peek(database: Database, id: string): Promise<ReadResult | undefined> {
  const stored: unknown = await database.get('jobs', id)
  return stored === undefined ? undefined : jobIn(stored).result
}

async function remove(database: Database, id: string, { known }: Saving): Promise<void> {
  await write(database, async (writing) => {
    await writing.objectStore('jobs').delete(id)
    await removeEntry(writing, id)
    const marks = writing.objectStore('marks')
    if ((await marks.get(lastOpenMark)) === id) await marks.delete(lastOpenMark)
  })
  known.delete(id)
}
