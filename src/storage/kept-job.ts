import type { ReadResult } from '../job/read-job'
import { moveAside } from './aside-pile'
import { removeCopyMark } from './copy-marks'
import { jobIn, recordOf } from './job-record'
import { keepVersion, removeVersions, type VersionReason } from './job-versions'
import { historyIn } from './kept-history'
import { lastOpenMark } from './last-open'
import type { Knowing } from './save-job'
import { removeEntry } from './shelf-entries'
import { type Database, unlessFull, write } from './shelf-transaction'

/** A kept job, or why it cannot be read. */
export type KeptJob = ReadResult & {
  /** What can be undone and redone of it, as text. */
  readonly history?: string
  /** When it was changed last, ISO 8601, UTC. */
  readonly changedAt?: string
}

/** Reads a job to go on with it: this page may write over what it has read. */
export async function readKept(
  database: Database,
  id: string,
  { texts, now }: Knowing,
): Promise<KeptJob | undefined> {
  const reading = database.transaction(['jobs', 'history'])
  const stored: unknown = await reading.objectStore('jobs').get(id)
  const history: unknown = await reading.objectStore('history').get(id)
  if (stored === undefined) return undefined
  const { result, text } = jobIn(stored)
  if (result.ok && text !== undefined) {
    texts.set(id, text)
    await unlessFull(markOpen(database, id))
    const changedAt = recordOf(stored)?.changedAt ?? ''
    const kept = historyIn(history, changedAt)
    return { ...result, changedAt, ...(kept === undefined ? {} : { history: kept }) }
  }
  const newer = !result.ok && result.problems.some(({ code }) => code === 'newer-version')
  if (!newer) await moveAside(database, id, now)
  return result
}

async function markOpen(database: Database, id: string): Promise<void> {
  await write(database, async (writing) => {
    await writing.objectStore('marks').put(id, lastOpenMark)
  })
}

/** Reads a job and leaves the shelf as it is. */
export async function peekKept(database: Database, id: string): Promise<ReadResult | undefined> {
  const stored: unknown = await database.get('jobs', id)
  return stored === undefined ? undefined : jobIn(stored).result
}

/** The text of a kept job; absent where its record is damaged. */
export interface KeptText {
  readonly id: string
  readonly name: string
  readonly text: string | undefined
}

/** The texts of all kept jobs but those that are marked as deleted. */
export async function keptTexts(database: Database): Promise<readonly KeptText[]> {
  const texts: KeptText[] = []
  for (const id of await database.getAllKeys('jobs')) {
    const entry: unknown = await database.get('entries', id)
    if (typeof entry === 'object' && entry !== null && Reflect.get(entry, 'deletedAt') !== undefined) continue
    const record = recordOf(await database.get('jobs', id))
    texts.push({ id, name: record?.name ?? '', text: record?.text })
  }
  return texts
}

/** Whether what is kept of a job is still what this page read or wrote last. */
export type Standing = 'unknown' | 'same' | 'changed' | 'gone'

export async function standingOf(database: Database, id: string, { texts }: Knowing): Promise<Standing> {
  const known = texts.get(id)
  if (known === undefined) return 'unknown'
  const stored: unknown = await database.get('jobs', id)
  if (stored === undefined) return 'gone'
  return recordOf(stored)?.text === known ? 'same' : 'changed'
}

/** Keeps the job as it is kept now as an earlier version, before something takes its place. */
export async function keepVersionOf(
  database: Database,
  id: string,
  why: VersionReason,
  { now }: Knowing,
): Promise<void> {
  await write(database, async (writing) => {
    const before: unknown = await writing.objectStore('jobs').get(id)
    await keepVersion(writing, { before, why, now: now() })
  })
}

/** Takes a job off the shelf for good, with all that belongs to it. */
export async function removeKept(database: Database, id: string, { texts, saved }: Knowing): Promise<void> {
  await write(database, async (writing) => {
    await writing.objectStore('jobs').delete(id)
    await writing.objectStore('history').delete(id)
    await removeVersions(writing, id)
    await removeEntry(writing, id)
    await removeCopyMark(writing, id)
    const marks = writing.objectStore('marks')
    if ((await marks.get(lastOpenMark)) === id) await marks.delete(lastOpenMark)
  })
  texts.delete(id)
  saved.delete(id)
}
