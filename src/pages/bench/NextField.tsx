import { type ClipboardEvent, type KeyboardEvent, useRef } from 'react'
import { placeText } from '../../words/numbers'
import { words } from '../../words/words'
import { ClosingStep } from './ClosingStep'
import { repeatChoices, repeatsAt } from './entry-order'
import { NotTakenList } from './NotTakenList'
import { openQuestions } from './open-questions'
import { QuestionHere } from './QuestionHere'
import { directionSentence, readingEcho, readingFieldName } from './reading-echo'
import { takenText } from './taken-text'
import type { Entry } from './use-entry'
import type { OnBench } from './use-job'

export interface NextFieldProps {
  readonly entry: Entry
  readonly bench: OnBench
  readonly onWanted: (repeats: number) => void
  /** A block of several cells was pasted into the field. */
  readonly onBlock: (text: string) => void
  /** Which of several bores the station is in. */
  readonly boreName?: string
}

/** Where the next number goes: always visible beneath the grid, so that a person types and presses Enter. */
export function NextField(props: NextFieldProps) {
  const { entry, bench, onBlock } = props
  const { input, station, typed, refusal, setTyped, enter, leave, taken } = entry
  const takeKey = useEnterKey(entry)
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') takeKey(event)
    if (event.key === 'Escape') leave()
  }
  const onPaste = (event: ClipboardEvent) => {
    const text = event.clipboardData.getData('text/plain').trim()
    if (!/[\t\r\n]/.test(text)) return
    event.preventDefault()
    onBlock(text)
  }
  const here = [...(taken?.boreId === bench.bore.id ? [taken] : []), ...(station ? [station] : [])]
  return (
    <section className="next" aria-label={words.next.label}>
      <QuestionHere questions={openQuestions(bench)} places={here} />
      <div className="next-head">
        <NextHead {...props} />
      </div>
      <div className="next-row">
        <input
          ref={input}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          className="next-input"
          aria-label={`${readingFieldName(bench)}: ${station ? placeText(station) : words.next.allRead}`}
          aria-invalid={refusal !== undefined}
          aria-describedby="next-refusal next-echo"
          disabled={!station && typed === ''}
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
          onKeyDown={onKeyDown}
          onPaste={onPaste}
        />
        <button type="button" className="button" disabled={!station && typed === ''} onClick={enter}>
          {words.next.take}
        </button>
      </div>
      <p id="next-refusal" role="alert" className="refusal">
        {refusal}
      </p>
      <NotTakenList surveyId={bench.survey.id} onPutBack={entry.putBack} />
      <div className="next-foot">
        <div id="next-echo" className="aside">
          {station || !isPlanned(entry) ? (
            (readingEcho(typed, bench) ?? directionSentence(bench) ?? words.next.severalHint)
          ) : (
            <AllRead entry={entry} bench={bench} />
          )}
        </div>
        {station ? <ReachButtons entry={entry} /> : null}
      </div>
      <p className="only-heard" aria-live="polite">
        {takenText(entry)}
      </p>
    </section>
  )
}

/** Where a gauge ends its line by two signs, it is the first of them that takes the number. */
const lineEndMs = 100

function useEnterKey({ typed, correcting, enter }: Entry) {
  const last = useRef(Number.NEGATIVE_INFINITY)
  return (event: KeyboardEvent) => {
    event.preventDefault()
    const isSecond = event.timeStamp - last.current < lineEndMs && typed === '' && !correcting
    last.current = event.timeStamp
    if (!event.repeat && !isSecond) enter()
  }
}

function isPlanned({ rows }: Entry): boolean {
  return rows.some((row) => row.length > 0)
}

/** Every station is read, passed over or out of reach: what is left to do. */
function AllRead({ entry, bench }: { readonly entry: Entry; readonly bench: OnBench }) {
  const [first] = entry.skipped
  if (!first) return <ClosingStep {...bench} />
  return (
    <p>
      {words.phone.skipped(words.app.and(entry.skipped.map(placeText)))}{' '}
      <button type="button" className="quiet" onClick={() => entry.goTo(first)}>
        {words.phone.measureSkipped}
      </button>
    </p>
  )
}

function ReachButtons({ entry }: { readonly entry: Entry }) {
  const said = words.next
  const { station, skip, cannotReach, inReach } = entry
  const ways = station?.isUnreachable
    ? [{ text: said.inReach, press: inReach }]
    : [
        { text: said.skip, press: skip },
        { text: said.cannotReach, press: cannotReach },
      ]
  return (
    <div className="reach-buttons">
      {ways.map(({ text, press }) => (
        <button key={text} type="button" className="quiet" onClick={press}>
          {text}
        </button>
      ))}
    </div>
  )
}

function NextHead({ entry, onWanted, boreName }: NextFieldProps) {
  const said = words.next
  const { station, wanted, correcting } = entry
  const at = station && placeText(station)
  const place = at !== undefined && boreName !== undefined ? said.inBore(boreName, at) : at
  const byPointer = useRef(false)
  return (
    <>
      <strong>
        {!isPlanned(entry)
          ? words.grid.noLevels
          : place === undefined
            ? said.allRead
            : correcting
              ? said.correcting(place)
              : said.next(place)}
      </strong>
      {station && !correcting && wanted > 1 ? (
        <span className="aside">{said.repeat(Math.min(repeatsAt(station).length + 1, wanted), wanted)}</span>
      ) : null}
      <label className="wanted">
        {said.repeatsPerStation}
        <select
          value={wanted}
          onPointerDown={() => {
            byPointer.current = true
          }}
          onKeyDown={() => {
            byPointer.current = false
          }}
          onChange={(event) => {
            onWanted(Number(event.target.value))
            // A hand that chose goes back to its gauge: the first digit of a reading is no choice here.
            if (byPointer.current) event.target.blur()
          }}
        >
          {repeatChoices(wanted).map((count) => (
            <option key={count}>{count}</option>
          ))}
        </select>
      </label>
    </>
  )
}
