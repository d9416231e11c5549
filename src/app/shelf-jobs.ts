/** What the page of the shelf shows and does. */
import { createStore } from 'zustand/vanilla'
import { jobStore } from '../job/job-store'
import { isPastKeeping, type ListedJob } from '../job/listed-job'
import { newId } from '../job/new-id'
import type { ShelfJobs } from '../pages/shelf/shelf-jobs'
import type { Shelf } from '../storage/job-shelf'
import { ShelfError } from '../storage/shelf-error'
import { words } from '../words/words'
import { desk, leaveShelf, nameOr, openKept, saveSetAside } from './desk'
import { saveLoop } from './keeping'
import { showProblems, tell } from './questions'
import { shelf, unlessShelfFails } from './shelf-here'

const nothingYet: ShelfJobs = { jobs: [], isWhole: false, maps: new Map(), aside: [] }

/** The shelf as it was seen last; while it is looked through anew it stands as it was. */
export const shelfJobs = createStore<ShelfJobs>(() => nothingYet)

/** So many are shown before all others are known: more than fit on any screen. */
const firstShown = 40

let looking = 0

/** Looks through the shelf: what changed last first, then all, then what has no summary yet. */
export async function lookThroughShelf(): Promise<void> {
  looking += 1
  const look = looking
  const isOver = () => look !== looking
  // What was typed last belongs on the list too.
  await saveLoop.settled()
  const hasRead = await unlessShelfFails(async (open) => {
    if (!shelfJobs.getState().isWhole) {
      const jobs = await open.jobs.newest(firstShown)
      if (isOver()) return true
      shelfJobs.setState({ jobs })
    }
    const [jobs, aside] = [await open.jobs.all(), await asideOf(open)]
    if (isOver()) return true
    shelfJobs.setState({ jobs, aside, isWhole: true, maps: mapsThatHold(jobs) })
    await purge(open, jobs)
    await sumUp(open, isOver)
    return true
  })
  // Why was said; a list that will never come is not waited for.
  if (!hasRead && !isOver()) leaveShelf()
}

/** The maps that were fetched before, without those of jobs that changed since. */
function mapsThatHold(jobs: readonly ListedJob[]): ShelfJobs['maps'] {
  const before = shelfJobs.getState()
  const changed = new Map(before.jobs.map(({ id, changedAt }) => [id, changedAt]))
  const held = jobs.filter(({ id, changedAt }) => changed.get(id) === changedAt)
  return new Map(held.flatMap(({ id }) => (before.maps.has(id) ? [[id, before.maps.get(id) ?? []]] : [])))
}

/** Ends what goes on behind the page: it is for the page alone. */
export function stopLooking(): void {
  looking += 1
  const { said: _, summing: __, ...rest } = shelfJobs.getState()
  shelfJobs.setState(rest, true)
}

async function asideOf(open: Shelf): Promise<ShelfJobs['aside']> {
  return (await open.setAside()).map(({ key, name, reason, setAsideAt, text }) => ({
    key,
    name: nameOr(name),
    why: words.kept.setAsideWhy[reason],
    setAsideAt,
    save: () => saveSetAside(name, text),
  }))
}

/** What was deleted long enough ago goes for good. */
async function purge(open: Shelf, jobs: readonly ListedJob[]): Promise<void> {
  const past = new Set(jobs.filter((job) => isPastKeeping(job, new Date())).map(({ id }) => id))
  for (const id of past) await open.remove(id)
  if (past.size > 0) change((listed) => listed.filter(({ id }) => !past.has(id)))
}

/** Sums up jobs that were kept before there were summaries, one at a time, so that the page answers meanwhile. */
async function sumUp(open: Shelf, isOver: () => boolean): Promise<void> {
  const ids = await open.jobs.unlisted()
  let fresh: ListedJob[] = []
  for (const [index, id] of ids.entries()) {
    if (isOver()) return
    const job = await open.jobs.renew(id)
    if (job) fresh.push(job)
    const isLast = index === ids.length - 1
    if (!isLast && fresh.length < 20) continue
    const lot = fresh
    fresh = []
    change((listed) => [...listed.filter((one) => lot.every((job) => job.id !== one.id)), ...lot])
    shelfJobs.setState({ summing: { done: index + 1, of: ids.length } })
    await new Promise((resolve) => setTimeout(resolve))
  }
  const { summing: _, ...rest } = shelfJobs.getState()
  if (!isOver()) shelfJobs.setState(rest, true)
}

function change(step: (jobs: readonly ListedJob[]) => readonly ListedJob[]): void {
  shelfJobs.setState(({ jobs }) => ({ jobs: step(jobs) }))
}

function replace(id: string, step: (job: ListedJob) => ListedJob): void {
  change((jobs) => jobs.map((job) => (job.id === id ? step(job) : job)))
}

function saySaid(text: string, undo?: () => void): void {
  shelfJobs.setState({ said: undo ? { text, undo } : { text } })
}

/** Maps of the rows in view, those that are not there yet. */
export async function fetchMaps(ids: readonly string[]): Promise<void> {
  const { maps } = shelfJobs.getState()
  const missing = ids.filter((id) => !maps.has(id))
  if (missing.length === 0) return
  try {
    const found = await (await shelf()).jobs.maps(missing)
    shelfJobs.setState((state) => ({ maps: new Map([...state.maps, ...found]) }))
  } catch (error) {
    // A list without maps is still a list; whatever is done next says what is wrong with the shelf.
    if (!(error instanceof ShelfError)) throw error
  }
}

export async function openListed(job: ListedJob): Promise<void> {
  const onBench = desk.getState().behindShelf === 'bench' && jobStore.getState().job.id === job.id
  if (onBench) return leaveShelf()
  // Whoever goes on with a deleted job wants it back.
  if (job.deletedAt !== undefined) await unlessShelfFails((open) => open.jobs.markDeleted(job.id, false))
  if (!(await openKept(job.id, job.name))) await lookThroughShelf()
}

export async function duplicateListed({ id, name }: ListedJob): Promise<void> {
  await unlessShelfFails(async (open) => {
    const read = await open.peek(id)
    if (!read?.ok) return read ? showProblems(nameOr(name), read.problems) : tell(words.shelf.gone)
    const copyName = words.file.copyName(nameOr(read.job.name))
    const copy = await open.jobs.add({ ...read.job, id: newId(), name: copyName })
    if (copy) change((jobs) => [...jobs, copy])
    saySaid(words.shelf.did.duplicated(copyName))
  })
}

export async function archiveListed(job: ListedJob, isArchived: boolean): Promise<void> {
  await unlessShelfFails(async (open) => {
    await open.jobs.archive(job.id, isArchived)
    replace(job.id, ({ archivedAt: _, ...one }) =>
      isArchived ? { ...one, archivedAt: new Date().toISOString() } : one,
    )
    const { archived, unarchived } = words.shelf.did
    const name = nameOr(job.name)
    saySaid((isArchived ? archived : unarchived)(name), () => void archiveListed(job, !isArchived))
  })
}

export async function deleteListed(job: ListedJob, isDeleted: boolean): Promise<void> {
  await unlessShelfFails(async (open) => {
    await open.jobs.markDeleted(job.id, isDeleted)
    replace(job.id, ({ deletedAt: _, ...one }) =>
      isDeleted ? { ...one, deletedAt: new Date().toISOString() } : one,
    )
    const name = nameOr(job.name)
    if (isDeleted) saySaid(words.shelf.did.deleted(name), () => void deleteListed(job, false))
    else saySaid(words.shelf.did.restored(name))
  })
}
