import type { DBSchema, IDBPDatabase } from 'idb'

/** A job as it is stored: its whole text, and beside it what tells jobs apart. */
export interface JobRecord {
  readonly id: string
  readonly formatVersion: number
  /** Date and time of the last change, ISO 8601, UTC. */
  readonly changedAt: string
  readonly name: string
  readonly text: string
}

export const setAsideReasons = [
  /** No job could be read from it. */
  'unreadable',
  /** Another tab, or a file with the same id, had put it there; it was not this page's to write over. */
  'replaced',
  /** A tab wanted to save it after another tab had taken the job over. */
  'overtaken',
] as const
export type SetAsideReason = (typeof setAsideReasons)[number]

export interface SetAsideRecord {
  readonly reason: SetAsideReason
  readonly setAsideAt: string
  /** The stored record, untouched: of any shape. */
  readonly record: unknown
}

/** A photograph under the hash of its bytes. */
export interface PhotoRecord {
  /** SHA-256 of the bytes, in hexadecimal. */
  readonly hash: string
  /** Media type, `image/jpeg` say. */
  readonly type: string
  readonly bytes: ArrayBuffer
}

/**
 * What is read is `unknown` wherever a record may have been written by a newer or a damaged page: it is
 * parsed by a schema. Each store holds records of one kind.
 */
export interface ShelfDatabase extends DBSchema {
  /** The jobs, under their id. */
  jobs: { key: string; value: unknown }
  /** What was moved out of the way. */
  aside: { key: number; value: SetAsideRecord }
  /** Single values by name: the job open last, say. */
  marks: { key: string; value: unknown }
  /** What a list shows of each job, under the job's id; the index goes by `changedAt`. */
  entries: { key: string; value: unknown; indexes: { 'by-changed': string } }
  /** Earlier texts of jobs, oldest first; the index goes by `jobId`. */
  versions: { key: number; value: unknown; indexes: { 'by-job': string } }
  /** What can be undone and redone of each job, under the job's id. */
  history: { key: string; value: unknown }
  /** Specs kept for use in other jobs, under their id. */
  specs: { key: string; value: unknown }
  /** Photographs, under their hash. */
  photos: { key: string; value: unknown }
  /** Radii of scans, under their hash. */
  scans: { key: string; value: unknown }
}

/** Version of the arrangement of stores, which is not the version of the job file. */
export const databaseVersion = 3

/** Brings the stores from any earlier arrangement to this one; what they hold stays as it is. */
export function arrangeStores(database: IDBPDatabase<ShelfDatabase>, oldVersion: number): void {
  if (oldVersion < 1) {
    database.createObjectStore('jobs', { keyPath: 'id' })
    database.createObjectStore('aside', { autoIncrement: true })
    database.createObjectStore('marks')
  }
  if (oldVersion < 2) {
    database.createObjectStore('entries', { keyPath: 'id' }).createIndex('by-changed', 'changedAt')
    database.createObjectStore('versions', { autoIncrement: true }).createIndex('by-job', 'jobId')
    database.createObjectStore('history', { keyPath: 'id' })
    database.createObjectStore('specs', { keyPath: 'id' })
    database.createObjectStore('photos', { keyPath: 'hash' })
  }
  if (oldVersion < 3) database.createObjectStore('scans', { keyPath: 'hash' })
}
