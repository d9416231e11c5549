import { photographHashes } from '../job/embedded-photographs'
import type { Job } from '../job/schema'
import type { JobForFile } from '../storage/photo-store'
import { ShelfError } from '../storage/shelf-error'
import { words } from '../words/words'
import { shelf } from './shelf-here'

/** The job as a file takes it along; without its photographs where the shelf fails, since a file is the rescue then. */
export async function jobForFile(job: Job): Promise<JobForFile> {
  const hashes = photographHashes(job)
  if (hashes.length === 0) return { job, notHere: [], noRoom: [] }
  try {
    return await (await shelf()).photos.withPhotos(job)
  } catch (error) {
    if (!(error instanceof ShelfError)) throw error
    return { job, notHere: hashes, noRoom: [] }
  }
}

/** What a file was written without, in words; nothing where it holds all. */
export function leftBehind({ notHere, noRoom }: JobForFile): string | undefined {
  const { leftOut } = words.photographs
  const parts = [
    ...(notHere.length > 0 ? [leftOut.notHere(notHere.length)] : []),
    ...(noRoom.length > 0 ? [leftOut.noRoom(noRoom.length)] : []),
  ]
  return parts.length === 0 ? undefined : parts.join(' ')
}
