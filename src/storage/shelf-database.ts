import { type IDBPDatabase, openDB } from 'idb'
import { ShelfError, shelfErrorOf } from './shelf-error'
import { arrangeStores, databaseVersion, type ShelfDatabase } from './shelf-stores'

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
      upgrade: arrangeStores,
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
