import * as z from 'zod/mini'
import { type KeptSpec, longestSpecName } from '../job/kept-spec'
import { readJob } from '../job/read-job'
import { writeJob } from '../job/write-job'
import type { Attempt } from './shelf-transaction'

/** A kept spec as it is stored and exported: the text is that of a job without readings. */
export interface KeptSpecRecord {
  readonly id: string
  readonly name: string
  /** The day on which it was kept, as in 2024-05-31. */
  readonly typedOn: string
  readonly text: string
}

// Fields that a newer Borewall may have added are no reason to call a record unreadable.
const recordSchema = z.object({
  id: z.string().check(z.minLength(1)),
  name: z.string().check(z.maxLength(longestSpecName)),
  typedOn: z.iso.date(),
  text: z.string(),
})

/** A record that is no kept spec any more, or one of a newer Borewall: left as it is, and told of. */
export interface UnreadSpec {
  readonly id: string
  readonly name: string
}

export interface KeptSpecList {
  /** By name. */
  readonly specs: readonly KeptSpec[]
  readonly unread: readonly UnreadSpec[]
}

/** Limits that were typed once, kept for other jobs. */
export interface KeptSpecs {
  list(): Promise<KeptSpecList>
  /** Keeps a spec, in the place of that with its id. */
  put(spec: KeptSpec): Promise<void>
  remove(id: string): Promise<void>
}

export function keptSpecsOn(attempt: Attempt): KeptSpecs {
  return {
    list: () => attempt(async (database) => readKeptSpecs(await database.getAll('specs'))),
    put: (spec) =>
      attempt(async (database) => {
        const writing = database.transaction('specs', 'readwrite', { durability: 'strict' })
        await Promise.all([writing.store.put(specRecord(spec)), writing.done])
      }),
    remove: (id) =>
      attempt(async (database) => {
        const writing = database.transaction('specs', 'readwrite', { durability: 'strict' })
        await Promise.all([writing.store.delete(id), writing.done])
      }),
  }
}

export function specRecord({ id, name, typedOn, template }: KeptSpec): KeptSpecRecord {
  return { id, name, typedOn, text: writeJob(template) }
}

/** Kept specs from stored or imported records, by name, and those that cannot be read. */
export function readKeptSpecs(records: readonly unknown[]): KeptSpecList {
  const specs: KeptSpec[] = []
  const unread: UnreadSpec[] = []
  for (const record of records) {
    const spec = keptSpec(record)
    if (spec) specs.push(spec)
    else unread.push({ id: textIn(record, 'id'), name: textIn(record, 'name') })
  }
  specs.sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }))
  return { specs, unread }
}

function keptSpec(stored: unknown): KeptSpec | undefined {
  const record = recordSchema.safeParse(stored)
  if (!record.success) return undefined
  const { id, name, typedOn, text } = record.data
  const read = readJob(text)
  return read.ok ? { id, name, typedOn, template: read.job } : undefined
}

function textIn(record: unknown, field: string): string {
  const value: unknown =
    typeof record === 'object' && record !== null ? Reflect.get(record, field) : undefined
  return typeof value === 'string' ? value : ''
}
