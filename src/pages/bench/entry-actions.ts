import type { RefObject } from 'react'
import { flushSync } from 'react-dom'
import type { Place } from '../../core/findings'
import { setRepeats } from '../../job/commands'
import { jobStore } from '../../job/job-store'
import { stationsPlanned } from '../../job/selectors'
import { isUnreachable, setUnreachable } from '../../job/unreachable'
import {
  type Entering,
  forgetNotTaken,
  goOnTo,
  type InHand,
  type NotTaken,
  nothingTyped,
  session,
  setAsideTyped,
  setEntering,
  skipStation,
  takeInHand,
} from '../../session/session'
import { placeText } from '../../words/numbers'
import { words } from '../../words/words'
import { nextElsewhere } from './entry-across'
import { nextStation, repeatsAt, samePlace, stationBefore } from './entry-order'
import { type EntryState, entryNow, isBeingTyped, skippedOf, stationAt } from './entry-state'
import { record, take } from './entry-taking'
import { perform } from './perform'
import { typedText } from './typed-text'

/** All that can be done with the station in hand and with what is typed for it, as both are at that moment. */
export interface EntryActions {
  readonly setTyped: (typed: string) => void
  /** A new number for the station in hand; what was typed before it and not taken is set aside. */
  readonly begin: (typed: string) => void
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
  /** Records that this station is out of reach and goes on; one that was read is passed over. */
  readonly cannotReach: () => void
  /** Takes back that the station in hand is out of reach. */
  readonly inReach: () => void
  /** Takes a station in hand, its readings put into the field to be corrected. */
  readonly correct: (place: Place) => void
  /** Takes one repeat of the station in hand into the field. */
  readonly correctRepeat: (index: number) => void
  /** Takes the repeat that is in the field out. */
  readonly takeRepeatOut: () => void
  /** A key typed on a station begins a number there. */
  readonly type: (place: Place, key: string) => void
  /** Takes the readings of stations out, and with them what says that one is out of reach. */
  readonly clear: (places: readonly Place[]) => void
  /** Puts a number that was set aside back into the field. */
  readonly putBack: (one: NotTaken) => void
}

type Field = RefObject<HTMLInputElement | null>

export function entryActions(input: Field): EntryActions {
  return { ...typingActions, ...movingActions, ...takingActions, ...correctingActions(input) }
}

const typingActions: Pick<EntryActions, 'setTyped' | 'begin' | 'leave' | 'putBack'> = {
  setTyped: (text) => {
    const now = entryNow()
    write(now, text, now.station, now.replaces)
  },
  begin: (text) => {
    const now = entryNow()
    setAside(now)
    write(now, text, now.station, now.replaces)
  },
  leave: () => {
    write(entryNow(), '')
    takeInHand(undefined)
  },
  putBack: (one) => {
    const now = entryNow()
    setAside(now)
    forgetNotTaken(one)
    const place = stationAt(now.rows, one.at) ?? now.station
    if (place) takeInHand(inBore(now, place))
    write(now, one.typed, place)
  },
}

const movingActions: Pick<EntryActions, 'goTo' | 'back' | 'onward' | 'skip' | 'cannotReach' | 'inReach'> = {
  goTo: (place) => moveTo(entryNow(), place),
  back: () => {
    const now = entryNow()
    const before = stationBefore(now.rows, now.station)
    if (before) moveTo(now, before)
  },
  onward: () => {
    const now = entryNow()
    if (now.station) goOn(now, now.station)
  },
  skip: () => {
    const now = entryNow()
    if (!now.station) return
    skipStation(inBore(now, now.station))
    passOn(now, now.station)
  },
  cannotReach: () => {
    const now = entryNow()
    if (!now.station) return
    if (repeatsAt(now.station).length > 0) skipStation(inBore(now, now.station))
    else markReach(now, now.station, true)
    passOn(now, now.station)
  },
  inReach: () => {
    const now = entryNow()
    if (now.station) markReach(now, now.station, false)
  },
}

const takingActions: Pick<EntryActions, 'enter' | 'again'> = {
  enter: () => {
    const now = entryNow()
    const count = take(now)
    if (!now.station || count === undefined) return
    const isDone = count >= now.wanted || now.replaces !== undefined
    if (!isDone) takeInHand(inBore(now, now.station))
    else goOn(now, now.station)
  },
  again: () => {
    const now = entryNow()
    const isTyping = now.typed.trim() !== '' || now.replaces !== undefined
    const place = isTyping ? now.station : now.bench.survey.readings.at(-1)
    if (isTyping && take(now) === undefined) return
    if (place) takeInHand(inBore(now, place))
  },
}

