import { useMemo, useSyncExternalStore } from 'react'
import { useStore } from 'zustand'
import { readAlike } from '../../core/gauge/read-alike'
import {
  type Compared,
  type ComparedDifference,
  comparedOf,
  differenceOf,
  type TimeLine,
  timeLinesOf,
  usualDifference,
  usuallyCompared,
} from '../../job/compared'
import { jobStore } from '../../job/job-store'
import type { Job } from '../../job/schema'
import { type TimeAhead, timeAheadOf } from '../../job/time-ahead'
import { type Comparing, comparing, type InTime } from '../../session/comparing'
import { type ComparedWall, differenceWall, surveyWall, timeWall } from './compared-walls'

/** What stands on the page for comparing. */
export interface OnCompare {
  readonly job: Job
  readonly all: readonly Compared[]
  readonly shown: readonly Compared[]
  /** What is taken from what, where a difference is asked for. */
  readonly less: readonly [Compared, Compared] | undefined
  readonly difference: ComparedDifference | undefined
  /** Why two have none. */
  readonly noDifference: 'no-stations' | 'read-otherwise' | undefined
  readonly lines: readonly TimeLine[]
  readonly line: TimeLine | undefined
  readonly inTime: InTime | undefined
  /** The hours to come of the wall that goes through time, where they are named. */
  readonly ahead: TimeAhead | undefined
  readonly walls: readonly ComparedWall[]
  readonly inHand: number
}

const nothing: Comparing = {}
const still = window.matchMedia('(prefers-reduced-motion: reduce)')

/** Whether nothing may move by itself. */
export function useStill(): boolean {
  return useSyncExternalStore(
    (onChange) => {
      still.addEventListener('change', onChange)
      return () => still.removeEventListener('change', onChange)
    },
    () => still.matches,
  )
}

export function useOnCompare(): OnCompare {
  const job = useStore(jobStore, (state) => state.job)
  const state = useStore(comparing, (now) => (now.jobId === job.id ? now : nothing))
  const isStill = useStill()
  const all = comparedOf(job)
  const shown = useMemo(() => {
    const keys = state.shown ?? usuallyCompared(job)
    return all.filter(({ key }) => keys.includes(key))
  }, [job, all, state.shown])
  const less = useMemo(() => pairAsked(shown, state.less), [shown, state.less])
  const difference = less && differenceOf(job, ...less)
  const lines = timeLinesOf(job)
  const { inTime } = state
  const line = lines.find(({ bore }) => bore.id === inTime?.boreId)
  const ahead = useMemo(() => line && timeAheadOf(job, line), [job, line])
  const walls = useMemo(
    () => [
      ...shown.flatMap((one) => surveyWall(job, one) ?? []),
      ...(line && inTime ? [timeWall(line, inTime, isStill, ahead)] : []).flatMap((wall) => wall ?? []),
      ...(difference ? [differenceWall(difference)] : []),
    ],
    [job, shown, line, inTime, isStill, ahead, difference],
  )
  return {
    job,
    all,
    shown,
    less,
    difference,
    noDifference: less && !difference ? whyNone(less) : undefined,
    lines,
    line,
    inTime,
    ahead,
    walls,
    inHand: Math.max(
      0,
      walls.findIndex(({ id }) => id === state.inHand),
    ),
  }
}

function pairAsked(
  shown: readonly Compared[],
  less: Comparing['less'],
): readonly [Compared, Compared] | undefined {
  if (less === undefined) return usualDifference(shown)
  if (less === 'none') return undefined
  const one = shown.find(({ key }) => key === less.one)
  const other = shown.find(({ key }) => key === less.other)
  return one && other && one !== other ? [one, other] : undefined
}

function whyNone([one, other]: readonly [Compared, Compared]) {
  return readAlike(one.finding.gaugeKind, other.finding.gaugeKind) ? 'no-stations' : 'read-otherwise'
}
