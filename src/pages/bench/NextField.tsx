import type { KeyboardEvent } from 'react'
import { placeText } from '../../words/numbers'
import { words } from '../../words/words'
import { ClosingStep } from './ClosingStep'
import { repeatChoices, repeatsAt } from './entry-order'
import { directionSentence, readingEcho, readingFieldName } from './reading-echo'
import type { Entry } from './use-entry'
import type { OnBench } from './use-job'

export interface NextFieldProps {
  readonly entry: Entry
  readonly bench: OnBench
  readonly onWanted: (repeats: number) => void
  /** Which of several bores the station is in. */
  readonly boreName?: string
}

/** Where the next number goes: always visible beneath the grid, so that a person types and presses Enter. */
export function NextField(props: NextFieldProps) {
  const { entry, bench } = props
  const { input, station, typed, refusal, setTyped, enter, leave } = entry
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') {
      event.preventDefault()
      enter()
    }
    if (event.key === 'Escape') leave()
  }
  return (
    <section className="next" aria-label={words.next.label}>
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
          disabled={!station}
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
          onKeyDown={onKeyDown}
        />
        <button type="button" className="button" disabled={!station} onClick={enter}>
          {words.next.take}
        </button>
      </div>
      <p id="next-refusal" role="alert" className="refusal">
        {refusal}
      </p>
      <div id="next-echo" className="aside">
        {station || !isPlanned(entry) ? (
          (readingEcho(typed, bench) ?? directionSentence(bench) ?? words.next.severalHint)
        ) : (
          <ClosingStep {...bench} />
        )}
      </div>
      <p className="only-heard" aria-live="polite">
        {entry.correcting ? '' : entry.taken}
      </p>
    </section>
  )
}

function isPlanned({ rows }: Entry): boolean {
  return rows.some((row) => row.length > 0)
}

function NextHead({ entry, onWanted, boreName }: NextFieldProps) {
  const said = words.next
  const { station, wanted, correcting } = entry
  const at = station && placeText(station)
  const place = at !== undefined && boreName !== undefined ? said.inBore(boreName, at) : at
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
        <select value={wanted} onChange={(event) => onWanted(Number(event.target.value))}>
          {repeatChoices(wanted).map((count) => (
            <option key={count}>{count}</option>
          ))}
        </select>
      </label>
    </>
  )
}
