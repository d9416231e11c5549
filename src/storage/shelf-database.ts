import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import { ShelfError, shelfErrorOf } from './shelf-error'

/** A job as it is stored: its whole text, and beside it what a list of jobs shows. */
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
] as const
export type SetAsideReason = (typeof setAsideReasons)[number]

export interface SetAsideRecord {
  readonly reason: SetAsideReason
  readonly setAsideAt: string
  /** The stored record, untouched: of any shape. */
  readonly record: unknown
}

export interface ShelfDatabase extends DBSchema {
  jobs: { key: string; value: unknown }
  aside: { key: number; value: SetAsideRecord }
  marks: { key: string; value: unknown }
}

/** Version of the arrangement of stores, which is not the version of the job file. */
export const databaseVersion = 1

export interface Connection {
  /** The open database, opened when it is not (any more). Rejects with a `ShelfError`. */
  open(): Promise<IDBPDatabase<ShelfDatabase>>
  close(): Promise<void>
}

export function connectionTo(databaseName: string): Connection {
  let opened: Promise<IDBPDatabase<ShelfDatabase>> | undefined
  const forget = () => {
    opened = undefined
  }
  return {
    open() {
      opened ??= openShelfDatabase(databaseName, forget).catch((error: unknown) => {
        forget()
        throw shelfErrorOf(error)
      })
      return opened
    },
    async close() {
      const closing = opened
      forget()
      if (closing) (await closing).close()
    },
  }
}

async function openShelfDatabase(name: string, onClosed: () => void): Promise<IDBPDatabase<ShelfDatabase>> {
  // Touching it throws in some browsers that keep nothing, and it is absent in others.
  if (typeof indexedDB === 'undefined' || indexedDB === null) throw new ShelfError('unavailable')
  return new Promise((resolve, reject) => {
    let refused = false
    const opening = openDB<ShelfDatabase>(name, databaseVersion, {
      upgrade(database) {
        database.createObjectStore('jobs', { keyPath: 'id' })
        database.createObjectStore('aside', { autoIncrement: true })
        database.createObjectStore('marks')
      },
      blocked() {
        refused = true
        reject(new ShelfError('blocked'))
      },
      blocking(_current, _wanted, event) {
        // A newer Borewall in another tab wants to rearrange the stores: do not stand in its way.
        const { target } = event
        if (target instanceof IDBDatabase) target.close()
        onClosed()
      },
      terminated: onClosed,
    })
    opening.then((database) => {
      // It came after all, when nobody waits for it: left open it would block the next tab.
      if (refused) database.close()
      else resolve(database)
    }, reject)
  })
}
