import { type RefObject, useRef, useState } from 'react'
import { type PlannedStation, stationsPlanned } from '../../job/selectors'
import { repeatsTakenInJob } from './entry-across'
import { type EntryActions, entryActions, skippedOf, stationAt } from './entry-actions'
import { nextStation } from './entry-order'
import type { Refusal } from './TypedField'
import type { OnBench } from './use-job'
import { useSession } from './use-job'

/** Entering readings one station after another, whatever the page looks like. */
export interface Entry extends EntryActions {
  readonly input: RefObject<HTMLInputElement | null>
  readonly rows: readonly (readonly PlannedStation[])[]
  /** The station in hand; undefined when every station is read or passed over, or none is planned. */
  readonly station: PlannedStation | undefined
  readonly wanted: number
  readonly typed: string
  readonly correcting: boolean
  /** Stations passed over. */
  readonly skipped: readonly PlannedStation[]
  /** What is wrong with the number entered last. */
  readonly refusal: Refusal
  /** The number taken last, in words. */
  readonly taken: string
}

/** The station in hand of the bore on the bench, what is typed for it, and all that can be done with both. */
export function useEntry(bench: OnBench): Entry {
  const { job, bore, survey } = bench
  const rows = stationsPlanned(job, bore.id, survey.id)
  const input = useRef<HTMLInputElement>(null)
  const [refusal, setRefusal] = useState<Refusal>()
  const [taken, setTaken] = useState('')
  const { typed, replaces } = useSession((state) => state.entering)
  const passedOver = skippedOf(
    bore.id,
    useSession((state) => state.skipped),
  )
  const wanted = job.repeatsPerStation ?? repeatsTakenInJob(job)
  const chosen = useSession((state) => state.inHand)
  const inHand = chosen?.boreId === bore.id ? chosen : undefined
  const station = stationAt(rows, inHand) ?? nextStation(rows, wanted, undefined, passedOver)
  const held = { bench, rows, station, wanted, typed, replaces, input, setRefusal, setTaken }
  return {
    ...entryActions(held),
    input,
    rows,
    station,
    wanted,
    typed,
    correcting: replaces !== undefined && inHand !== undefined,
    skipped: passedOver.flatMap((place) => stationAt(rows, place) ?? []),
    refusal,
    taken,
  }
}
