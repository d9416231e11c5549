import * as z from 'zod/mini'
import { photographHashes, withPhotographs } from '../job/embedded-photographs'
import { largestFileBytes } from '../job/file-text'
import { type EmbeddedPhotograph, type PhotographType, photographTypes } from '../job/photograph-record'
import type { Job } from '../job/schema'
import { writeJob } from '../job/write-job'
import { base64Of, bytesOfBase64 } from './base64'
import { contentHash } from './content-hash'
import { ShelfError } from './shelf-error'
import type { Attempt, Database } from './shelf-transaction'

/** A photograph as it is kept. */
export interface KeptPhoto {
  readonly type: PhotographType
  readonly bytes: Uint8Array<ArrayBuffer>
}

/** A job as a file takes it along, and the hashes of its photographs that stay behind. */
export interface JobForFile {
  readonly job: Job
  /** Not in this browser, or damaged here. */
  readonly notHere: readonly string[]
  /** With them the file would be larger than Borewall reads. */
  readonly noRoom: readonly string[]
}

/**
 * Photographs under the hash of their bytes. One is never taken away: an undo, an earlier version or another
 * job may name it.
 */
export interface PhotoStore {
  /** Resolves with the hash once the photograph is on the disk and what was read back is what was written. */
  put(photo: KeptPhoto): Promise<string>
  /** Undefined where it is not in this browser, or no longer what its hash says. */
  read(hash: string): Promise<KeptPhoto | undefined>
  /** The job with those of its photographs that are here and that a file has room for. */
  withPhotos(job: Job): Promise<JobForFile>
  /** Keeps the photographs that a file brought along; gives the hashes of those that are damaged. */
  takeIn(photographs: readonly EmbeddedPhotograph[]): Promise<readonly string[]>
}

export function photoStoreOn(attempt: Attempt): PhotoStore {
  const put = (photo: KeptPhoto) => attempt((database) => putPhoto(database, photo))
  const read = (hash: string) => attempt((database) => readPhoto(database, hash))
  return {
    put,
    read,
    withPhotos: (job) => forFile(job, read),
    async takeIn(photographs) {
      const damaged: string[] = []
      for (const { hash, type, base64 } of photographs) {
        const bytes = bytesOfBase64(base64)
        if (bytes === undefined || (await contentHash(bytes)) !== hash) damaged.push(hash)
        else await put({ type, bytes })
      }
      return damaged
    },
  }
}

const recordSchema = z.object({
  hash: z.string(),
  type: z.enum(photographTypes),
  bytes: z.instanceof(ArrayBuffer),
})

async function putPhoto(database: Database, { type, bytes }: KeptPhoto): Promise<string> {
  const hash = await contentHash(bytes)
  const writing = database.transaction('photos', 'readwrite', { durability: 'strict' })
  const record = { hash, type, bytes: bytes.slice().buffer }
  await Promise.all([writing.store.put(record), writing.done])
  if ((await readPhoto(database, hash)) === undefined) throw new ShelfError('mismatch')
  return hash
}

async function readPhoto(database: Database, hash: string): Promise<KeptPhoto | undefined> {
  const record = recordSchema.safeParse(await database.get('photos', hash))
  if (!record.success) return undefined
  const bytes = new Uint8Array(record.data.bytes)
  return (await contentHash(bytes)) === hash ? { type: record.data.type, bytes } : undefined
}

/** Of a file, left free for how its photographs are written down. */
const spareShare = 0.02

async function forFile(job: Job, read: PhotoStore['read']): Promise<JobForFile> {
  let room = largestFileBytes * (1 - spareShare) - new TextEncoder().encode(writeJob(job)).length
  const taken: EmbeddedPhotograph[] = []
  const notHere: string[] = []
  const noRoom: string[] = []
  for (const hash of photographHashes(job)) {
    const photo = await read(hash)
    const base64 = photo && base64Of(photo.bytes)
    if (!photo || base64 === undefined) notHere.push(hash)
    else if (base64.length > room) noRoom.push(hash)
    else {
      room -= base64.length
      taken.push({ hash, type: photo.type, base64 })
    }
  }
  return { job: withPhotographs(job, taken), notHere, noRoom }
}