function correctingActions(input: Field) {
  const hold = (place: Place, text: string, isKey: boolean) => {
    const now = entryNow()
    const kept = keptAt(now, place)
    setAside(now)
    // The field may be asleep until a station is in hand, and the next key must find it awake.
    flushSync(() => {
      takeInHand(inBore(now, place))
      write(now, text, place, kept.length > 0 && !(isKey && kept.length < now.wanted) ? 'all' : undefined)
    })
    input.current?.focus()
    if (isKey) input.current?.setSelectionRange(text.length, text.length)
    else input.current?.select()
  }
  return {
    type: (place: Place, key: string) => hold(place, key, true),
    correct: (place: Place) => {
      const { setUp, gauge } = entryNow().bench
      hold(place, typedText(keptAt(entryNow(), place), setUp, gauge), false)
    },
    correctRepeat: (index: number) => {
      const now = entryNow()
      const value = now.station && repeatsAt(now.station)[index]
      if (!now.station || value === undefined) return
      setAside(now)
      takeInHand(inBore(now, now.station))
      write(now, typedText([value], now.bench.setUp, now.bench.gauge), now.station, index)
    },
    takeRepeatOut: () => {
      const now = entryNow()
      const { station, replaces } = now
      if (!station || replaces === undefined) return
      const left = replaces === 'all' ? [] : repeatsAt(station).toSpliced(replaces, 1)
      const isOut = record(now, station, left, words.changes.readingOut(placeText(station)))
      if (isOut) takeInHand(inBore(now, station))
    },
    clear: (places: readonly Place[]) => {
      const { bore, survey } = entryNow().bench
      const held = places.filter((place) => isUnreachable(survey, place) || isRead(survey, place))
      const [first] = held
      if (!first) return
      const one = isRead(survey, first) ? words.changes.readingOut : words.changes.withinReach
      const label = held.length > 1 ? words.changes.readingsOut(held.length) : one(placeText(first))
      perform(label, (before) =>
        held.reduce((job, place) => {
          const reachable = setUnreachable(job, bore.id, survey.id, place, false)
          return setRepeats(reachable, bore.id, survey.id, place, [])
        }, before),
      )
    },
  }
}

function isRead({ readings }: EntryState['bench']['survey'], place: Place): boolean {
  return readings.some((reading) => samePlace(reading, place))
}

function markReach({ bench: { bore, survey } }: EntryState, place: Place, isOut: boolean) {
  const at = placeText(place)
  const label = isOut ? words.changes.outOfReach(at) : words.changes.withinReach(at)
  perform(label, (job) => setUnreachable(job, bore.id, survey.id, place, isOut))
}

/** What is typed goes along to another station, but not what was to replace something at this one. */
function moveTo(now: EntryState, place: Place) {
  if (now.replaces !== undefined) setAside(now)
  takeInHand(inBore(now, place))
  write(now, now.replaces === undefined ? now.typed : '', place)
}

function passOn(now: EntryState, from: Place) {
  if (now.replaces !== undefined) setAside(now)
  write(now, '')
  goOn(now, from)
  const next = entryNow()
  if (now.replaces === undefined) write(next, now.typed, next.station)
}

/** Keeps what is typed and would be lost: nobody is to type it twice. */
function setAside(now: EntryState) {
  if (!isBeingTyped(now)) return
  const { station, typed, bench } = now
  const at = station && { depthMm: station.depthMm, axisDegrees: station.axisDegrees }
  setAsideTyped({ surveyId: bench.survey.id, typed, ...(at ? { at } : {}) })
}

function write({ bench }: EntryState, typed: string, at?: Place, replaces?: Entering['replaces']) {
  setEntering(bench.survey.id, {
    ...nothingTyped,
    typed,
    ...(at ? { at: { depthMm: at.depthMm, axisDegrees: at.axisDegrees } } : {}),
    ...(replaces === undefined ? {} : { replaces }),
  })
}

/** Takes in hand where the number after one at `from` belongs, in this bore or in another. */
function goOn(now: EntryState, from: Place): void {
  const { bore, survey } = now.bench
  const { entryOrder: order, skipped } = session.getState()
  const { job } = jobStore.getState()
  const isLatest = bore.surveys.at(-1)?.id === survey.id
  const across = { job, order, wanted: now.wanted, skipped }
  const elsewhere = isLatest ? nextElsewhere(inBore(now, from), across) : undefined
  if (elsewhere && elsewhere.boreId !== bore.id) {
    goOnTo(elsewhere)
    return
  }
  const rows = stationsPlanned(job, bore.id, survey.id)
  const next = elsewhere ?? nextStation(rows, now.wanted, from, skippedOf(bore.id, skipped))
  takeInHand(next && inBore(now, next))
}

function inBore({ bench }: EntryState, { depthMm, axisDegrees }: Place): InHand {
  return { boreId: bench.bore.id, depthMm, axisDegrees }
}

function keptAt({ rows }: EntryState, place: Place): readonly number[] {
  const station = stationAt(rows, place)
  return station ? repeatsAt(station) : []
}
