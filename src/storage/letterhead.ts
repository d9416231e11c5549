import * as z from 'zod/mini'
import { putAside } from './aside-pile'
import { type Attempt, write } from './shelf-transaction'

/** What stands at the head of a report: the shop's own, kept on this machine, part of no job. */
export interface Letterhead {
  readonly shopName: string
  /** As it was typed, line by line. */
  readonly address: string
  /** At which this shop serves Borewall. */
  readonly appAddress?: string
  readonly picture?: LetterheadPicture
}

export interface LetterheadPicture {
  readonly type: 'image/png' | 'image/jpeg'
  readonly base64: string
  readonly widthPx: number
  readonly heightPx: number
}

export const emptyLetterhead: Letterhead = { shopName: '', address: '' }

export const mostOfLetterhead = { shopName: 120, address: 600, addressLines: 8 } as const

const mostBase64 = 600_000
const version = 1

const side = z.int().check(z.gte(1), z.lte(10_000))
const pictureSchema = z.object({
  type: z.enum(['image/png', 'image/jpeg']),
  base64: z.string().check(z.maxLength(mostBase64), z.regex(/^[A-Za-z0-9+/]+={0,2}$/)),
  widthPx: side,
  heightPx: side,
})

const recordSchema = z.object({
  version: z.literal(version),
  shopName: z.string().check(z.maxLength(mostOfLetterhead.shopName)),
  address: z.string().check(z.maxLength(mostOfLetterhead.address)),
  appAddress: z.exactOptional(z.url({ protocol: /^https?$/ })),
  picture: z.exactOptional(pictureSchema),
})

export type LetterheadKept =
  | { readonly kind: 'kept'; readonly letterhead: Letterhead }
  /** What was kept could not be read and lies on the pile of what was set aside. */
  | { readonly kind: 'set-aside' }
  /** A newer Borewall keeps it; it is left as it is. */
  | { readonly kind: 'newer' }

export interface LetterheadStore {
  /** What is kept; what cannot be read is set aside under the name that is given. */
  read(nameOfAside: string): Promise<LetterheadKept>
  write(letterhead: Letterhead): Promise<void>
}

const mark = 'letterhead'

export function letterheadOn(attempt: Attempt, now: () => Date): LetterheadStore {
  return {
    read: (name) =>
      attempt(async (database) => {
        const stored: unknown = await database.get('marks', mark)
        const kept = keptLetterhead(stored)
        if (kept.kind !== 'set-aside') return kept
        await write(database, async (writing) => {
          await putAside(writing, { name, text: JSON.stringify(stored, null, 2) }, 'unreadable', now)
          await writing.objectStore('marks').delete(mark)
        })
        return kept
      }),
    write: (letterhead) =>
      attempt(async (database) => {
        const writing = database.transaction('marks', 'readwrite', { durability: 'strict' })
        await Promise.all([writing.store.put({ version, ...letterhead }, mark), writing.done])
      }),
  }
}

/** A stored record as a letterhead; where nothing is stored, an empty one. */
export function keptLetterhead(stored: unknown): LetterheadKept {
  if (stored === undefined) return { kind: 'kept', letterhead: emptyLetterhead }
  const record = recordSchema.safeParse(stored)
  if (!record.success) return isNewer(stored) ? { kind: 'newer' } : { kind: 'set-aside' }
  const { version: _, ...letterhead } = record.data
  return { kind: 'kept', letterhead }
}

function isNewer(stored: unknown): boolean {
  const found: unknown = typeof stored === 'object' && stored !== null && Reflect.get(stored, 'version')
  return typeof found === 'number' && Number.isInteger(found) && found > version
}
