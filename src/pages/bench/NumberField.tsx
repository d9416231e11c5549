import { plain, size as sizeText } from '../../words/numbers'
import { words } from '../../words/words'
import { commitNeeded, commitNumber } from './perform'
import { type Refusal, TypedField } from './TypedField'

/** A number that may be not recorded. */
export function NumberField(props: {
  readonly label: string
  readonly value: number | undefined
  readonly keep: (value: number | undefined) => Refusal
  readonly none?: string
  /** It is a diameter. */
  readonly size?: boolean
}) {
  const { label, value, keep, none = words.app.notRecorded, size = false } = props
  return (
    <TypedField
      label={label}
      text={value === undefined ? '' : written(value, size)}
      placeholder={none}
      commit={(typed) => commitNumber(typed, keep)}
    />
  )
}

/** A number that cannot be missing. */
export function NeededNumberField(props: {
  readonly label: string
  readonly value: number
  readonly keep: (value: number) => Refusal
  readonly width?: number
  /** It is a diameter. */
  readonly size?: boolean
}) {
  const { label, value, keep, width, size = false } = props
  return (
    <TypedField
      label={label}
      text={written(value, size)}
      placeholder=""
      commit={(typed) => commitNeeded(typed, keep)}
      {...(width === undefined ? {} : { width })}
    />
  )
}

/** A diameter with its three decimals (more where more were typed), any other figure as it was typed. */
function written(value: number, size: boolean): string {
  return size && Number(sizeText(value)) === value ? sizeText(value) : plain(value, 6)
}
