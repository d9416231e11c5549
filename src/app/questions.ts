import { createStore } from 'zustand/vanilla'
import type { Problem } from '../core/problem'

export interface Choice<Answer extends string> {
  readonly answer: Answer
  readonly label: string
}

/** A question in words with its answers. Without answers it is a message that is closed. */
export interface Question {
  readonly text: string
  readonly choices: readonly Choice<string>[]
  /** Undefined: not answered, nothing is to be done. */
  readonly onAnswer: (answer: string | undefined) => void
}

/** What became of each job in a file of all jobs, by their names. */
export interface JobsTaken {
  /** Of the file. */
  readonly name: string
  readonly taken: readonly string[]
  readonly same: readonly string[]
  /** Those of which another state is kept here. */
  readonly copied: readonly string[]
  readonly refused: readonly { readonly name: string; readonly problems: readonly Problem[] }[]
  readonly damaged: { readonly photographs: number; readonly scans: number }
  /** Limits kept for other jobs: taken, and not readable. */
  readonly limits: { readonly taken: readonly string[]; readonly unread: readonly string[] }
}

/** What stands in front of the page. One thing at a time; a question stands in front of a list. */
export interface InFront {
  readonly question?: Question
  /** A file or a kept record that could not be opened, with all that is wrong in it. */
  readonly problems?: { readonly name: string; readonly list: readonly Problem[] }
  readonly examples?: true
  readonly note?: true
  readonly keptSpecs?: true
  readonly aids?: true
  readonly language?: true
  readonly letterhead?: true
  /** A table of readings that is being looked at before any of it is taken. */
  readonly table?: TableToImport
  readonly keys?: true
  /** What became of the jobs in a file of all jobs. */
  readonly jobsTaken?: JobsTaken
  /** Earlier versions of the job. */
  readonly versions?: true
  /** Where and how safely the job is kept. */
  readonly keeping?: true
}

export interface TableToImport {
  readonly name: string
  readonly bytes: Uint8Array
  readonly holds: 'readings' | 'scan'
}

export const inFront = createStore<InFront>(() => ({}))

function without(part: keyof InFront) {
  const { [part]: _, ...rest } = inFront.getState()
  inFront.setState(rest, true)
}

/** Asks; undefined where the question was left unanswered. A question already asked is left unanswered. */
export function ask<Answer extends string>(
  text: string,
  choices: readonly Choice<Answer>[],
): Promise<Answer | undefined> {
  inFront.getState().question?.onAnswer(undefined)
  return new Promise((resolve) => {
    const onAnswer = (answer: string | undefined) => {
      without('question')
      resolve(choices.find((choice) => choice.answer === answer)?.answer)
    }
    inFront.setState({ question: { text, choices, onAnswer } })
  })
}

/** Says something that must be read; resolves when it was closed. */
export async function tell(text: string): Promise<void> {
  await ask(text, [])
}

export function showProblems(name: string, list: readonly Problem[]) {
  inFront.setState({ problems: { name, list } })
}

export function closeProblems() {
  without('problems')
}

export function showExamples() {
  inFront.setState({ examples: true })
}

export function closeExamples() {
  without('examples')
}

export function showNote() {
  inFront.setState({ note: true })
}

export function closeNote() {
  without('note')
}

export function showJobsTaken(jobsTaken: JobsTaken) {
  inFront.setState({ jobsTaken })
}

export function closeJobsTaken() {
  without('jobsTaken')
}

export function showVersions() {
  inFront.setState({ versions: true })
}

export function closeVersions() {
  without('versions')
}

export function showKeeping() {
  inFront.setState({ keeping: true })
}

export function closeKeeping() {
  without('keeping')
}

export function showAids() {
  inFront.setState({ aids: true })
}

export function closeAids() {
  without('aids')
}

export function showLanguage() {
  inFront.setState({ language: true })
}

export function closeLanguage() {
  without('language')
}

export function showLetterhead() {
  inFront.setState({ letterhead: true })
}

export function closeLetterhead() {
  without('letterhead')
}

export function showKeptSpecs() {
  inFront.setState({ keptSpecs: true })
}

export function closeKeptSpecs() {
  without('keptSpecs')
}

export function showKeys() {
  inFront.setState({ keys: true })
}

export function closeKeys() {
  without('keys')
}

export function showTable(table: TableToImport) {
  inFront.setState({ table })
}

export function closeTable() {
  without('table')
}
