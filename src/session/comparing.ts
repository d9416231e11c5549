import { createStore } from 'zustand/vanilla'

/** Where a wall stands that goes through the surveys of a bore. */
export interface InTime {
  readonly boreId: string
  /** Between surveys by their order from 0: 1.5 is half way from the second to the third. */
  readonly at: number
  /** The survey that it comes from by a step, to be drawn on its way from there. */
  readonly cameFrom?: number
}

/** What is compared, in this tab alone. Names of surveys are those that the job gives them. */
export interface Comparing {
  /** The job that it is about: another one starts over. */
  readonly jobId?: string
  /** Absent: as the job suggests. */
  readonly shown?: readonly string[]
  /** The wall in hand, drawn with all its marks. */
  readonly inHand?: string
  /** One less another; absent: as the job suggests. */
  readonly less?: { readonly one: string; readonly other: string } | 'none'
  readonly inTime?: InTime
}

export const comparing = createStore<Comparing>(() => ({}))

/** Changes what is compared of a job. */
export function compare(jobId: string, change: Omit<Comparing, 'jobId'>) {
  comparing.setState(
    (before) => (before.jobId === jobId ? { ...before, ...change } : { jobId, ...change }),
    true,
  )
}

/** Takes the wall that goes through time away again. */
export function leaveTime() {
  comparing.setState(({ inTime: _, ...rest }) => rest, true)
}
