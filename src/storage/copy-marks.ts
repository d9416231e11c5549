import * as z from 'zod/mini'
import type { Database, Writing } from './shelf-transaction'

// Fields that a newer Borewall may have added are no reason to forget the mark.
const markSchema = z.object({
  copiedAt: z.optional(z.iso.datetime()),
  dismissedAt: z.optional(z.iso.datetime()),
})

/** When a job was last copied out of the browser, and when its reminder was last put away; ISO 8601, UTC. */
export interface CopyMark {
  readonly copiedAt?: string | undefined
  readonly dismissedAt?: string | undefined
}

export async function copyMarkOf(database: Database, id: string): Promise<CopyMark> {
  const mark = markSchema.safeParse(await database.get('marks', keyOf(id)))
  return mark.success ? mark.data : {}
}

/** Changes the marks of these jobs in one transaction. */
export async function markCopies(
  database: Database,
  ids: readonly string[],
  change: CopyMark,
): Promise<void> {
  const writing = database.transaction('marks', 'readwrite')
  for (const id of ids) {
    const before = markSchema.safeParse(await writing.store.get(keyOf(id)))
    await writing.store.put({ ...(before.success ? before.data : {}), ...change }, keyOf(id))
  }
  await writing.done
}

/** Takes the mark of a job away, in the transaction that removes the job. */
export async function removeCopyMark(writing: Writing, id: string): Promise<void> {
  await writing.objectStore('marks').delete(keyOf(id))
}

function keyOf(id: string): string {
  return `copy ${id}`
}
