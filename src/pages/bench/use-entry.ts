import { type RefObject, useMemo, useRef } from 'react'
import type { PlannedStation } from '../../job/selectors'
import type { Taken } from '../../session/session'
import { type EntryActions, entryActions } from './entry-actions'
import { type EntryState, entryState } from './entry-state'
import { type OnBench, useSession } from './use-job'

/** Entering readings one station after another, whatever the page looks like. */
export interface Entry extends Omit<EntryState, 'bench'>, EntryActions {
  readonly input: RefObject<HTMLInputElement | null>
  /** The number taken last. */
  readonly taken: Taken | undefined
}

/** Where the next number goes, for the parts of the page that only show it. */
export function useStationInHand(bench: OnBench): PlannedStation | undefined {
  const entering = useSession((state) => state.entering)
  const inHand = useSession((state) => state.inHand)
  const skipped = useSession((state) => state.skipped)
  return entryState(bench, { entering, skipped, ...(inHand ? { inHand } : {}) }).station
}

/** The station in hand of the bore on the bench, what is typed for it, and all that can be done with both. */
export function useEntry(bench: OnBench): Entry {
  const input = useRef<HTMLInputElement>(null)
  const entering = useSession((state) => state.entering)
  const inHand = useSession((state) => state.inHand)
  const skipped = useSession((state) => state.skipped)
  const taken = useSession((state) => state.taken)
  const actions = useMemo(() => entryActions(input), [])
  const state = entryState(bench, { entering, skipped, ...(inHand ? { inHand } : {}) })
  return { ...state, ...actions, input, taken }
}
