import * as z from 'zod/mini'
import { type ReadResult, readJob } from '../job/read-job'
import { recordOf } from './job-record'
import type { Database, Writing } from './shelf-transaction'
import { versionEvery, versionsToDrop } from './thinned-versions'

export const versionReasons = [
  /** The job as it was when this page began to change it. */
  'session',
  /** In the course of changing it. */
  'interval',
  /** Before an earlier version took its place. */
  'restore',
  /** Before another tab took it over. */
  'take-over',
  /** Before a file took its place. */
  'replace',
] as const
export type VersionReason = (typeof versionReasons)[number]

/** A job as it stood earlier. */
export interface JobVersion {
  readonly key: number
  /** When it was last changed in this version, ISO 8601, UTC. */
  readonly changedAt: string
  readonly why: VersionReason
  /** The job, or why it cannot be read. */
  readonly read: ReadResult
}

// Fields that a newer Borewall may have added are no reason to call a version unreadable.
const versionSchema = z.object({
  jobId: z.string(),
  changedAt: z.iso.datetime(),
  keptAt: z.iso.datetime(),
  why: z.enum(versionReasons),
  text: z.string(),
})
type VersionRecord = z.output<typeof versionSchema>

interface Stored {
  readonly key: number
  readonly version: VersionRecord
}

async function storedVersions(reading: Writing, jobId: string): Promise<Stored[]> {
  const found: Stored[] = []
  const index = reading.objectStore('versions').index('by-job')
  for (let cursor = await index.openCursor(jobId); cursor; cursor = await cursor.continue()) {
    const version = versionSchema.safeParse(cursor.value)
    if (version.success) found.push({ key: cursor.primaryKey, version: version.data })
  }
  return found
}

export interface Earlier {
  /** The stored record that is about to be written over. */
  readonly before: unknown
  /** Absent: it is kept only when the last one was kept long enough ago. */
  readonly why?: VersionReason
  /** When this page began to save the job, ms since 1970. */
  readonly since?: number
  readonly now: Date
}

/** Keeps the stored job as an earlier version where one is due, in the transaction that writes over it. */
export async function keepVersion(writing: Writing, { before, why, since = 0, now }: Earlier): Promise<void> {
  const record = recordOf(before)
  if (!record) return
  const last = await lastKept(writing, record.id)
  if (last?.text === record.text) return
  const lastAt = Math.max(since, last === undefined ? 0 : Date.parse(last.keptAt))
  if (why === undefined && now.getTime() - lastAt < versionEvery) return
  const { id: jobId, changedAt, text } = record
  const version: VersionRecord = { jobId, changedAt, keptAt: now.toISOString(), why: why ?? 'interval', text }
  const store = writing.objectStore('versions')
  await store.add(version)
  const ages = (await storedVersions(writing, jobId)).map((each) => ({
    key: each.key,
    at: Date.parse(each.version.changedAt),
  }))
  for (const dropped of versionsToDrop(ages, now.getTime())) await store.delete(dropped)
}

async function lastKept(writing: Writing, jobId: string): Promise<VersionRecord | undefined> {
  const cursor = await writing.objectStore('versions').index('by-job').openCursor(jobId, 'prev')
  const version = versionSchema.safeParse(cursor?.value)
  return version.success ? version.data : undefined
}

/** The earlier versions of a job, the newest first. */
export async function versionsOf(database: Database, jobId: string): Promise<readonly JobVersion[]> {
  const index = database.transaction('versions').store.index('by-job')
  const found: JobVersion[] = []
  for (let cursor = await index.openCursor(jobId); cursor; cursor = await cursor.continue()) {
    const version = versionSchema.safeParse(cursor.value)
    if (!version.success) continue
    const { changedAt, why, text } = version.data
    found.push({ key: cursor.primaryKey, changedAt, why, read: readJob(text) })
  }
  return found.sort((one, other) => other.changedAt.localeCompare(one.changedAt) || other.key - one.key)
}

/** Takes away all earlier versions of a job, in the transaction that removes it. */
export async function removeVersions(writing: Writing, jobId: string): Promise<void> {
  const store = writing.objectStore('versions')
  for (const key of await store.index('by-job').getAllKeys(jobId)) await store.delete(key)
}
