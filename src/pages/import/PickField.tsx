import './pick-field.css'
import { useId } from 'react'

/** A labelled list of which one is chosen. */
export function PickField(props: {
  readonly label: string
  readonly value: string
  readonly options: readonly (readonly [string, string])[]
  /** It is still to be chosen. */
  readonly isOpen?: boolean
  readonly onPick: (value: string) => void
}) {
  const { label, value, options, isOpen = false, onPick } = props
  const id = useId()
  return (
    <div className={isOpen ? 'pick-field is-open' : 'pick-field'}>
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={({ target }) => onPick(target.value)}>
        {options.map(([option, text]) => (
          <option key={option} value={option}>
            {text}
          </option>
        ))}
      </select>
    </div>
  )
}
