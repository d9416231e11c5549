import { type IDBPDatabase, openDB } from 'idb'
import { ShelfError, shelfErrorOf } from './shelf-error'
import { arrangeStores, databaseVersion, type ShelfDatabase } from './shelf-stores'

export interface Connection {
  /** The open database, opened when it is not (any more). Rejects with a `ShelfError`. */
  open(): Promise<IDBPDatabase<ShelfDatabase>>
  /** Lets go of a database that is of no use any more, so that the next call opens one. */
  forget(database: IDBPDatabase<ShelfDatabase>): void
  close(): Promise<void>
}

export function connectionTo(databaseName = 'borewall'): Connection {
  let opened: Promise<IDBPDatabase<ShelfDatabase>> | undefined
  let held: IDBPDatabase<ShelfDatabase> | undefined
  /** An older tab stands in the way of a request that has not been answered yet. */
  let isBlocked = false
  const forget = () => {
    opened = undefined
  }
  const start = () =>
    openShelfDatabase(databaseName, {
      onClosed: forget,
      onBlocked() {
        isBlocked = true
      },
      onAnswered(database) {
        isBlocked = false
        // It came after all: what asks from now on gets it.
        if (database && !opened) {
          held = database
          opened = Promise.resolve(database)
        }
      },
    })
  return {
    open() {
      // A further request would wait behind the one that is blocked, and say nothing.
      if (isBlocked) return Promise.reject(new ShelfError('blocked'))
      opened ??= start().then(
        (database) => {
          held = database
          return database
        },
        (error: unknown) => {
          forget()
          throw shelfErrorOf(error)
        },
      )
      return opened
    },
    forget(database) {
      // Closed, or a later version that rearranges the stores would wait for it.
      database.close()
      if (database === held) forget()
    },
    async close() {
      const closing = opened
      forget()
      if (closing) (await closing).close()
    },
  }
}

interface Listeners {
  readonly onClosed: () => void
  readonly onBlocked: () => void
  /** A request that was blocked came through with a database, or failed. */
  readonly onAnswered: (database: IDBPDatabase<ShelfDatabase> | undefined) => void
}

async function openShelfDatabase(
  name: string,
  { onClosed, onBlocked, onAnswered }: Listeners,
): Promise<IDBPDatabase<ShelfDatabase>> {
  // Touching it throws in some browsers that keep nothing, and it is absent in others.
  if (typeof indexedDB === 'undefined' || indexedDB === null) throw new ShelfError('unavailable')
  return new Promise((resolve, reject) => {
    let refused = false
    const opening = openDB<ShelfDatabase>(name, databaseVersion, {
      upgrade: arrangeStores,
      blocked() {
        refused = true
        onBlocked()
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
    opening.then(
      (database) => {
        if (refused) onAnswered(database)
        else resolve(database)
      },
      (error: unknown) => {
        if (refused) onAnswered(undefined)
        else reject(error)
      },
    )
  })
}
