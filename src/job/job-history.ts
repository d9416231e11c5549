import * as z from 'zod/mini'
import { differenceOf, type Operation, operationSchema, withDifference } from './job-difference'
import { type Entry, mostUndone } from './job-store'
import type { Job } from './schema'

/** What can be undone and redone of a job; the order is that of the store. */
export interface History {
  readonly past: readonly Entry[]
  readonly future: readonly Entry[]
}

export const noHistory: History = { past: [], future: [] }

/** A longer history is cut at its far ends, so that a save stays short: some 500 readings one by one take a fifth. */
export const longestHistory = 400_000

const stepSchema = z.strictObject({
  label: z.string().check(z.maxLength(1000)),
  difference: z.array(operationSchema).check(z.maxLength(100_000)),
})
const stepsSchema = z.array(stepSchema).check(z.maxLength(mostUndone))
const historySchema = z.strictObject({ past: stepsSchema, future: stepsSchema })
type Step = z.output<typeof stepSchema>

/**
 * The history as text: for each entry the JSON Patch that leads to it from the document next to it, the
 * job itself being the first of all.
 */
export function writeHistory(job: Job, { past, future }: History): string {
  const pastSteps = stepTexts(job, past.toReversed(), longestHistory)
  const length = pastSteps.reduce((sum, text) => sum + text.length, 0)
  const futureSteps = stepTexts(job, future, longestHistory - length)
  return `{"past":[${pastSteps.join(',')}],"future":[${futureSteps.join(',')}]}`
}

/** The nearest entries first, as many as there is room for. */
function stepTexts(job: Job, entries: readonly Entry[], room: number): string[] {
  const texts: string[] = []
  let left = room
  let from = job
  for (const { label, job: to } of entries.slice(0, mostUndone)) {
    const text = `{"label":${JSON.stringify(label)},"difference":${differenceText(from, to)}}`
    left -= text.length
    if (left < 0) break
    texts.push(text)
    from = to
  }
  return texts
}

/** Documents are never changed in place, so each step of a history is compared once, not at every save. */
const compared = new WeakMap<Job, WeakMap<Job, string>>()

function differenceText(from: Job, to: Job): string {
  const known = compared.get(from) ?? new WeakMap<Job, string>()
  compared.set(from, known)
  const before = known.get(to)
  if (before !== undefined) return before
  const text = JSON.stringify(differenceOf(from, to))
  known.set(to, text)
  return text
}

/**
 * The history of a job from its text; entries from the first that does not fit the job on are left out, all of
 * them where the text is no history. Their documents are checked when they are gone back to.
 */
export function readHistory(text: string, job: Job): History {
  const parsed = historySchema.safeParse(parsedJson(text))
  if (!parsed.success) return noHistory
  return {
    past: entriesFrom(job, parsed.data.past).toReversed(),
    future: entriesFrom(job, parsed.data.future),
  }
}

function parsedJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch (error) {
    if (error instanceof SyntaxError) return undefined
    throw error
  }
}

function entriesFrom(job: Job, steps: readonly Step[]): Entry[] {
  const entries: Entry[] = []
  let from: unknown = job
  for (const { label, difference } of steps) {
    const next = withDifference(from, difference as readonly Operation[])
    if (!next.ok) break
    from = next.value
    entries.push({ label, job: next.value as Job, unchecked: true })
  }
  return entries
}
