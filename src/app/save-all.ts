/** A copy of all kept jobs, and of the limits kept for others, in one file. */
import { bundleParts, largestBundleBytes } from '../job/job-bundle'
import { jobStore } from '../job/job-store'
import { readJob } from '../job/read-job'
import { writeJob } from '../job/write-job'
import type { Shelf } from '../storage/job-shelf'
import { specRecord } from '../storage/kept-specs'
import { words } from '../words/words'
import { noteCopies } from './copy-reminder'
import { nameOr, say } from './desk'
import { download } from './download'
import { fileName } from './file-name'
import { jobForFileFrom, leftBehind } from './job-for-file'
import { saveLoop } from './keeping'
import { tell } from './questions'
import { unlessShelfFails } from './shelf-here'

interface AllJobs {
  readonly texts: string[]
  /** Records of the limits that are kept for other jobs. */
  readonly specs: string[]
  readonly ids: string[]
  /** Names of jobs that cannot be read, and of jobs some of whose scans or photographs are missing. */
  readonly leftOut: string[]
  readonly incomplete: string[]
}

/** Hands a file with every kept job, and its photographs, to the browser to be saved; says what it lacks. */
export async function saveAllToFile(): Promise<void> {
  const state = await saveLoop.settled()
  const all = await unlessShelfFails(gathered)
  if (!all) return
  const { file } = words
  if (all.texts.length + all.specs.length === 0) return tell(file.allNone)
  const length = all.texts.reduce((sum, text) => sum + text.length, 0)
  if (length > largestBundleBytes) return tell(file.allTooLarge)
  const name = fileName(file.allName, new Date(), file.allName)
  download(new File([...bundleParts(all.texts, all.specs)], name, { type: 'application/json' }))
  const unsaved = state.kind === 'failed' ? jobStore.getState().job.id : undefined
  await noteCopies(all.ids.filter((id) => id !== unsaved))
  say(file.savedAll(all.texts.length, name))
  const lacks = [
    ...(unsaved === undefined ? [] : [file.allWithoutChange]),
    ...(all.leftOut.length > 0 ? [file.allLeftOut(all.leftOut)] : []),
    ...(all.incomplete.length > 0 ? [file.allIncomplete(all.incomplete)] : []),
  ]
  if (lacks.length > 0) await tell(lacks.join(' '))
}

async function gathered(open: Shelf): Promise<AllJobs> {
  const { specs, unread } = await open.specs.list()
  const all: AllJobs = {
    texts: [],
    specs: specs.map((spec) => JSON.stringify(specRecord(spec))),
    ids: [],
    leftOut: unread.map(({ name }) => nameOr(name)),
    incomplete: [],
  }
  for (const { id, name, text } of await open.keptTexts()) {
    const read = text === undefined ? undefined : readJob(text)
    const isNewer = read?.ok === false && read.problems.some(({ code }) => code === 'newer-version')
    if (read?.ok) {
      const forFile = await jobForFileFrom(open, read.job)
      all.texts.push(writeJob(forFile.job))
      all.ids.push(id)
      if (leftBehind(forFile) !== undefined) all.incomplete.push(nameOr(name))
    } else if (isNewer && text !== undefined) all.texts.push(text)
    else all.leftOut.push(nameOr(name))
  }
  return all
}
