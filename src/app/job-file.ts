import type { Job } from '../job/schema'
import { writeJob } from '../job/write-job'
import { words } from '../words/words'
import { download } from './download'
import { fileName } from './file-name'

interface FileHandle {
  readonly name: string
  createWritable(): Promise<{ write(text: string): Promise<void>; close(): Promise<void> }>
}

interface SavePickerOptions {
  readonly suggestedName: string
  readonly types: readonly { readonly description: string; readonly accept: Record<string, string[]> }[]
}

declare global {
  interface Window {
    /** Not in every browser: File System Access, W3C Community Group Draft. */
    showSaveFilePicker?: (options: SavePickerOptions) => Promise<FileHandle>
  }
}

export type FileWritten =
  | { readonly kind: 'written'; readonly name: string }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'failed'; readonly name: string }

/** Files chosen in this tab, by the id of the job that was written to them. */
const chosen = new Map<string, FileHandle>()

/** Writes a job to the file it was written to last in this tab, or to one that is asked for. */
export async function saveToFile(job: Job, day: Date, askWhere: boolean): Promise<FileWritten> {
  const suggestedName = fileName(job.name, day, words.file.defaultName)
  const pick = window.showSaveFilePicker
  if (pick === undefined) {
    downloadText(suggestedName, writeJob(job))
    return { kind: 'written', name: suggestedName }
  }
  try {
    const known = askWhere ? undefined : chosen.get(job.id)
    const handle = known ?? (await pick.call(window, pickerOptions(suggestedName)))
    const file = await handle.createWritable()
    await file.write(writeJob(job))
    await file.close()
    chosen.set(job.id, handle)
    return { kind: 'written', name: handle.name }
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return { kind: 'cancelled' }
    const name = chosen.get(job.id)?.name ?? suggestedName
    // The file chosen before may be gone: the next try asks again.
    chosen.delete(job.id)
    return { kind: 'failed', name }
  }
}

function pickerOptions(suggestedName: string): SavePickerOptions {
  return {
    suggestedName,
    types: [{ description: words.file.kind, accept: { 'application/json': ['.json'] } }],
  }
}

/** Hands a text to the browser as a file to be saved. */
export function downloadText(name: string, text: string): void {
  download(new File([text], name, { type: 'application/json' }))
}
