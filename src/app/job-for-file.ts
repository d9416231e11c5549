import { photographHashes, withoutPhotographs } from '../job/embedded-photographs'
import { scanHashes, withoutScans } from '../job/embedded-scans'
import type { Job } from '../job/schema'
import type { Shelf } from '../storage/job-shelf'
import { ShelfError } from '../storage/shelf-error'
import { words } from '../words/words'
import { keepInMind } from './scans-here'
import { shelf } from './shelf-here'

/** What stays behind of one kind, by its hashes. */
export interface LeftBehind {
  /** Not in this browser, or damaged here. */
  readonly notHere: readonly string[]
  /** With them the file would be larger than Borewall reads. */
  readonly noRoom: readonly string[]
}

/** A job as a file takes it along, and what stays behind of what it names. */
export interface JobForFile {
  readonly job: Job
  readonly scans: LeftBehind
  readonly photographs: LeftBehind
}

/** The job with its scans, and then its photographs, as far as a file has room: scans are what was measured. */
export async function jobForFileFrom(open: Pick<Shelf, 'scans' | 'photos'>, job: Job): Promise<JobForFile> {
  const { job: scanned, ...scans } = await open.scans.withScans(job)
  const { job: whole, ...photographs } = await open.photos.withPhotos(scanned)
  return { job: whole, scans, photographs }
}

/** The job as a file takes it along; bare where the shelf fails, since a file is the rescue then. */
export async function jobForFile(job: Job): Promise<JobForFile> {
  const hashes = { scans: scanHashes(job), photographs: photographHashes(job) }
  const none = { notHere: [], noRoom: [] }
  if (hashes.scans.length + hashes.photographs.length === 0) return { job, scans: none, photographs: none }
  try {
    return await jobForFileFrom(await shelf(), job)
  } catch (error) {
    if (!(error instanceof ShelfError)) throw error
    const missing = (notHere: readonly string[]) => ({ notHere, noRoom: [] })
    return { job, scans: missing(hashes.scans), photographs: missing(hashes.photographs) }
  }
}

/** What a file was written without, in words; nothing where it holds all. */
export function leftBehind({ scans, photographs }: JobForFile): string | undefined {
  const parts = [
    ...leftOutTexts(words.scans.leftOut, scans),
    ...leftOutTexts(words.photographs.leftOut, photographs),
  ]
  return parts.length === 0 ? undefined : parts.join(' ')
}

type LeftOutWords = typeof words.photographs.leftOut

function leftOutTexts(said: LeftOutWords, { notHere, noRoom }: LeftBehind): string[] {
  return [
    ...(notHere.length > 0 ? [said.notHere(notHere.length)] : []),
    ...(noRoom.length > 0 ? [said.noRoom(noRoom.length)] : []),
  ]
}

/** A job as it is worked on, and what its file brought along. */
export interface JobFromFile {
  readonly job: Job
  /** Lets its scans be looked at in this tab. */
  keepInMind(): Promise<void>
  /** Keeps what came along; gives how much of it is damaged. */
  takeIn(open: Shelf): Promise<DamagedInFile>
}

export interface DamagedInFile {
  readonly photographs: number
  readonly scans: number
}

/** Takes a job apart from the photographs and the scans in its file. */
export function jobFromFile(whole: Job): JobFromFile {
  const { job: scanned, photographs } = withoutPhotographs(whole)
  const { job, scans } = withoutScans(scanned)
  const isEmpty = photographs.length + scans.length === 0
  return {
    job,
    keepInMind: () => keepInMind(scans),
    async takeIn(open) {
      if (isEmpty) return { photographs: 0, scans: 0 }
      const damaged = await open.scans.takeIn(scans)
      return { photographs: (await open.photos.takeIn(photographs)).length, scans: damaged.length }
    },
  }
}

/** What is damaged of what a file brought along, in words; nothing where all is whole. */
export function damagedText({ photographs, scans }: DamagedInFile): string | undefined {
  const parts = [
    ...(scans > 0 ? [words.scans.damaged(scans)] : []),
    ...(photographs > 0 ? [words.photographs.damaged(photographs)] : []),
  ]
  return parts.length === 0 ? undefined : parts.join(' ')
}
