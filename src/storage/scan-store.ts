import * as z from 'zod/mini'
import { scanHashes, withScans } from '../job/embedded-scans'
import { largestFileBytes } from '../job/file-text'
import { mostOf } from '../job/most-of'
import { type KeptScan, scanBytes, scanOfBytes } from '../job/scan-bytes'
import type { EmbeddedScan } from '../job/scan-record'
import type { Job } from '../job/schema'
import { writeJob } from '../job/write-job'
import { base64Of, bytesOfBase64 } from './base64'
import { contentHash } from './content-hash'
import { ShelfError } from './shelf-error'
import type { Attempt, Database } from './shelf-transaction'

/** A job as a file takes it along, and the hashes of its scans that stay behind. */
export interface ScannedJobForFile {
  readonly job: Job
  /** Not in this browser, or damaged here. */
  readonly notHere: readonly string[]
  /** With them the file would be larger than Borewall reads. */
  readonly noRoom: readonly string[]
}

/** Scans under the hash of their bytes. One is never taken away: an undo, an earlier version or another job may name it. */
export interface ScanStore {
  /** Resolves with the hash once the scan is on the disk and what was read back is what was written. */
  put(scan: KeptScan): Promise<string>
  /** Undefined where it is not in this browser, or no longer what its hash says. */
  read(hash: string): Promise<KeptScan | undefined>
  /** The job with those of its scans that are here and that a file has room for. */
  withScans(job: Job): Promise<ScannedJobForFile>
  /** Keeps the scans that a file brought along; gives the hashes of those that are damaged. */
  takeIn(scans: readonly EmbeddedScan[]): Promise<readonly string[]>
}

export function scanStoreOn(attempt: Attempt): ScanStore {
  const putBytes = (bytes: Uint8Array) => attempt((database) => putScan(database, bytes))
  const readBytes = (hash: string) => attempt((database) => readScan(database, hash))
  return {
    put: (scan) => putBytes(scanBytes(scan)),
    async read(hash) {
      const bytes = await readBytes(hash)
      return bytes && scanOfBytes(bytes)
    },
    withScans: (job) => forFile(job, readBytes),
    async takeIn(scans) {
      const damaged: string[] = []
      for (const embedded of scans) {
        const found = await scanInFile(embedded)
        if (found) await putBytes(found.bytes)
        else damaged.push(embedded.hash)
      }
      return damaged
    },
  }
}

/** A scan that a file brought along; undefined where it is not what its hash says, or no scan. */
export async function scanInFile({
  hash,
  base64,
}: EmbeddedScan): Promise<{ readonly bytes: Uint8Array<ArrayBuffer>; readonly scan: KeptScan } | undefined> {
  const bytes = bytesOfBase64(base64)
  if (bytes === undefined || (await contentHash(bytes)) !== hash) return undefined
  const scan = scanOfBytes(bytes)
  return scan && { bytes, scan }
}

const recordSchema = z.object({ hash: z.string(), bytes: z.instanceof(ArrayBuffer) })

async function putScan(database: Database, bytes: Uint8Array): Promise<string> {
  const own = bytes.slice()
  const hash = await contentHash(own)
  const writing = database.transaction('scans', 'readwrite', { durability: 'strict' })
  await Promise.all([writing.store.put({ hash, bytes: own.buffer }), writing.done])
  if ((await readScan(database, hash)) === undefined) throw new ShelfError('mismatch')
  return hash
}

async function readScan(database: Database, hash: string): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const record = recordSchema.safeParse(await database.get('scans', hash))
  if (!record.success) return undefined
  const bytes = new Uint8Array(record.data.bytes)
  return (await contentHash(bytes)) === hash ? bytes : undefined
}

/** Of a file, left free for how its scans are written down. */
const spareShare = 0.02

async function forFile(
  job: Job,
  read: (hash: string) => Promise<Uint8Array | undefined>,
): Promise<ScannedJobForFile> {
  const hashes = scanHashes(job)
  if (hashes.length === 0) return { job, notHere: [], noRoom: [] }
  let room = largestFileBytes * (1 - spareShare) - new TextEncoder().encode(writeJob(job)).length
  const taken: EmbeddedScan[] = []
  const notHere: string[] = []
  const noRoom: string[] = []
  for (const hash of hashes) {
    const bytes = await read(hash)
    const base64 = bytes && base64Of(bytes)
    if (base64 === undefined) notHere.push(hash)
    else if (base64.length > Math.min(room, mostOf.base64Length)) noRoom.push(hash)
    else {
      room -= base64.length
      taken.push({ hash, base64 })
    }
  }
  return { job: withScans(job, taken), notHere, noRoom }
}
