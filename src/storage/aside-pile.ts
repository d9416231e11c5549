import { removeEntry } from './shelf-entries'
import type { SetAsideReason } from './shelf-stores'
import { type Database, type Writing, write } from './shelf-transaction'

/** A record that was moved out of the way, as the text to download. */
export interface SetAside {
  readonly key: number
  readonly reason: SetAsideReason
  readonly setAsideAt: string
  readonly name: string
  readonly text: string
}

/** So many replaced copies are kept; unreadable records are kept without end. */
const mostReplaced = 50

/** Lays a record on the pile within a transaction, as it is. */
export async function putAside(
  writing: Writing,
  record: unknown,
  reason: SetAsideReason,
  now: () => Date,
): Promise<void> {
  const aside = writing.objectStore('aside')
  await aside.add({ reason, setAsideAt: now().toISOString(), record })
  if (reason === 'unreadable') return
  const replaced: number[] = []
  for (let cursor = await aside.openCursor(); cursor; cursor = await cursor.continue()) {
    if (cursor.value.reason !== 'unreadable') replaced.push(cursor.key)
  }
  for (const key of replaced.slice(0, -mostReplaced)) await aside.delete(key)
}

/** Moves an unreadable record to the pile in one step: at no moment is it in neither place. */
export async function moveAside(database: Database, id: string, now: () => Date): Promise<void> {
  await write(database, async (writing) => {
    const jobs = writing.objectStore('jobs')
    const record = await jobs.get(id)
    if (record === undefined) return
    await putAside(writing, record, 'unreadable', now)
    await jobs.delete(id)
    await removeEntry(writing, id)
  })
}

/** All that lies on the pile. */
export async function setAsideList(database: Database): Promise<readonly SetAside[]> {
  const found: SetAside[] = []
  const aside = database.transaction('aside').store
  for (let cursor = await aside.openCursor(); cursor; cursor = await cursor.continue()) {
    const { reason, setAsideAt, record } = cursor.value
    found.push({ key: cursor.key, reason, setAsideAt, ...asFile(record) })
  }
  return found
}

/** The text as it was saved where there is one, else all that the record holds. */
function asFile(record: unknown): { readonly name: string; readonly text: string } {
  const name = textIn(record, 'name') ?? ''
  return { name, text: textIn(record, 'text') ?? JSON.stringify(record, null, 2) }
}

function textIn(record: unknown, field: string): string | undefined {
  if (typeof record !== 'object' || record === null) return undefined
  const value: unknown = Reflect.get(record, field)
  return typeof value === 'string' ? value : undefined
}
