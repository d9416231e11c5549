/** Whether the job on the bench exists outside this browser, and whether to remind of it. */
import { createStore } from 'zustand/vanilla'
import { jobStore } from '../job/job-store'
import { readingsIn } from '../job/readings-in'
import type { CopyMark } from '../storage/copy-marks'
import { ShelfError } from '../storage/shelf-error'
import { shelf } from './shelf-here'

export interface CopyState {
  /** The job that the rest is about. */
  readonly id?: string
  readonly mark: CopyMark
  /** When the job was last changed and saved, ISO 8601, UTC. */
  readonly changedAt?: string
}

export const copyState = createStore<CopyState>(() => ({ mark: {} }))

/** A reminder that was put away comes again a day later. */
const day = 86_400_000

export type Reminder = 'never-copied' | 'changed-since'

/** What to remind of, if anything: a job with readings that were typed here and stand in no file. */
export function reminderOf(
  { id, mark, changedAt }: CopyState,
  job: {
    readonly id: string
    readonly invented?: boolean
    readonly bores: Parameters<typeof readingsIn>[0]['bores']
  },
  now: number,
): Reminder | undefined {
  if (id !== job.id || changedAt === undefined || job.invented || readingsIn(job) === 0) return undefined
  const { copiedAt, dismissedAt } = mark
  if (dismissedAt !== undefined && now - Date.parse(dismissedAt) < day) return undefined
  if (copiedAt === undefined) return 'never-copied'
  return copiedAt < changedAt ? 'changed-since' : undefined
}

/** One after the other: a mark is not read while it is being written. */
let lastStep: Promise<void> = Promise.resolve()

function inTurn(step: () => Promise<void>): Promise<void> {
  lastStep = lastStep.then(step)
  return lastStep
}

/** To be told whenever the job was saved, and when it was opened with its last change. */
export function noteChange(id: string, changedAt: string): Promise<void> {
  return inTurn(async () => {
    const before = copyState.getState()
    const mark = before.id === id ? before.mark : await markOf(id)
    if (jobStore.getState().job.id === id) copyState.setState({ id, mark, changedAt }, true)
  })
}

/** The job was written to a file as it is now. */
export async function noteCopies(ids: readonly string[]): Promise<void> {
  await change(ids, { copiedAt: new Date().toISOString() })
}

/** The reminder is put away for a day. */
export async function dismissReminder(): Promise<void> {
  await change([jobStore.getState().job.id], { dismissedAt: new Date().toISOString() })
}

function change(ids: readonly string[], step: CopyMark): Promise<void> {
  return inTurn(async () => {
    const { id, mark } = copyState.getState()
    if (id !== undefined && ids.includes(id)) copyState.setState({ mark: { ...mark, ...step } })
    await unlessFailed(async () => (await shelf()).markCopies(ids, step))
  })
}

async function markOf(id: string): Promise<CopyMark> {
  return (await unlessFailed(async () => (await shelf()).copyMark(id))) ?? {}
}

/** A reminder that cannot be kept comes once too often; the next save says what is wrong with the shelf. */
async function unlessFailed<Result>(step: () => Promise<Result>): Promise<Result | undefined> {
  try {
    return await step()
  } catch (error) {
    if (!(error instanceof ShelfError)) throw error
    return undefined
  }
}
