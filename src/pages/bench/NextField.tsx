import { type KeyboardEvent, type RefObject, useState } from 'react'
import { isOfSizes } from '../../core/diameter/entry'
import { readingReference, sizeFromDial } from '../../core/diameter/reading-reference'
import type { Place } from '../../core/findings'
import type { SetUp } from '../../core/measured'
import { inMicrons, placeText, plain, size } from '../../words/numbers'
import { words } from '../../words/words'
import { readRepeats } from './read-repeats'
import type { Refusal } from './TypedField'

const mmPerInch = 25.4

export interface NextFieldProps {
  readonly input: RefObject<HTMLInputElement | null>
  readonly setUp: SetUp
  /** The station in hand; undefined when every station is read, or none is planned. */
  readonly place: Place | undefined
  readonly planned: boolean
  readonly repeats: readonly number[]
  readonly wanted: number
  readonly onWanted: (repeats: number) => void
  /** The station's own readings are in the field: what is taken replaces them. */
  readonly correcting: boolean
  readonly typed: string
  readonly onTyped: (typed: string) => void
  readonly take: (values: readonly number[]) => Refusal
  readonly onLeave: () => void
}

/** Where the next number goes: always visible beneath the grid, so that a person types and presses Enter. */
export function NextField(props: NextFieldProps) {
  const { input, setUp, place, typed, onTyped, take, correcting, onLeave } = props
  const [refusal, setRefusal] = useState<Refusal>()
  const [taken, setTaken] = useState('')
  const enter = () => {
    if (!place) return
    const read = readRepeats(typed, setUp)
    const why = read.ok ? take(read.values) : read.why
    setRefusal(why)
    setTaken(why === undefined ? words.next.taken(placeText(place), typed.trim()) : '')
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') {
      event.preventDefault()
      enter()
    }
    if (event.key === 'Escape') {
      setRefusal(undefined)
      onLeave()
    }
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
          aria-label={`${isOfSizes(setUp.entry) ? words.next.sizeField : words.next.deviationField}: ${place ? placeText(place) : words.next.allRead}`}
          aria-invalid={refusal !== undefined}
          aria-describedby="next-refusal next-echo"
          disabled={!place}
          value={typed}
          onChange={(event) => {
            onTyped(event.target.value)
            setRefusal(undefined)
          }}
          onKeyDown={onKeyDown}
        />
        <button type="button" className="button" disabled={!place} onClick={enter}>
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
        {correcting ? '' : taken}
      </p>
    </section>
  )
}

function NextHead({ place, planned, repeats, wanted, onWanted, correcting }: NextFieldProps) {
  const said = words.next
  return (
    <>
      <strong>
        {!planned
          ? words.grid.noLevels
          : !place
            ? said.allRead
            : correcting
              ? said.correcting(placeText(place))
              : said.next(placeText(place))}
      </strong>
      {place && !correcting && wanted > 1 ? (
        <span className="aside">{said.repeat(Math.min(repeats.length + 1, wanted), wanted)}</span>
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
