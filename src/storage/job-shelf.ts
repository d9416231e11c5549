import type { IDBPDatabase, IDBPTransaction } from 'idb'
import * as z from 'zod/mini'
import { type ReadResult, readJob } from '../job/read-job'
import { type Job, jobFormatVersion } from '../job/schema'
import { writeJob } from '../job/write-job'
import { type KeptSpecs, keptSpecsOn } from './kept-specs'
import { type Connection, connectionTo } from './shelf-database'
import { ShelfError, shelfErrorOf } from './shelf-error'
import type { JobRecord, SetAsideReason, ShelfDatabase } from './shelf-stores'

export interface ShelfEntry {
  readonly id: string
  readonly name: string
  readonly changedAt: string
}

/** A record that was moved out of the way, as the text to download. */
export interface SetAside {
  readonly key: number
  readonly reason: SetAsideReason
  readonly setAsideAt: string
  readonly name: string
  readonly text: string
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

// Fields that a newer Borewall may have added are no reason to call a record unreadable.
const recordSchema = z.object({
  id: z.string(),
  formatVersion: z.number(),
  changedAt: z.string(),
  name: z.string(),
  text: z.string(),
})

const lastOpenMark = 'last-open'
/** So many replaced copies are kept; unreadable records are kept without end. */
const mostReplaced = 50

type Database = IDBPDatabase<ShelfDatabase>
type Writing = IDBPTransaction<ShelfDatabase, ('jobs' | 'aside' | 'marks')[], 'readwrite'>

/** Opens the shelf. Rejects with a `ShelfError` where this browser keeps nothing. */
export async function openShelf({ now, databaseName = 'borewall' }: ShelfOptions): Promise<Shelf> {
  const connection = connectionTo(databaseName)
  await connection.open()
  /** Texts of the jobs as this page last read or wrote them: what it may write over. */
  const known = new Map<string, string>()
  const attempt = <Result>(step: (database: Database) => Promise<Result>) => attempted(connection, step)
  let lastSave: Promise<unknown> = Promise.resolve()
  return {
    save(job) {
      // One after the other: a save reads back what it wrote, not what the next one did.
      const saving = lastSave.then(() => attempt((database) => save(database, job, known, now)))
      lastSave = saving.then(nothing, nothing)
      return saving
    },
    list: () => attempt((database) => list(database, now)),
    read: (id) => attempt((database) => read(database, id, known, now)),
    peek: (id) => attempt(async (database) => resultOf(await database.get('jobs', id))?.result),
    remove: (id) => attempt((database) => remove(database, id, known)),
    lastOpen: () => attempt(lastOpen),
    setAside: () => attempt(setAsideList),
    discardSetAside: (key) =>
      attempt((database) => write(database, (writing) => writing.objectStore('aside').delete(key))),
    specs: keptSpecsOn(attempt),
    close: () => connection.close(),
  }
}

function nothing(): void {}

async function attempted<Result>(
  connection: Connection,
  step: (database: Database) => Promise<Result>,
): Promise<Result> {
  try {
    return await step(await connection.open())
  } catch (error) {
    throw shelfErrorOf(error)
  }
}

/** One transaction over all stores: all of it is on the disk when this resolves, or none of it happened. */
async function write(database: Database, step: (writing: Writing) => Promise<unknown>): Promise<void> {
  const writing = database.transaction(['jobs', 'aside', 'marks'], 'readwrite', { durability: 'strict' })
  try {
    await step(writing)
  } catch (error) {
    // The failure that led here is the one to report, not the abort that follows from it.
    await abandon(writing)
    throw writing.error ?? error
  }
  await writing.done
}

/** A full disk must not keep a job from being read; the next save says that it is full. */
async function unlessFull(step: Promise<void>): Promise<void> {
  try {
    await step
  } catch (error) {
    if (shelfErrorOf(error).code !== 'quota') throw error
  }
}

async function abandon(writing: Writing): Promise<void> {
  try {
    writing.abort()
  } catch (error) {
    if (!(error instanceof DOMException && error.name === 'InvalidStateError')) throw error
  }
  await writing.done.then(
    () => undefined,
    () => undefined,
  )
}

async function save(
  database: Database,
  job: Job,
  known: Map<string, string>,
  now: () => Date,
): Promise<void> {
  const { id, name, formatVersion } = job
  const changedAt = now().toISOString()
  const text = writeJob(job)
  const record: JobRecord = { id, formatVersion, changedAt, name, text }
  await write(database, async (writing) => {
    const jobs = writing.objectStore('jobs')
    const before = await jobs.get(id)
    if (before !== undefined) await keepWhatIsNotOurs(writing, before, { known: known.get(id), text, now })
    await jobs.put(record)
    await writing.objectStore('marks').put(id, lastOpenMark)
  })
  known.set(id, text)
  const stored = recordSchema.safeParse(await database.get('jobs', id))
  if (!stored.success || stored.data.text !== text) throw new ShelfError('mismatch')
}

interface Replacing {
  readonly known: string | undefined
  readonly text: string
  readonly now: () => Date
}

async function keepWhatIsNotOurs(writing: Writing, before: unknown, replacing: Replacing): Promise<void> {
  const record = recordSchema.safeParse(before)
  if (record.success && record.data.formatVersion > jobFormatVersion) throw new ShelfError('newer')
  const stored = record.success ? record.data.text : undefined
  if (stored !== undefined && (stored === replacing.known || stored === replacing.text)) return
  const readable = stored !== undefined && readJob(stored).ok
  await putAside(writing, before, readable ? 'replaced' : 'unreadable', replacing.now)
}

async function putAside(
  writing: Writing,
  record: unknown,
  reason: SetAsideReason,
  now: () => Date,
): Promise<void> {
  const aside = writing.objectStore('aside')
  await aside.add({ reason, setAsideAt: now().toISOString(), record })
  if (reason !== 'replaced') return
  const replaced: number[] = []
  for (let cursor = await aside.openCursor(); cursor; cursor = await cursor.continue()) {
    if (cursor.value.reason === 'replaced') replaced.push(cursor.key)
  }
  for (const key of replaced.slice(0, -mostReplaced)) await aside.delete(key)
}

/** Moves unreadable records aside in one step: at no moment is a record in neither place. */
async function moveAside(database: Database, id: string, now: () => Date): Promise<void> {
  await write(database, async (writing) => {
    const jobs = writing.objectStore('jobs')
    const record = await jobs.get(id)
    if (record === undefined) return
    await putAside(writing, record, 'unreadable', now)
    await jobs.delete(id)
  })
}

async function list(database: Database, now: () => Date): Promise<readonly ShelfEntry[]> {
  const entries: ShelfEntry[] = []
  const unreadable: string[] = []
  for (const key of await database.getAllKeys('jobs')) {
    const record = recordSchema.safeParse(await database.get('jobs', key))
    if (record.success) {
      const { id, name, changedAt } = record.data
      entries.push({ id, name, changedAt })
    } else unreadable.push(key)
  }
  for (const key of unreadable) await unlessFull(moveAside(database, key, now))
  return entries.sort((a, b) => b.changedAt.localeCompare(a.changedAt))
}

async function read(
  database: Database,
  id: string,
  known: Map<string, string>,
  now: () => Date,
): Promise<ReadResult | undefined> {
  const stored = resultOf(await database.get('jobs', id))
  if (stored === undefined) return undefined
  const { result, text } = stored
  if (result.ok && text !== undefined) {
    known.set(id, text)
    await unlessFull(write(database, (writing) => writing.objectStore('marks').put(id, lastOpenMark)))
    return result
  }
  const newer = !result.ok && result.problems.some(({ code }) => code === 'newer-version')
  if (!newer) await moveAside(database, id, now)
  return result
}

/** The job in a stored record, with its text where the record has one. */
function resultOf(
  stored: unknown,
): { readonly result: ReadResult; readonly text: string | undefined } | undefined {
  if (stored === undefined) return undefined
  const record = recordSchema.safeParse(stored)
  return record.success
    ? { result: readJob(record.data.text), text: record.data.text }
    : { result: { ok: false, problems: [{ code: 'not-a-job', path: '' }] }, text: undefined }
}

async function remove(database: Database, id: string, known: Map<string, string>): Promise<void> {
  await write(database, async (writing) => {
    await writing.objectStore('jobs').delete(id)
    const marks = writing.objectStore('marks')
    if ((await marks.get(lastOpenMark)) === id) await marks.delete(lastOpenMark)
  })
  known.delete(id)
}

async function lastOpen(database: Database): Promise<string | undefined> {
  const id = await database.get('marks', lastOpenMark)
  return typeof id === 'string' ? id : undefined
}

async function setAsideList(database: Database): Promise<readonly SetAside[]> {
  const found: SetAside[] = []
  const aside = database.transaction('aside').store
  for (let cursor = await aside.openCursor(); cursor; cursor = await cursor.continue()) {
    const { reason, setAsideAt, record } = cursor.value
    found.push({ key: cursor.key, reason, setAsideAt, ...asFile(record) })
  }
  return found
}

/** The text as it was saved where there is one, else all that the record holds. */
function asFile(record: unknown): { readonly name: string; readonly text: string } {
  const name = textIn(record, 'name') ?? ''
  return { name, text: textIn(record, 'text') ?? JSON.stringify(record, null, 2) }
}

function textIn(record: unknown, field: string): string | undefined {
  if (typeof record !== 'object' || record === null) return undefined
  const value: unknown = Reflect.get(record, field)
  return typeof value === 'string' ? value : undefined
}
