import type { RefObject } from 'react'
import type { Place } from '../../core/findings'
import { setRepeats } from '../../job/commands'
import { jobStore } from '../../job/job-store'
import { type PlannedStation, stationsPlanned } from '../../job/selectors'
import { isSettingOpen } from '../../job/setting-size'
import { isUnreachable, setUnreachable } from '../../job/unreachable'
import {
  type Entering,
  goOnTo,
  type InHand,
  session,
  setEntering,
  skipStation,
  takeInHand,
} from '../../session/session'
import { placeText } from '../../words/numbers'
import { words } from '../../words/words'
import { nextElsewhere } from './entry-across'
import { nextStation, repeatsAt, samePlace, stationBefore } from './entry-order'
import { perform } from './perform'
import { readRepeats } from './read-repeats'
import type { Refusal } from './TypedField'
import { typedText } from './typed-text'
import type { OnBench } from './use-job'

/** All that can be done with the station in hand and with what is typed for it. */
export interface EntryActions {
  readonly setTyped: (typed: string) => void
  /** Takes what is typed and goes on to the next station once this one has as many repeats as wanted. */
  readonly enter: () => void
  /** Takes what is typed and stays for one more; with nothing typed, goes back to the station read last. */
  readonly again: () => void
  /** Gives up what is typed and goes to where the next number belongs. */
  readonly leave: () => void
  /** Takes a station in hand; what is typed stays, and belongs to that station now. */
  readonly goTo: (place: Place) => void
  /** To the station before this one. */
  readonly back: () => void
  /** To where the number after one at this station belongs. */
  readonly onward: () => void
  /** Passes this station over and goes on, without recording anything. */
  readonly skip: () => void
  /** Records that this station is out of reach and goes on; what was read there stays and it is passed over. */
  readonly cannotReach: () => void
  /** Takes a station in hand, its readings put into the field to be corrected. */
  readonly correct: (place: Place) => void
  /** Takes one repeat of the station in hand into the field. */
  readonly correctRepeat: (index: number) => void
  /** Takes the repeat that is in the field out. */
  readonly takeRepeatOut: () => void
  /** A key typed on a station begins a number there. */
  readonly type: (place: Place, key: string) => void
  readonly clear: (place: Place) => void
}

export interface EntryHeld {
  readonly bench: OnBench
  readonly rows: readonly (readonly PlannedStation[])[]
  readonly station: PlannedStation | undefined
  readonly wanted: number
  readonly typed: string
  readonly replaces: Entering['replaces']
  readonly input: RefObject<HTMLInputElement | null>
  readonly setRefusal: (refusal: Refusal) => void
  readonly setTaken: (taken: string) => void
}

export function entryActions(held: EntryHeld): EntryActions {
  const { station, typed, replaces } = held
  const write = writeTo(held)
  const hand = (place: Place | undefined) => takeInHand(place && inBore(held, place))
  return {
    ...takingActions(held),
    ...repeatActions(held),
    setTyped: (text) => write(text, replaces),
    leave: () => {
      write('')
      hand(undefined)
    },
    goTo: (place) => {
      hand(place)
      write(replaces === undefined ? typed : '')
    },
    back: () => {
      const before = stationBefore(held.rows, station)
      if (!before) return
      hand(before)
      write(replaces === undefined ? typed : '')
    },
    onward: () => {
      if (station) goOn(held, station)
    },
    skip: () => {
      if (!station) return
      skipStation(inBore(held, station))
      goOn(held, station)
      write(replaces === undefined ? typed : '')
    },
    cannotReach: () => {
      if (!station) return
      if (repeatsAt(station).length > 0) skipStation(inBore(held, station))
      else markReach(held, station, true)
      goOn(held, station)
      write(replaces === undefined ? typed : '')
    },
    clear: (place) => {
      const { bore, survey } = held.bench
      if (isUnreachable(survey, place)) markReach(held, place, false)
      else
        perform(words.changes.readingOut(placeText(place)), (j) =>
          setRepeats(j, bore.id, survey.id, place, []),
        )
    },
  }
}

function markReach({ bench: { bore, survey } }: EntryHeld, place: Place, isOut: boolean) {
  const at = placeText(place)
  const label = isOut ? words.changes.outOfReach(at) : words.changes.withinReach(at)
  perform(label, (job) => setUnreachable(job, bore.id, survey.id, place, isOut))
}

function takingActions(held: EntryHeld): Pick<EntryActions, 'enter' | 'again'> {
  const { station, typed, replaces, wanted, bench } = held
  return {
    enter: () => {
      const count = station && take(held, station)
      if (!station || count === undefined) return
      const isDone = count >= wanted || replaces !== undefined
      if (!isDone) takeInHand(inBore(held, station))
      else goOn(held, station)
    },
    again: () => {
      const isTyping = typed.trim() !== '' || replaces !== undefined
      const place = isTyping ? station : bench.survey.readings.at(-1)
      if (isTyping && (!station || take(held, station) === undefined)) return
      if (place) takeInHand(inBore(held, place))
    },
  }
}

