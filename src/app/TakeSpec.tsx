import { type KeyboardEvent, useId, useRef } from 'react'
import type { KeptSpec } from '../job/kept-spec'
import { keptSpecText } from '../words/kept-spec-text'
import { words } from '../words/words'
import { specName } from './kept-specs'

/** Keys typed within this time are one word, ms. */
const oneWord = 1000

/** A button that opens the list of kept limits; arrow keys go through it, and so does typing a name. */
export function TakeSpec(props: {
  readonly specs: readonly KeptSpec[]
  readonly onTake: (spec: KeptSpec) => void
}) {
  const { specs, onTake } = props
  const id = useId()
  const list = useRef<HTMLDivElement>(null)
  const typed = useRef({ text: '', at: 0 })
  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>) => {
    const buttons = [...event.currentTarget.querySelectorAll('button')]
    const inHand = buttons.findIndex((button) => button.matches(':focus'))
    const next = goal(event, inHand, typed.current, specs)
    if (next === undefined) return
    event.preventDefault()
    buttons[(next + buttons.length) % buttons.length]?.focus()
  }
  return (
    <div className="take-spec">
      <button type="button" className="button" popoverTarget={id} title={words.keptSpecs.takeHint}>
        {words.keptSpecs.take}
      </button>
      <div
        id={id}
        ref={list}
        popover="auto"
        role="menu"
        aria-label={words.keptSpecs.title}
        className="menu spec-menu"
        onKeyDown={onKeyDown}
        onToggle={(event) => {
          if (event.newState === 'open') list.current?.querySelector('button')?.focus()
        }}
      >
        {specs.map((spec) => (
          <button
            key={spec.id}
            type="button"
            role="menuitem"
            onClick={() => {
              list.current?.hidePopover()
              onTake(spec)
            }}
          >
            <b>{specName(spec)}</b>
            <span className="soft">{keptSpecText(spec.template.spec, spec.template.bores.length)}</span>
          </button>
        ))}
      </div>
    </div>
  )
}

/** Where a key leads in the list: by arrows, or to the first name that begins with what is typed. */
function goal(
  event: KeyboardEvent,
  from: number,
  typed: { text: string; at: number },
  specs: readonly KeptSpec[],
): number | undefined {
  const { key, ctrlKey, metaKey, altKey, timeStamp } = event
  const step = { ArrowDown: from + 1, ArrowUp: from - 1, Home: 0, End: -1 }[key]
  if (step !== undefined) return step
  const isLetter = key.length === 1 && !ctrlKey && !metaKey && !altKey
  // A space presses the button, unless it stands within a name.
  if (!isLetter || (key === ' ' && timeStamp - typed.at > oneWord)) return undefined
  typed.text = timeStamp - typed.at > oneWord ? key : typed.text + key
  typed.at = timeStamp
  const sought = typed.text.toLowerCase()
  const found = specs.findIndex((spec) => specName(spec).toLowerCase().startsWith(sought))
  return found < 0 ? undefined : found
}
