import type { ReadResult } from '../job/read-job'
import type { Job } from '../job/schema'
import { moveAside, type SetAside, setAsideList } from './aside-pile'
import { type CopyFolder, copyFolderOn } from './copy-folder'
import { type CopyMark, copyMarkOf, markCopies } from './copy-marks'
import { type JobList, jobListOn } from './job-list'
import { recordOf } from './job-record'
import { type JobVersion, type VersionReason, versionsOf } from './job-versions'
import {
  type KeptJob,
  type KeptText,
  keepVersionOf,
  keptTexts,
  peekKept,
  readKept,
  removeKept,
  type Standing,
  standingOf,
} from './kept-job'
import { type KeptSpecs, keptSpecsOn } from './kept-specs'
import { lastOpen } from './last-open'
import { type LetterheadStore, letterheadOn } from './letterhead'
import { type PhotoStore, photoStoreOn } from './photo-store'
import { type Knowing, type Saved, type SaveOptions, saveJob } from './save-job'
import { type ScanStore, scanStoreOn } from './scan-store'
import { type Connection, connectionTo } from './shelf-database'
import { attempted, type Database, unlessFull, write } from './shelf-transaction'

export interface ShelfEntry {
  readonly id: string
  readonly name: string
  readonly changedAt: string
}

/** The jobs kept in this browser. Every failure is a `ShelfError` with a code. */
export interface Shelf {
  /** Resolves once the job is on the disk and what was read back equals what was written. */
  save(job: Job, options?: SaveOptions): Promise<Saved>
  /** All jobs, the last changed first. */
  list(): Promise<readonly ShelfEntry[]>
  /** The job; its problems where it cannot be read (it is then set aside, unless it is of a newer version). */
  read(id: string): Promise<KeptJob | undefined>
  /** What `read` would give, with the shelf left as it is: nothing marked, nothing set aside. */
  peek(id: string): Promise<ReadResult | undefined>
  /** The texts of all jobs that are not deleted. */
  keptTexts(): Promise<readonly KeptText[]>
  /** Whether what is kept is still what this page read or wrote last. */
  standing(id: string): Promise<Standing>
  /** A job that is gone may be kept again by the next save. */
  keepAgain(id: string): void
  /** The job as it stood earlier, the newest first. */
  versions(id: string): Promise<readonly JobVersion[]>
  /** Keeps the job as it is kept now as an earlier version. */
  keepVersion(id: string, why: VersionReason): Promise<void>
  remove(id: string): Promise<void>
  /** When the job was last copied out of this browser. */
  copyMark(id: string): Promise<CopyMark>
  markCopies(ids: readonly string[], change: CopyMark): Promise<void>
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
  /** Photographs under their content. */
  readonly photos: PhotoStore
  /** Radii of scans under their content. */
  readonly scans: ScanStore
  /** The shop's own head of a report. */
  readonly letterhead: LetterheadStore
  /** Where copies outside the browser are written. */
  readonly copyFolder: CopyFolder
  /** Closes the database; it is opened again when it is needed. */
  close(): Promise<void>
}

export interface ShelfOptions {
  /** The clock. */
  readonly now: () => Date
  /** The browser's database; opened anew where it is not given. */
  readonly connection?: Connection
}

/** Opens the shelf. Rejects with a `ShelfError` where this browser keeps nothing. */
export async function openShelf({ now, connection = connectionTo() }: ShelfOptions): Promise<Shelf> {
  await connection.open()
  const knowing: Knowing = { texts: new Map(), saved: new Map(), now }
  const attempt = <Result>(step: (database: Database) => Promise<Result>) => attempted(connection, step)
  let lastSave: Promise<unknown> = Promise.resolve()
  return {
    save(job, options = {}) {
      // One after the other: a save reads back what it wrote, not what the next one did.
      const done = lastSave.then(() => attempt((database) => saveJob(database, job, options, knowing)))
      lastSave = done.then(nothing, nothing)
      return done
    },
    list: () => attempt((database) => list(database, now)),
    read: (id) => attempt((database) => readKept(database, id, knowing)),
    peek: (id) => attempt((database) => peekKept(database, id)),
    keptTexts: () => attempt(keptTexts),
    standing: (id) => attempt((database) => standingOf(database, id, knowing)),
    keepAgain: (id) => void knowing.texts.delete(id),
    versions: (id) => attempt((database) => versionsOf(database, id)),
    keepVersion: (id, why) => attempt((database) => keepVersionOf(database, id, why, knowing)),
    copyMark: (id) => attempt((database) => copyMarkOf(database, id)),
    markCopies: (ids, change) => attempt((database) => markCopies(database, ids, change)),
    remove: (id) => attempt((database) => removeKept(database, id, knowing)),
    lastOpen: () => attempt(lastOpen),
    setAside: () => attempt(setAsideList),
    discardSetAside: (key) =>
      attempt((database) => write(database, (writing) => writing.objectStore('aside').delete(key))),
    jobs: jobListOn(attempt, now),
    specs: keptSpecsOn(attempt),
    photos: photoStoreOn(attempt),
    scans: scanStoreOn(attempt),
    letterhead: letterheadOn(attempt, now),
    copyFolder: copyFolderOn(attempt),
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
