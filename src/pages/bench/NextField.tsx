import type { KeyboardEvent } from 'react'
import { isOfSizes } from '../../core/diameter/entry'
import { readingReference, sizeFromDial } from '../../core/diameter/reading-reference'
import type { SetUp } from '../../core/measured'
import { inMicrons, placeText, plain, size } from '../../words/numbers'
import { words } from '../../words/words'
import { repeatsAt } from './entry-order'
import { readRepeats } from './read-repeats'
import type { Entry } from './use-entry'

const mmPerInch = 25.4

export interface NextFieldProps {
  readonly entry: Entry
  readonly setUp: SetUp
  readonly onWanted: (repeats: number) => void
}

/** Where the next number goes: always visible beneath the grid, so that a person types and presses Enter. */
export function NextField(props: NextFieldProps) {
  const { entry, setUp } = props
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
          aria-label={`${isOfSizes(setUp.entry) ? words.next.sizeField : words.next.deviationField}: ${station ? placeText(station) : words.next.allRead}`}
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
      <p id="next-echo" className="aside">
        {echo(typed, setUp) ?? directionSentence(setUp) ?? words.next.severalHint}
      </p>
      <p className="only-heard" aria-live="polite">
        {entry.correcting ? '' : entry.taken}
      </p>
    </section>
  )
}

function NextHead({ entry: { rows, station, wanted, correcting }, onWanted }: NextFieldProps) {
  const said = words.next
  const planned = rows.some((row) => row.length > 0)
  return (
    <>
      <strong>
        {!planned
          ? words.grid.noLevels
          : !station
            ? said.allRead
            : correcting
              ? said.correcting(placeText(station))
              : said.next(placeText(station))}
      </strong>
      {station && !correcting && wanted > 1 ? (
        <span className="aside">{said.repeat(Math.min(repeatsAt(station).length + 1, wanted), wanted)}</span>
      ) : null}
      <label className="wanted">
        {said.repeatsPerStation}
        <select value={wanted} onChange={(event) => onWanted(Number(event.target.value))}>
          {[1, 2, 3, 4, 5].map((count) => (
            <option key={count}>{count}</option>
          ))}
        </select>
      </label>
    </>
  )
}

/** What was typed in the other units: a size in inches and as a deviation, a deviation as a size. */
function echo(typed: string, setUp: SetUp): string | undefined {
  if (typed.trim() === '') return undefined
  const read = readRepeats(typed, setUp)
  const last = read.ok ? read.values.at(-1) : undefined
  if (last === undefined) return undefined
  const mm = isOfSizes(setUp.entry) ? last : dialAsSize(last, setUp)
  if (mm === undefined) return undefined
  const inches = `${plain(mm / mmPerInch, 5)} in`
  const deviation = words.next.asDeviation(inMicrons(mm - setUp.settingSizeMm, { sign: true }))
  return isOfSizes(setUp.entry) ? `${deviation} · ${inches}` : `${words.next.asSize(size(mm))} · ${inches}`
}

function dialAsSize(dialUm: number, setUp: SetUp): number | undefined {
  const reference = readingReference(setUp, 0)
  return reference && sizeFromDial(dialUm, reference, setUp.largerIs)
}

function directionSentence(setUp: SetUp): string | undefined {
  return !isOfSizes(setUp.entry) ? words.next.direction[setUp.largerIs ?? 'unknown'] : undefined
}
