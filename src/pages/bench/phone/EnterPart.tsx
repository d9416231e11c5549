import './enter-part.css'
import { type KeyboardEvent, useState } from 'react'
import { showPart } from '../../../session/session'
import { degrees, depth, placeText } from '../../../words/numbers'
import { words } from '../../../words/words'
import { repeatsAt } from '../entry-order'
import { openQuestions } from '../open-questions'
import { questionAt } from '../QuestionHere'
import { directionSentence, readingEcho, readingFieldName } from '../reading-echo'
import { takenText } from '../taken-text'
import { typedText } from '../typed-text'
import { useAids } from '../use-aids'
import { type Entry, useEntry } from '../use-entry'
import { useGaugeKeys } from '../use-gauge-keys'
import { type OnBench, useSession } from '../use-job'
import { NothingToEnter } from './NothingToEnter'
import { Pad } from './Pad'
import { StationPictogram } from './StationPictogram'
import { Unreachable } from './Unreachable'

interface EnterProps {
  readonly bench: OnBench
  readonly entry: Entry
}

/** One station at a time: where it is, the number, its repeats, and a pad of keys. */
export function EnterPart({ bench }: { readonly bench: OnBench }) {
  const entry = useEntry(bench)
  useAids(bench, entry)
  useGaugeKeys({
    ...entry,
    type: (place, key) => {
      showPart('enter')
      entry.type(place, key)
    },
  })
  const isLeftHanded = useSession((state) => state.leftHanded)
  return (
    <section className="enter-part" aria-label={words.next.label}>
      {entry.station ? (
        <Station bench={bench} entry={entry} />
      ) : (
        <NothingToEnter bench={bench} entry={entry} />
      )}
      <Pad
        typed={entry.typed}
        onTyped={entry.setTyped}
        onEnter={entry.enter}
        onAgain={entry.again}
        isLeftHanded={isLeftHanded}
        isIdle={!entry.station}
      />
      <p className="only-heard" aria-live="polite">
        {takenText(entry)}
      </p>
    </section>
  )
}

function Station({ bench, entry }: EnterProps) {
  const { station } = entry
  const [asked, setAsked] = useState<string>()
  if (!station) return null
  const here = `${bench.bore.id} ${placeText(station)}`
  const isAsked = asked === here
  return (
    <div className="station-in-hand">
      <div className="station-head">
        <StationPictogram
          place={station}
          levelsMm={bench.survey.levelsMm}
          lengthMm={Math.max(bench.finding.drawnLengthMm, ...bench.survey.levelsMm)}
        />
        <div>
          <h2>{words.next.deepAcross(depth(station.depthMm), degrees(station.axisDegrees))}</h2>
          <Repeats bench={bench} entry={entry} />
        </div>
      </div>
      <div>
        <NumberTyped bench={bench} entry={entry} />
        {isAsked ? null : <Said bench={bench} entry={entry} />}
      </div>
      {isAsked ? (
        <Unreachable
          bench={bench}
          place={station}
          onOnly={entry.cannotReach}
          onBelt={entry.onward}
          onDone={() => setAsked(undefined)}
        />
      ) : (
        <StationRow entry={entry} onCannotReach={() => setAsked(here)} />
      )}
    </div>
  )
}

/** Where to go from this station; while a repeat is corrected, what becomes of it. */
function StationRow(props: { readonly entry: Entry; readonly onCannotReach: () => void }) {
  const { entry, onCannotReach } = props
  const rows = entry.correcting
    ? [
        { text: words.phone.leaveIt, press: entry.leave },
        { text: words.questions.takeItOut, press: entry.takeRepeatOut },
      ]
    : [
        { text: words.next.back, press: entry.back },
        { text: words.next.skip, press: entry.skip },
        { text: words.next.cannotReach, press: onCannotReach },
      ]
  return (
    <div className="station-row">
      {rows.map(({ text, press }) => (
        <button key={text} type="button" onClick={press}>
          {text}
        </button>
      ))}
    </div>
  )
}

/** The repeats as chips, and how many there are to be. */
function Repeats({ bench, entry }: EnterProps) {
  const { station, wanted, correcting, typed } = entry
  const replaced = entry.replaces
  const repeats = station ? repeatsAt(station) : []
  const number = Math.min(repeats.length + 1, wanted)
  return (
    <fieldset className="repeats" aria-label={words.phone.repeats}>
      {repeats
        .map((value, index) => ({ index, figure: typedText([value], bench.setUp, bench.gauge) }))
        .map(({ index, figure }) => {
          const isHere = correcting && (replaced === index || replaced === 'all')
          return (
            <button
              key={index}
              type="button"
              aria-label={words.phone.repeatNumber(index + 1, figure)}
              aria-pressed={isHere}
              onClick={() => entry.correctRepeat(index)}
            >
              {isHere ? typed : figure}
            </button>
          )
        })}
      {wanted > 1 && repeats.length < wanted ? (
        <span className="aside">{words.next.repeat(number, wanted)}</span>
      ) : null}
    </fieldset>
  )
}

/** What is typed, large. The pad writes it, so no other keys come up; keys of a keyboard still do. */
function NumberTyped({ bench, entry }: EnterProps) {
  const { input, station, typed, setTyped, enter, leave, refusal } = entry
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') {
      event.preventDefault()
      enter()
    }
    if (event.key === 'Escape') leave()
  }
  const long = typed.length > 9 ? ' is-long' : ''
  return (
    <input
      ref={input}
      type="text"
      inputMode="none"
      autoComplete="off"
      spellCheck={false}
      className={`number-typed${long}`}
      aria-label={`${readingFieldName(bench)}: ${station ? placeText(station) : ''}`}
      aria-invalid={refusal !== undefined}
      aria-describedby="enter-said"
      placeholder={readingFieldName(bench)}
      value={typed}
      onChange={(event) => setTyped(event.target.value)}
      onKeyDown={onKeyDown}
    />
  )
}

/** Beneath the number: the same in the other unit, then what was refused, a question, or the direction. */
function Said({ bench, entry }: EnterProps) {
  const { typed, refusal } = entry
  const here = [
    ...(entry.taken?.boreId === bench.bore.id ? [entry.taken] : []),
    ...(entry.station ? [entry.station] : []),
  ]
  const question = typed === '' ? questionAt(openQuestions(bench), here)?.text : undefined
  return (
    <div id="enter-said" className="station-said">
      <p className="other-unit">{readingEcho(typed, bench)}</p>
      {refusal === undefined ? null : (
        <p role="alert" className="refusal">
          {refusal}
        </p>
      )}
      {refusal === undefined && question !== undefined ? (
        <button type="button" className="question-line" onClick={() => showPart('findings')}>
          <span>{question}</span>
        </button>
      ) : null}
      {refusal === undefined && question === undefined ? <Waiting bench={bench} entry={entry} /> : null}
    </div>
  )
}

/** The number that gave way to another last, to be put back by a tap; else which way the needle goes. */
function Waiting({ bench, entry }: EnterProps) {
  const all = useSession((state) => state.notTaken)
  const last = all.findLast(({ surveyId }) => surveyId === bench.survey.id)
  if (!last) return <p>{directionSentence(bench)}</p>
  return (
    <button type="button" className="question-line" onClick={() => entry.putBack(last)}>
      <span>
        {words.next.notTaken(last.typed, last.at ? placeText(last.at) : '')}. {words.next.putBackShort}
      </span>
    </button>
  )
}
