import { plain } from '../../words/numbers'
import { readNumber } from '../../words/read-number'
import { words } from '../../words/words'
import { type Marks, sizeMarks } from './marks'
import { commitNeeded, commitNumber } from './perform'
import { type Refusal, TypedField, type Waits } from './TypedField'

interface NumberProps {
  /** It is a diameter: in mm unless marks say otherwise. */
  readonly size?: boolean
  /** How the instrument it is read off is marked; what is kept is mm or µm. */
  readonly marks?: Marks
  readonly waits?: Waits | undefined
}

/** A number that may be not recorded. */
export function NumberField(
  props: NumberProps & {
    readonly label: string
    readonly value: number | undefined
    readonly keep: (value: number | undefined) => Refusal
    readonly none?: string
  },
) {
  const { label, value, keep, none = words.app.notRecorded } = props
  const marks = marksOf(props)
  return (
    <TypedField
      label={label}
      text={value === undefined ? '' : written(value, marks)}
      placeholder={none}
      waits={props.waits}
      commit={(typed) =>
        commitNumber(typed, (shown) => keep(shown === undefined || !marks ? shown : marks.kept(shown)))
      }
      {...(marks ? { echo: (typed: string) => echo(typed, marks) } : {})}
    />
  )
}

/** A number that cannot be missing. */
export function NeededNumberField(
  props: NumberProps & {
    readonly label: string
    readonly value: number
    readonly keep: (value: number) => Refusal
    readonly width?: number
    /** In the place of a number that nobody has entered. */
    readonly none?: string
  },
) {
  const { label, value, keep, width, none } = props
  const marks = marksOf(props)
  return (
    <TypedField
      label={label}
      text={none === undefined ? written(value, marks) : ''}
      placeholder={none ?? ''}
      waits={props.waits}
      commit={(typed) => commitNeeded(typed, (shown) => keep(marks ? marks.kept(shown) : shown))}
      {...(marks ? { echo: (typed: string) => echo(typed, marks) } : {})}
      {...(width === undefined ? {} : { width })}
    />
  )
}

function marksOf({ size = false, marks }: NumberProps): Marks | undefined {
  return marks ?? (size ? sizeMarks() : undefined)
}

/** A diameter with its three decimals (more where more were typed), any other figure as it was typed. */
function written(value: number, marks: Marks | undefined): string {
  return marks ? marks.written(value) : plain(value, 6)
}

function echo(typed: string, marks: Marks): string | undefined {
  const read = readNumber(typed)
  return read.ok ? words.next.same(marks.echo(marks.kept(read.value))) : undefined
}
