/** Takes the jobs of a file of all jobs to the shelf. */
import { type BundledJob, readBundle } from '../job/job-bundle'
import { newId } from '../job/new-id'
import { sameValue } from '../job/same-value'
import type { Job } from '../job/schema'
import { writeJob } from '../job/write-job'
import type { Shelf } from '../storage/job-shelf'
import { readKeptSpecs } from '../storage/kept-specs'
import { words } from '../words/words'
import { noteCopies } from './copy-reminder'
import { nameOr } from './desk'
import { jobFromFile } from './job-for-file'
import { saveLoop } from './keeping'
import { lookForKeptSpecs } from './kept-specs'
import { type JobsTaken, showJobsTaken, showProblems } from './questions'
import { unlessShelfFails } from './shelf-here'

/** Reads the file and reports on each of its jobs; the job on the bench stays as it is. */
export async function openJobs(name: string, bytes: Uint8Array): Promise<void> {
  const read = readBundle(bytes)
  if (!read.ok) return showProblems(name, read.problems)
  await saveLoop.settled()
  const taken = await unlessShelfFails(async (open) => ({
    ...(await takeAll(open, read.jobs)),
    limits: await takeSpecs(open, read.specs),
  }))
  if (taken) showJobsTaken({ name, ...taken })
}

/** Limits that are not kept here yet; those of a name that stands for others here come under another name. */
async function takeSpecs(open: Shelf, records: readonly unknown[]): Promise<JobsTaken['limits']> {
  const { specs, unread } = readKeptSpecs(records)
  const { specs: here } = await open.specs.list()
  const taken: string[] = []
  for (const spec of specs) {
    if (here.some((one) => sameValue(one.template.spec, spec.template.spec) && one.name === spec.name))
      continue
    const isTaken = here.some(({ id }) => id === spec.id)
    const name = here.some((one) => one.name === spec.name) ? words.file.copyName(spec.name) : spec.name
    const id = isTaken ? newId() : spec.id
    await open.specs.put({ ...spec, id, name, template: { ...spec.template, id, name } })
    taken.push(name)
  }
  await lookForKeptSpecs()
  return { taken, unread: unread.map(({ name }) => nameOr(name)) }
}

async function takeAll(
  open: Shelf,
  jobs: readonly BundledJob[],
): Promise<Omit<JobsTaken, 'name' | 'limits'>> {
  const deleted = new Set(
    (await open.jobs.all()).flatMap(({ id, deletedAt }) => (deletedAt === undefined ? [] : [id])),
  )
  const report = {
    taken: [],
    same: [],
    copied: [],
    refused: [],
    damaged: { photographs: 0, scans: 0 },
  } as Mutable
  for (const each of jobs) {
    if (!each.ok) {
      report.refused.push({ name: nameOr(each.name), problems: each.problems })
      continue
    }
    const { job, takeIn } = jobFromFile(each.job)
    const { photographs, scans } = await takeIn(open)
    report.damaged.photographs += photographs
    report.damaged.scans += scans
    const how = await takeOne(open, job)
    if (how === 'same' && deleted.has(job.id)) {
      await open.jobs.markDeleted(job.id, false)
      report.taken.push(nameOr(job.name))
    } else report[how].push(nameOr(job.name))
  }
  return report
}

interface Mutable {
  taken: string[]
  same: string[]
  copied: string[]
  refused: JobsTaken['refused'][number][]
  damaged: { photographs: number; scans: number }
}

/** A job of which another state is kept here comes beside it, as a copy. */
async function takeOne(open: Shelf, job: Job): Promise<'taken' | 'same' | 'copied'> {
  const kept = await open.peek(job.id)
  if (kept?.ok && writeJob(kept.job) === writeJob(job)) return 'same'
  const isNew = kept === undefined
  const added = isNew ? job : { ...job, id: newId(), name: words.file.copyName(nameOr(job.name)) }
  await open.jobs.add(added)
  await noteCopies([added.id])
  return isNew ? 'taken' : 'copied'
}
