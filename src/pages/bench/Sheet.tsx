import { useRef, useState } from 'react'
import type { Place } from '../../core/findings'
import { setRepeats } from '../../job/commands'
import { stationsPlanned } from '../../job/selectors'
import { session, setRepeatsPerStation, takeInHand } from '../../session/session'
import { placeText } from '../../words/numbers'
import { words } from '../../words/words'
import { AddToPlan } from './AddToPlan'
import { BoreSentence } from './BoreSentence'
import { nextStation, repeatsAt, repeatsTaken } from './entry-order'
import { LimitsSentence } from './LimitsSentence'
import { NextField } from './NextField'
import { OpeningsEditor } from './OpeningsEditor'
import { perform } from './perform'
import { ReadingsGrid } from './ReadingsGrid'
import { SetUpSentence } from './SetUpSentence'
import { typedText } from './typed-text'
import type { OnBench } from './use-job'
import { useSession } from './use-job'

/** Left: set-up and limits as sentences, the grid of readings, and the field for the next one. */
export function Sheet({ bench }: { readonly bench: OnBench }) {
  return (
    <section className="sheet" aria-label={words.parts.sheet}>
      <div className="sheet-scroll">
        <SetUpSentence {...bench} />
        <LimitsSentence {...bench} />
        <BoreSentence {...bench} />
        <OpeningsEditor {...bench} />
        <Entry bench={bench} />
      </div>
    </section>
  )
}

function Entry({ bench }: { readonly bench: OnBench }) {
  const { job, bore, survey, setUp } = bench
  const rows = stationsPlanned(job, bore.id)
  const input = useRef<HTMLInputElement>(null)
  const [typed, setTyped] = useState('')
  const [correcting, setCorrecting] = useState(false)
  const wanted = useSession((state) => state.repeatsPerStation) ?? repeatsTaken(rows)
  const chosen = useSession((state) => state.inHand)
  const inHand = chosen?.boreId === bore.id ? chosen : undefined
  const station =
    rows.flat().find((s) => s.depthMm === inHand?.depthMm && s.axisDegrees === inHand.axisDegrees) ??
    nextStation(rows, wanted)
  const hold = (place: Place, text: string, replaces: boolean) => {
    takeInHand({ boreId: bore.id, depthMm: place.depthMm, axisDegrees: place.axisDegrees })
    setCorrecting(replaces)
    setTyped(text)
    requestAnimationFrame(() => {
      input.current?.focus()
      if (replaces && text.length > 1) input.current?.select()
    })
  }
  const kept = (place: Place) =>
    rows
      .flat()
      .filter((s) => s.depthMm === place.depthMm && s.axisDegrees === place.axisDegrees)
      .flatMap(repeatsAt)
  const leave = () => {
    setCorrecting(false)
    setTyped('')
    takeInHand(undefined)
  }
  const take = (values: readonly number[]) => {
    if (!station) return undefined
    const all = correcting ? values : [...repeatsAt(station), ...values]
    const why = perform(words.changes.reading(placeText(station)), (j) =>
      setRepeats(j, bore.id, survey.id, station, all),
    )
    if (why !== undefined) return why
    setTyped('')
    setCorrecting(false)
    if (all.length >= wanted || correcting) {
      const next = nextStation(rows, wanted, station)
      const isSame = next?.depthMm === station.depthMm && next.axisDegrees === station.axisDegrees
      takeInHand(next && !isSame ? { boreId: bore.id, ...placeOf(next) } : undefined)
    } else takeInHand({ boreId: bore.id, ...placeOf(station) })
    return undefined
  }
  const actions = {
    correct: (place: Place) => hold(place, typedText(kept(place), setUp), kept(place).length > 0),
    type: (place: Place, key: string) => hold(place, key, kept(place).length > 0),
    clear: (place: Place) => {
      perform(words.changes.readingOut(placeText(place)), (j) => setRepeats(j, bore.id, survey.id, place, []))
    },
  }
  return (
    <>
      <ReadingsGrid bench={bench} rows={rows} inHand={station && placeOf(station)} actions={actions} />
      <AddToPlan {...bench} />
      <NextField
        input={input}
        setUp={setUp}
        place={station && placeOf(station)}
        planned={rows.flat().length > 0}
        repeats={station ? repeatsAt(station) : []}
        wanted={wanted}
        onWanted={setRepeatsPerStation}
        correcting={correcting && session.getState().inHand !== undefined}
        typed={typed}
        onTyped={setTyped}
        take={take}
        onLeave={leave}
      />
    </>
  )
}

function placeOf({ depthMm, axisDegrees }: Place): Place {
  return { depthMm, axisDegrees }
}
