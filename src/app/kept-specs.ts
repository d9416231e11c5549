/** Limits that were typed once: taken for a job, kept from one, renamed and removed. */
import { createStore } from 'zustand/vanilla'
import { jobStore } from '../job/job-store'
import { type KeptSpec, takeKeptSpec, templateOf } from '../job/kept-spec'
import { newId } from '../job/new-id'
import { newJob } from '../job/new-job'
import type { KeptSpecList } from '../storage/kept-specs'
import { ShelfError } from '../storage/shelf-error'
import { words } from '../words/words'
import { changeOver, layOut, nameOr } from './desk'
import { dayText } from './file-name'
import { ask } from './questions'
import { shelf, unlessShelfFails } from './shelf-here'

/** As they are kept; undefined until they were looked for. */
export const keptSpecs = createStore<{ readonly list?: KeptSpecList }>(() => ({}))

/** Looks for kept limits; a shelf in trouble says so when something is to be kept. */
export async function lookForKeptSpecs(): Promise<void> {
  try {
    keptSpecs.setState({ list: await (await shelf()).specs.list() })
  } catch (error) {
    if (!(error instanceof ShelfError)) throw error
  }
}

/** Takes kept limits for the job on the bench, as a change that can be undone. */
export function takeSpec(spec: KeptSpec): void {
  jobStore.getState().perform(words.keptSpecs.taken(spec.name), (job) => takeKeptSpec(job, spec))
}

/** Keeps the limits of the job on the bench as they stand when it is asked for; true once they are kept. */
export async function keepSpec(name: string): Promise<boolean> {
  const { job } = jobStore.getState()
  const before = await named(name)
  if (before) {
    const { replaceAsk, replace } = words.keptSpecs
    const answer = await ask(replaceAsk(before.name), [{ answer: 'replace', label: replace }])
    if (answer !== 'replace') return false
  }
  const id = before?.id ?? newId()
  const template = templateOf(job, id, name)
  return putSpec({ id, name, typedOn: dayText(new Date()), template })
}

async function named(name: string): Promise<KeptSpec | undefined> {
  await lookForKeptSpecs()
  return keptSpecs.getState().list?.specs.find((spec) => sameName(spec.name, name))
}

function sameName(one: string, other: string): boolean {
  return one.localeCompare(other, 'en', { sensitivity: 'base' }) === 0
}

/** Keeps a spec as it is; true once it is kept. */
export async function putSpec(spec: KeptSpec): Promise<boolean> {
  const isKept = await unlessShelfFails(async (open) => {
    await open.specs.put(spec)
    return true
  })
  await lookForKeptSpecs()
  return isKept === true
}

export async function renameSpec(spec: KeptSpec, name: string): Promise<void> {
  await putSpec({ ...spec, name, template: { ...spec.template, name } })
}

export async function removeSpec(id: string): Promise<void> {
  await unlessShelfFails((open) => open.specs.remove(id))
  await lookForKeptSpecs()
}

/** A name to propose for the limits of the job on the bench. */
export function proposedName(): string {
  const { machine, name } = jobStore.getState().job
  return machine?.trim() || name.trim()
}

/** Lays a new job with kept limits on the bench. */
export async function newJobWith(spec: KeptSpec): Promise<void> {
  await changeOver(() => layOut(takeKeptSpec(newJob(newId), spec)))
}

export function specName({ name }: { readonly name: string }): string {
  return name.trim() === '' ? words.keptSpecs.noName : nameOr(name)
}
