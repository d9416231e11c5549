import { useFieldLayout } from './field-layout'

export interface ChoiceFieldProps {
  readonly label: string
  readonly value: string
  readonly options: readonly { readonly value: string; readonly text: string }[]
  readonly onChoose: (value: string) => void
}

/** A choice within a sentence. The first option of an unanswered question is the empty one. */
export function ChoiceField({ label, value, options, onChoose }: ChoiceFieldProps) {
  const chosen = options.find((option) => option.value === value)
  const isStacked = useFieldLayout() === 'stacked'
  return (
    <span className={`choice${value === '' ? ' is-open' : ''}${isStacked ? ' is-stacked' : ''}`}>
      {isStacked ? (
        <span className="stacked-label" aria-hidden="true">
          {label}
        </span>
      ) : null}
      <span aria-hidden="true">{chosen?.text}</span>
      <select
        aria-label={label}
        title={label}
        value={value}
        onChange={(event) => onChoose(event.target.value)}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.text}
          </option>
        ))}
      </select>
    </span>
  )
}
