import { useId, useState } from 'react'
import type { Refusal } from './TypedField'

/** A list of readings as lines of text: kept when it is left, and what was refused stays with the reason. */
export function CheckReadings(props: {
  readonly label: string
  /** As kept; empty where there are none. */
  readonly text: string
  readonly commit: (typed: string) => Refusal
  /** A button that does the same, for a list that is not kept yet. */
  readonly button?: string
  /** Names stand beside the figures: a phone then shows its letters. */
  readonly withNames?: boolean
}) {
  const { label, text, commit, button, withNames = false } = props
  const id = useId()
  const [draft, setDraft] = useState<string>()
  const [refusal, setRefusal] = useState<Refusal>()
  const take = () => {
    if (draft === undefined) return
    const why = draft.trim() === text ? undefined : commit(draft)
    setRefusal(why)
    if (why === undefined) setDraft(undefined)
  }
  return (
    <>
      <textarea
        aria-label={label}
        rows={2}
        inputMode={withNames ? 'text' : 'decimal'}
        spellCheck={false}
        value={draft ?? text}
        aria-invalid={refusal !== undefined}
        aria-describedby={refusal === undefined ? undefined : id}
        onChange={(event) => {
          setDraft(event.target.value)
          setRefusal(undefined)
        }}
        onBlur={take}
      />
      {refusal === undefined ? null : (
        <span id={id} role="alert" className="refusal">
          {refusal}
        </span>
      )}
      {button === undefined ? null : (
        <button type="button" className="quiet" onClick={take}>
          {button}
        </button>
      )}
    </>
  )
}
