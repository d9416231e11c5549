import type { Place } from '../../core/findings'
import { type PlannedStation, stationsPlanned } from '../../job/selectors'
import { type Entering, type InHand, nothingTyped, type Session, session } from '../../session/session'
import { repeatsTakenInJob } from './entry-across'
import { nextStation, repeatsAt, samePlace } from './entry-order'
import { typedText } from './typed-text'
import { type OnBench, onBenchNow } from './use-job'

/** Where the next number goes, and what is typed of it. */
export interface EntryState extends Omit<Entering, 'at'> {
  readonly bench: OnBench
  readonly rows: readonly (readonly PlannedStation[])[]
  /** The station in hand; undefined when every station is read or passed over, or none is planned. */
  readonly station: PlannedStation | undefined
  readonly wanted: number
  readonly correcting: boolean
  /** Stations passed over. */
  readonly skipped: readonly PlannedStation[]
}

/** The parts of the session that entering depends on. */
export type EntrySession = Pick<Session, 'entering' | 'inHand' | 'skipped'>

export function entryState(bench: OnBench, { entering, inHand, skipped }: EntrySession): EntryState {
  const { job, bore, survey } = bench
  const { at, ...typing } = entering[survey.id] ?? nothingTyped
  const rows = stationsPlanned(job, bore.id, survey.id)
  const passedOver = skippedOf(bore.id, skipped)
  const wanted = job.repeatsPerStation ?? repeatsTakenInJob(job)
  // What was typed before another bore was looked at belongs to the station that it was typed for.
  const chosen = stationAt(rows, inHand?.boreId === bore.id ? inHand : at)
  return {
    ...typing,
    bench,
    rows,
    station: chosen ?? nextStation(rows, wanted, undefined, passedOver),
    wanted,
    correcting: typing.replaces !== undefined && chosen !== undefined,
    skipped: passedOver.flatMap((place) => stationAt(rows, place) ?? []),
  }
}

/** The same at this moment, also between two drawings of the page: keys may come faster than it is drawn. */
export function entryNow(): EntryState {
  return entryState(onBenchNow(), session.getState())
}

/** Whether something is typed that is not kept already. */
export function isBeingTyped({ typed, replaces, station, bench }: EntryState): boolean {
  if (typed.trim() === '') return false
  if (replaces === undefined || !station) return true
  const kept = repeatsAt(station)
  const replaced = replaces === 'all' ? kept : kept.slice(replaces, replaces + 1)
  return typed !== typedText(replaced, bench.setUp, bench.gauge)
}

/** The planned station at a place. */
export function stationAt(rows: EntryState['rows'], place: Place | undefined): PlannedStation | undefined {
  return place && rows.flat().find((station) => samePlace(station, place))
}

/** The stations of a bore that were passed over. */
export function skippedOf(boreId: string, skipped: readonly InHand[]): readonly InHand[] {
  return skipped.filter((station) => station.boreId === boreId)
}
