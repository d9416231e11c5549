import { type KeyboardEvent, useId, useState } from 'react'
import { useKeptDraft } from './draft-scope'
import { useFieldLayout } from './field-layout'

/** What is wrong with what was typed, in words; undefined when it was taken. */
export type Refusal = string | undefined

/** What stands in a field without being in force yet. */
export interface Waits {
  /** Why, and what brings it into force. */
  readonly said: string
  readonly takeBack: () => void
}

export interface TypedFieldProps {
  readonly label: string
  /** As kept; empty where nothing is recorded. */
  readonly text: string
  readonly placeholder: string
  /** Takes what was typed, or says what is wrong with it. */
  readonly commit: (typed: string) => Refusal
  readonly numeric?: boolean
  /** Width in characters where it should not follow the text. */
  readonly width?: number
  /** What was typed in another unit, shown beneath while it is typed. */
  readonly echo?: (typed: string) => string | undefined
  /** The text waits for something else to be typed. */
  readonly waits?: Waits | undefined
}

/**
 * A field within a sentence. Enter or leaving it commits, Escape takes the typing back; what was refused
 * stays in the field with the reason beneath.
 */
export function TypedField(props: TypedFieldProps) {
  const { label, text, placeholder, commit, numeric = true, width, echo, waits } = props
  const id = useId()
  const isStacked = useFieldLayout() === 'stacked'
  const kept = useKeptDraft(label)
  const [draft, setDraft] = useState(kept.before?.typed)
  const [refusal, setRefusal] = useState<Refusal>(kept.before?.refusal)
  const shown = draft ?? text
  const echoed = draft === undefined || refusal !== undefined ? undefined : echo?.(draft)
  const take = () => {
    const why = draft === text ? undefined : commit(draft ?? text)
    setRefusal(why)
    kept.keep(why === undefined ? undefined : { typed: draft ?? text, refusal: why })
    if (why === undefined) setDraft(undefined)
    else waits?.takeBack()
  }
  const isTyped = draft !== undefined
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && (isTyped || waits)) take()
    if (event.key === 'Escape') {
      if (!isTyped) waits?.takeBack()
      setDraft(undefined)
      setRefusal(undefined)
      kept.keep(undefined)
    }
  }
  return (
    <span className={isStacked ? 'typed-field is-stacked' : 'typed-field'}>
      {isStacked ? (
        <span className="stacked-label" aria-hidden="true">
          {label}
        </span>
      ) : null}
      <input
        type="text"
        aria-label={label}
        title={label}
        inputMode={numeric ? 'decimal' : 'text'}
        autoComplete="off"
        spellCheck={false}
        value={shown}
        placeholder={placeholder}
        className={`field${shown === '' ? ' is-open' : ''}${waits ? ' is-waiting' : ''}`}
        {...(isStacked ? {} : { style: { width: `calc(${width ?? widthOf(shown, placeholder)}ch + 6px)` } })}
        aria-invalid={refusal !== undefined}
        aria-describedby={refusal === undefined && !waits ? undefined : id}
        onChange={(event) => {
          setDraft(event.target.value)
          setRefusal(undefined)
        }}
        onBlur={() => {
          if (isTyped) take()
        }}
        onKeyDown={onKeyDown}
      />
      {echoed === undefined ? null : <span className="typed-echo">{echoed}</span>}
      {refusal !== undefined ? (
        <span id={id} role="alert" className="refusal">
          {refusal}
        </span>
      ) : waits ? (
        <span id={id} role="status" className="waits">
          {waits.said}
        </span>
      ) : null}
    </span>
  )
}

/** In widths of a digit; letters, which the placeholder has, are narrower. */
function widthOf(shown: string, placeholder: string): number {
  return shown === '' ? Math.max(2, Math.ceil(placeholder.length * 0.9)) : Math.max(2, shown.length)
}
