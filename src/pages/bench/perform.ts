import type { Problem } from '../../core/problem'
import { jobStore } from '../../job/job-store'
import type { Job } from '../../job/schema'
import { problemText } from '../../words/problems'
import { readNumber } from '../../words/read-number'
import { words } from '../../words/words'
import type { Refusal } from './TypedField'

/** Makes a change that can be undone; says in words why it was refused. */
export function perform(label: string, change: (job: Job) => Job, merge?: string): Refusal {
  return refusalOf(attempt(label, change, merge))
}

/** The same, with what is wrong where it was refused; nothing when it was made. */
export function attempt(label: string, change: (job: Job) => Job, merge?: string): readonly Problem[] {
  const done = jobStore.getState().perform(label, change, merge === undefined ? {} : { merge })
  return done.ok ? [] : done.problems
}

export function refusalOf(problems: readonly Problem[]): Refusal {
  return problems.length === 0 ? undefined : problems.map((problem) => problemText(problem)).join(' ')
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
