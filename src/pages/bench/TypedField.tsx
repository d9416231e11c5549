import { type KeyboardEvent, useId, useState } from 'react'

/** What is wrong with what was typed, in words; undefined when it was taken. */
export type Refusal = string | undefined

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
}

/**
 * A field within a sentence. Enter or leaving it commits, Escape takes the typing back; what was refused
 * stays in the field with the reason beneath.
 */
export function TypedField(props: TypedFieldProps) {
  const { label, text, placeholder, commit, numeric = true, width, echo } = props
  const id = useId()
  const [draft, setDraft] = useState<string>()
  const [refusal, setRefusal] = useState<Refusal>()
  const shown = draft ?? text
  const echoed = draft === undefined || refusal !== undefined ? undefined : echo?.(draft)
  const take = () => {
    if (draft === undefined) return
    const why = draft === text ? undefined : commit(draft)
    setRefusal(why)
    if (why === undefined) setDraft(undefined)
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') take()
    if (event.key === 'Escape') {
      setDraft(undefined)
      setRefusal(undefined)
    }
  }
  return (
    <span className="typed-field">
      <input
        type="text"
        aria-label={label}
        title={label}
        inputMode={numeric ? 'decimal' : 'text'}
        autoComplete="off"
        spellCheck={false}
        value={shown}
        placeholder={placeholder}
        className={shown === '' ? 'field is-open' : 'field'}
        style={{ width: `calc(${width ?? widthOf(shown, placeholder)}ch + 6px)` }}
        aria-invalid={refusal !== undefined}
        aria-describedby={refusal === undefined ? undefined : id}
        onChange={(event) => {
          setDraft(event.target.value)
          setRefusal(undefined)
        }}
        onBlur={take}
        onKeyDown={onKeyDown}
      />
      {echoed === undefined ? null : <span className="typed-echo">{echoed}</span>}
      {refusal === undefined ? null : (
        <span id={id} role="alert" className="refusal">
          {refusal}
        </span>
      )}
    </span>
  )
}

/** In widths of a digit; letters, which the placeholder has, are narrower. */
function widthOf(shown: string, placeholder: string): number {
  return shown === '' ? Math.max(2, Math.ceil(placeholder.length * 0.9)) : Math.max(2, shown.length)
}
