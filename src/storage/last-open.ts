import type { Database } from './shelf-transaction'

/** The mark that holds the id of the job that was saved or read last. */
export const lastOpenMark = 'last-open'

export async function lastOpen(database: Database): Promise<string | undefined> {
  const id = await database.get('marks', lastOpenMark)
  return typeof id === 'string' ? id : undefined
}
