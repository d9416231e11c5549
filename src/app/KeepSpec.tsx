import { useId, useState } from 'react'
import { longestSpecName } from '../job/kept-spec'
import { words } from '../words/words'
import { keepSpec, proposedName } from './kept-specs'

/** Asks under what name the limits are to be kept. Enter keeps them, Escape lets it be. */
export function KeepSpec({ onDone }: { readonly onDone: () => void }) {
  const said = words.keptSpecs
  const id = useId()
  const [name, setName] = useState(proposedName)
  const [isRefused, setRefused] = useState(false)
  const keep = async () => {
    if (name.trim() === '') return setRefused(true)
    if (await keepSpec(name.trim())) onDone()
  }
  return (
    <form
      className="keep-spec"
      onSubmit={(event) => {
        event.preventDefault()
        void keep()
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onDone()
      }}
    >
      <label htmlFor={id}>{said.keepName}</label>
      <input
        id={id}
        ref={focused}
        className="field"
        value={name}
        maxLength={longestSpecName}
        autoComplete="off"
        spellCheck={false}
        aria-invalid={isRefused}
        onChange={(event) => {
          setName(event.target.value)
          setRefused(false)
        }}
      />
      <button type="submit" className="quiet">
        {said.keepDo}
      </button>
      <button type="button" className="quiet" onClick={onDone}>
        {words.app.cancel}
      </button>
      {isRefused ? (
        <span role="alert" className="refusal">
          {said.nameNeeded}
        </span>
      ) : null}
    </form>
  )
}

/** Asked for by a button, so that the next key belongs to it. */
function focused(field: HTMLInputElement | null) {
  field?.focus()
  field?.select()
}
