import { type RefObject, useRef, useState } from 'react'
import type { Place } from '../../core/findings'
import { setRepeats } from '../../job/commands'
import { jobStore } from '../../job/job-store'
import { type PlannedStation, stationsPlanned } from '../../job/selectors'
import { setEntering, takeInHand } from '../../session/session'
import { placeText } from '../../words/numbers'
import { words } from '../../words/words'
import { nextStation, repeatsAt, repeatsTaken } from './entry-order'
import { perform } from './perform'
import { readRepeats } from './read-repeats'
import type { Refusal } from './TypedField'
import { typedText } from './typed-text'
import type { OnBench } from './use-job'
import { useSession } from './use-job'

/** Entering readings one station after another, whatever the page looks like. */
export interface Entry {
  readonly input: RefObject<HTMLInputElement | null>
  readonly rows: readonly (readonly PlannedStation[])[]
  /** The station in hand; undefined when every station is read, or none is planned. */
  readonly station: PlannedStation | undefined
  readonly wanted: number
  readonly typed: string
  readonly correcting: boolean
  /** What is wrong with the number entered last. */
  readonly refusal: Refusal
  /** The number taken last, in words. */
  readonly taken: string
  readonly setTyped: (typed: string) => void
  /** Takes what is typed and goes on to the next station once this one has as many repeats as wanted. */
  readonly enter: () => void
  /** Gives up what is typed and goes to where the next number belongs. */
  readonly leave: () => void
  /** Takes a station in hand, its readings put into the field to be corrected. */
  readonly correct: (place: Place) => void
  /** A key typed on a station begins a number there. */
  readonly type: (place: Place, key: string) => void
  readonly clear: (place: Place) => void
}

/** The station in hand of the bore on the bench, what is typed for it, and all that can be done with both. */
export function useEntry(bench: OnBench): Entry {
  const { job, bore, survey, setUp } = bench
  const rows = stationsPlanned(job, bore.id, survey.id)
  const input = useRef<HTMLInputElement>(null)
  const [refusal, setRefusal] = useState<Refusal>()
  const [taken, setTaken] = useState('')
  const { typed, correcting } = useSession((state) => state.entering)
  const wanted = useSession((state) => state.repeatsPerStation) ?? repeatsTaken(rows)
  const chosen = useSession((state) => state.inHand)
  const inHand = chosen?.boreId === bore.id ? chosen : undefined
  const station = stationAt(rows, inHand) ?? nextStation(rows, wanted)
  const write = (text: string, replaces: boolean) => {
    setEntering({ typed: text, correcting: replaces })
    setRefusal(undefined)
  }
  const hold = (place: Place, text: string) => {
    const replaces = kept(rows, place).length > 0
    takeInHand({ boreId: bore.id, ...placeOf(place) })
    write(text, replaces)
    requestAnimationFrame(() => {
      input.current?.focus()
      if (replaces && text.length > 1) input.current?.select()
    })
  }
  const enter = () => {
    if (!station) return
    const read = readRepeats(typed, setUp)
    if (!read.ok) return refuse(read.why)
    const all = correcting ? read.values : [...repeatsAt(station), ...read.values]
    const why = perform(words.changes.reading(placeText(station)), (j) =>
      setRepeats(j, bore.id, survey.id, station, all),
    )
    if (why !== undefined) return refuse(why)
    setTaken(words.next.taken(placeText(station), typed.trim()))
    write('', false)
    const after = stationsPlanned(jobStore.getState().job, bore.id, survey.id)
    takeInHand(onward(all.length >= wanted || correcting ? nextStation(after, wanted, station) : station))
  }
  const refuse = (why: string) => {
    setRefusal(why)
    setTaken('')
  }
  const onward = (to: Place | undefined) => to && { boreId: bore.id, ...placeOf(to) }
  return {
    input,
    rows,
    station,
    wanted,
    typed,
    correcting: correcting && inHand !== undefined,
    refusal,
    taken,
    setTyped: (text) => write(text, correcting),
    enter,
    leave: () => {
      write('', false)
      takeInHand(undefined)
    },
    correct: (place) => hold(place, typedText(kept(rows, place), setUp)),
    type: hold,
    clear: (place) => {
      perform(words.changes.readingOut(placeText(place)), (j) => setRepeats(j, bore.id, survey.id, place, []))
    },
  }
}

function stationAt(rows: Entry['rows'], place: Place | undefined): PlannedStation | undefined {
  return rows.flat().find((s) => s.depthMm === place?.depthMm && s.axisDegrees === place.axisDegrees)
}

function kept(rows: Entry['rows'], place: Place): readonly number[] {
  const station = stationAt(rows, place)
  return station ? repeatsAt(station) : []
}

/** The place alone, of anything that has one. */
export function placeOf({ depthMm, axisDegrees }: Place): Place {
  return { depthMm, axisDegrees }
}
