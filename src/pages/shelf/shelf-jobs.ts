import type { BoreMap } from '../../job/job-summary'
import type { ListedJob } from '../../job/listed-job'

/** A record that was moved out of the way. */
export interface AsideRecord {
  readonly key: number
  readonly name: string
  readonly why: string
  readonly setAsideAt: string
  readonly save: () => void
}

/** What lies on the shelf, as far as it is known. */
export interface ShelfJobs {
  readonly jobs: readonly ListedJob[]
  /** Every job is among them. */
  readonly isWhole: boolean
  /** How many jobs without a summary were summed up, of how many. */
  readonly summing?: { readonly done: number; readonly of: number }
  /** Maps of the jobs that were asked for, by id. */
  readonly maps: ReadonlyMap<string, readonly BoreMap[]>
  /** What was done last, and what takes it back. */
  readonly said?: { readonly text: string; readonly undo?: () => void }
  readonly aside: readonly AsideRecord[]
  /** Id of the job on the bench, where there is one. */
  readonly onBench?: string
}

/** What can be done with the jobs of the shelf. */
export interface ShelfActs {
  readonly open: (job: ListedJob) => void
  readonly duplicate: (job: ListedJob) => void
  readonly archive: (job: ListedJob, isArchived: boolean) => void
  readonly remove: (job: ListedJob) => void
  readonly restore: (job: ListedJob) => void
  /** These rows are in view. */
  readonly wantMaps: (ids: readonly string[]) => void
  readonly leave: () => void
  readonly startNew: () => void
  readonly chooseFile: () => void
  readonly showKeptSpecs: () => void
}
