import { jobStore } from '../../job/job-store'
import type { Job } from '../../job/schema'
import { problemText } from '../../words/problems'
import { readNumber } from '../../words/read-number'
import { words } from '../../words/words'
import type { Refusal } from './TypedField'

/** Makes a change that can be undone; says in words why it was refused. */
export function perform(label: string, change: (job: Job) => Job, merge?: string): Refusal {
  const done = jobStore.getState().perform(label, change, merge === undefined ? {} : { merge })
  if (done.ok) return undefined
  return done.problems.map((problem) => problemText(problem)).join(' ')
}

/**
 * Commits a typed number: empty means not recorded, anything that is no number is refused in words, and
 * the change itself may be refused.
 */
export function commitNumber(typed: string, keep: (value: number | undefined) => Refusal): Refusal {
  if (typed.trim() === '') return keep(undefined)
  const read = readNumber(typed)
  return read.ok ? keep(read.value) : words.number.refused[read.why]
}

/** As `commitNumber`, for a field that cannot be without a number. */
export function commitNeeded(typed: string, keep: (value: number) => Refusal): Refusal {
  const read = readNumber(typed)
  return read.ok ? keep(read.value) : words.number.refused[read.why]
}
