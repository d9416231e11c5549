import type { IDBPDatabase, IDBPTransaction, StoreNames } from 'idb'
import type { Connection } from './shelf-database'
import { shelfErrorOf } from './shelf-error'
import type { ShelfDatabase } from './shelf-stores'

export type Database = IDBPDatabase<ShelfDatabase>
export type Writing = IDBPTransaction<ShelfDatabase, StoreNames<ShelfDatabase>[], 'readwrite'>

/** Does a step with the open database, whichever that is. */
export type Attempt = <Result>(step: (database: Database) => Promise<Result>) => Promise<Result>

/** Does something with the open database; every failure is a `ShelfError`. One that is closing is opened anew next time. */
export async function attempted<Result>(
  connection: Connection,
  step: (database: Database) => Promise<Result>,
): Promise<Result> {
  try {
    const database = await connection.open()
    try {
      return await step(database)
    } catch (error) {
      if (endsConnection(error)) connection.forget(database)
      throw error
    }
  } catch (error) {
    throw shelfErrorOf(error)
  }
}

/** What a transaction meets when the browser closes the database under it. */
function endsConnection(error: unknown): boolean {
  return (
    error instanceof DOMException && ['InvalidStateError', 'AbortError', 'UnknownError'].includes(error.name)
  )
}

/** One transaction over all stores: all of it is on the disk when this resolves, or none of it happened. */
export async function write<Result>(
  database: Database,
  step: (writing: Writing) => Promise<Result>,
): Promise<Result> {
  const writing = database.transaction([...database.objectStoreNames], 'readwrite', { durability: 'strict' })
  let result: Result
  try {
    result = await step(writing)
  } catch (error) {
    // The failure that led here is the one to report, not the abort that follows from it.
    await abandon(writing)
    throw writing.error ?? error
  }
  await writing.done
  return result
}

/** A full disk must not keep a job from being read; the next save says that it is full. */
export async function unlessFull(step: Promise<void>): Promise<void> {
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