function repeatActions(held: EntryHeld) {
  const { station, replaces, rows, input, bench } = held
  const write = writeTo(held)
  const hold = (place: Place, text: string) => {
    const isRead = keptAt(rows, place).length > 0
    takeInHand(inBore(held, place))
    write(text, isRead ? 'all' : undefined)
    requestAnimationFrame(() => {
      input.current?.focus()
      if (isRead && text.length > 1) input.current?.select()
    })
  }
  return {
    type: hold,
    correct: (place: Place) => hold(place, typedText(keptAt(rows, place), bench.setUp, bench.gauge)),
    correctRepeat: (index: number) => {
      const value = station && repeatsAt(station)[index]
      if (!station || value === undefined) return
      takeInHand(inBore(held, station))
      write(typedText([value], bench.setUp, bench.gauge), index)
    },
    takeRepeatOut: () => {
      if (!station || replaces === undefined) return
      const left = withRepeats(repeatsAt(station), [], replaces)
      const isOut = record(held, station, left, words.changes.readingOut(placeText(station)))
      if (isOut) takeInHand(inBore(held, station))
    },
  }
}

/** Takes what is typed; how many repeats the station has then, undefined when it was refused. */
function take(held: EntryHeld, at: PlannedStation): number | undefined {
  const { setUp, gauge } = held.bench
  const read = readRepeats(held.typed, setUp, gauge, isSettingOpen(setUp))
  if (!read.ok) {
    refuse(held, read.why)
    return undefined
  }
  const all = withRepeats(repeatsAt(at), read.values, held.replaces)
  if (!record(held, at, all, words.changes.reading(placeText(at)))) return undefined
  held.setTaken(words.next.taken(placeText(at), held.typed.trim()))
  return all.length
}

/** Sets the repeats of a station; false, with the reason shown, when they were refused. */
function record(held: EntryHeld, at: Place, values: readonly number[], label: string): boolean {
  const { bore, survey } = held.bench
  const why = perform(label, (j) => setRepeats(j, bore.id, survey.id, at, values))
  if (why === undefined) writeTo(held)('')
  else refuse(held, why)
  return why === undefined
}

function refuse({ setRefusal, setTaken }: EntryHeld, why: string) {
  setRefusal(why)
  setTaken('')
}

function writeTo({ setRefusal }: EntryHeld) {
  return (typed: string, replaces?: Entering['replaces']) => {
    setEntering({ typed, ...(replaces === undefined ? {} : { replaces }) })
    setRefusal(undefined)
  }
}

/** Takes in hand where the number after one at `from` belongs, in this bore or in another. */
function goOn(held: EntryHeld, from: Place): void {
  const { bore, survey } = held.bench
  const { entryOrder: order, skipped } = session.getState()
  const isLatest = bore.surveys.at(-1)?.id === survey.id
  const across = { job: jobStore.getState().job, order, wanted: held.wanted, skipped }
  const elsewhere = isLatest ? nextElsewhere(inBore(held, from), across) : undefined
  if (elsewhere && elsewhere.boreId !== bore.id) {
    goOnTo(elsewhere)
    return
  }
  const next = elsewhere ?? stationAfter(held, from)
  takeInHand(next && inBore(held, next))
}

/** Where the number after one at `from` belongs in this bore, by job and session as they are now. */
function stationAfter({ bench: { bore, survey }, wanted }: EntryHeld, from: Place): Place | undefined {
  const rows = stationsPlanned(jobStore.getState().job, bore.id, survey.id)
  return nextStation(rows, wanted, from, skippedOf(bore.id, session.getState().skipped))
}

function inBore({ bench }: EntryHeld, { depthMm, axisDegrees }: Place): InHand {
  return { boreId: bench.bore.id, depthMm, axisDegrees }
}

function withRepeats(
  before: readonly number[],
  values: readonly number[],
  replaces: Entering['replaces'],
): readonly number[] {
  if (replaces === 'all') return values
  return replaces === undefined ? [...before, ...values] : before.toSpliced(replaces, 1, ...values)
}

function keptAt(rows: EntryHeld['rows'], place: Place): readonly number[] {
  const station = stationAt(rows, place)
  return station ? repeatsAt(station) : []
}

/** The planned station at a place. */
export function stationAt(rows: EntryHeld['rows'], place: Place | undefined): PlannedStation | undefined {
  return place && rows.flat().find((station) => samePlace(station, place))
}

/** The stations of a bore that were passed over. */
export function skippedOf(boreId: string, skipped: readonly InHand[]): readonly InHand[] {
  return skipped.filter((station) => station.boreId === boreId)
}
