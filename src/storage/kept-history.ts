import * as z from 'zod/mini'
import type { Writing } from './shelf-transaction'

// Fields that a newer Borewall may have added are no reason to call a record unreadable.
const historySchema = z.object({ id: z.string(), changedAt: z.string(), text: z.string() })

/** Keeps what can be undone of a job, in the transaction that saves the job; nothing where there is none. */
export async function putHistory(
  writing: Writing,
  id: string,
  changedAt: string,
  text: string | undefined,
): Promise<void> {
  const store = writing.objectStore('history')
  if (text === undefined) await store.delete(id)
  else await store.put({ id, changedAt, text })
}

/** The text of the history that was kept with the job as it was changed then; undefined for any other. */
export function historyIn(stored: unknown, changedAt: string): string | undefined {
  const record = historySchema.safeParse(stored)
  return record.success && record.data.changedAt === changedAt ? record.data.text : undefined
}
