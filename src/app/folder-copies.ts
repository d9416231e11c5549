/** A copy of each job in a folder that the user picked, written anew after each save; where the browser allows it. */
import { createStore } from 'zustand/vanilla'
import { jobStore } from '../job/job-store'
import type { Job } from '../job/schema'
import { writeJob } from '../job/write-job'
import { ShelfError } from '../storage/shelf-error'
import { words } from '../words/words'
import { noteCopies } from './copy-reminder'
import { slugOf } from './file-name'
import { jobForFile } from './job-for-file'
import { saveLoop } from './keeping'
import { shelf, unlessShelfFails } from './shelf-here'

declare global {
  interface Window {
    /** Not in every browser: File System Access, W3C Community Group Draft. */
    showDirectoryPicker?: (options: { id: string; mode: 'readwrite' }) => Promise<FileSystemDirectoryHandle>
  }
  interface FileSystemHandle {
    queryPermission?: (options: { mode: 'readwrite' }) => Promise<PermissionState>
    requestPermission?: (options: { mode: 'readwrite' }) => Promise<PermissionState>
  }
}

export type FolderTrouble = 'gone' | 'refused' | 'no-room' | 'not-written'

export type FolderCopies =
  /** This browser lets no page write into a folder. */
  | { readonly kind: 'impossible' }
  | { readonly kind: 'off' }
  /** A folder was picked in an earlier session, and the browser wants to be asked anew. */
  | { readonly kind: 'asks'; readonly name: string }
  | { readonly kind: 'on'; readonly name: string; readonly file?: string }
  | { readonly kind: 'failed'; readonly name: string; readonly why: FolderTrouble }

export const folderCopies = createStore<FolderCopies>(() => ({
  kind: window.showDirectoryPicker === undefined ? 'impossible' : 'off',
}))

let folder: FileSystemDirectoryHandle | undefined
/** The job that was copied last, as it was then. */
let copied: Job | undefined
let waiting: ReturnType<typeof setTimeout> | undefined
let lastCopy: Promise<void> = Promise.resolve()

/** Saves come in bursts while readings are typed: the folder gets the last of each. */
const quietMs = 1500

function set(state: FolderCopies) {
  folderCopies.setState(state, true)
}

/** Takes up the folder that was picked earlier, and copies after each save from then on. */
export async function startFolderCopies(): Promise<void> {
  if (window.showDirectoryPicker === undefined) return
  saveLoop.state.subscribe(({ kind }) => {
    if (kind === 'saved') copySoon()
  })
  folder = await keptFolder()
  if (!folder) return
  const allowed = (await folder.queryPermission?.({ mode: 'readwrite' })) ?? 'granted'
  set({ kind: allowed === 'granted' ? 'on' : 'asks', name: folder.name })
  if (saveLoop.state.getState().kind === 'saved') copySoon()
}

/** Lets the user pick a folder and writes the job on the bench into it. */
export async function pickFolder(): Promise<void> {
  try {
    const picked = await window.showDirectoryPicker?.({ id: 'borewall', mode: 'readwrite' })
    if (!picked) return
    folder = picked
  } catch (error) {
    // Closed without a choice: it stays as it was.
    if (error instanceof DOMException && error.name === 'AbortError') return
    throw error
  }
  const picked = folder
  await unlessShelfFails((open) => open.copyFolder.write(picked))
  set({ kind: 'on', name: picked.name })
  await copyNow()
}

/** Asks the browser for the folder of an earlier session again. */
export async function allowFolder(): Promise<void> {
  if (!folder) return
  const allowed = await folder.requestPermission?.({ mode: 'readwrite' })
  if (allowed !== 'granted') return set({ kind: 'failed', name: folder.name, why: 'refused' })
  set({ kind: 'on', name: folder.name })
  await copyNow()
}

/** Writes no more copies; those there are stay. */
export async function leaveFolder(): Promise<void> {
  folder = undefined
  copied = undefined
  set({ kind: 'off' })
  await unlessShelfFails((open) => open.copyFolder.write(undefined))
}

function copySoon(): void {
  clearTimeout(waiting)
  waiting = setTimeout(() => void copyNow(), quietMs)
}

/** One after the other: two copies of one file at once would spoil it. */
function copyNow(): Promise<void> {
  lastCopy = lastCopy.then(copy)
  return lastCopy
}

async function copy(): Promise<void> {
  const { job } = jobStore.getState()
  const { kind } = folderCopies.getState()
  const into = folder
  const isSaved = saveLoop.state.getState().kind === 'saved'
  if (!into || job === copied || !isSaved || (kind !== 'on' && kind !== 'failed')) return
  const name = copyName(job)
  try {
    const text = writeJob((await jobForFile(job)).job)
    const file = await into.getFileHandle(name, { create: true })
    const writing = await file.createWritable()
    await writing.write(text)
    await writing.close()
    // What stands in the folder is what was meant to stand there, or it is no copy.
    if ((await (await file.getFile()).text()) !== text) throw new DOMException('not the same', 'DataError')
    copied = job
    set({ kind: 'on', name: into.name, file: name })
    await noteCopies([job.id])
  } catch (error) {
    if (!(error instanceof DOMException)) throw error
    set({ kind: 'failed', name: into.name, why: troubleOf(error) })
  }
}

function troubleOf({ name }: DOMException): FolderTrouble {
  if (name === 'NotFoundError') return 'gone'
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'refused'
  return name === 'QuotaExceededError' ? 'no-room' : 'not-written'
}

/** One file for a job, whatever the day: its name and the beginning of its id. */
function copyName({ name, id }: Job): string {
  return `${slugOf(name) || slugOf(words.file.defaultName)}-${slugOf(id).slice(0, 8)}.json`
}

/** A folder that cannot be read is none: the first save meets the same trouble and says so. */
async function keptFolder(): Promise<FileSystemDirectoryHandle | undefined> {
  try {
    return await (await shelf()).copyFolder.read()
  } catch (error) {
    if (!(error instanceof ShelfError)) throw error
    return undefined
  }
}
