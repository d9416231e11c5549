import { inShownUnit, lengthUnit } from '../../words/length-unit'
import { plain } from '../../words/numbers'
import { readNumber } from '../../words/read-number'
import { words } from '../../words/words'
import { lengthMarks, type Marks, micronMarks, sizeMarks } from './marks'
import { commitNeeded, commitNumber } from './perform'
import { type Refusal, TypedField, type Waits } from './TypedField'

interface NumberProps {
  /** It is a diameter, or a limit with as many decimals: in the unit of the job unless marks say otherwise. */
  readonly size?: boolean
  /** It is a depth or another length: in the unit of the job. */
  readonly length?: boolean
  /** It is kept in µm and typed in the unit of the job. */
  readonly micron?: boolean
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
  const { value, keep, none = words.app.notRecorded } = props
  const marks = marksOf(props)
  return (
    <TypedField
      label={labelOf(props)}
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
  const { value, keep, width, none } = props
  const marks = marksOf(props)
  return (
    <TypedField
      label={labelOf(props)}
      text={none === undefined ? written(value, marks) : ''}
      placeholder={none ?? ''}
      waits={props.waits}
      commit={(typed) => commitNeeded(typed, (shown) => keep(marks ? marks.kept(shown) : shown))}
      {...(marks ? { echo: (typed: string) => echo(typed, marks) } : {})}
      {...(width === undefined ? {} : { width: marks?.marking === 'inch' ? width + 2 : width })}
    />
  )
}

function marksOf({ size = false, length = false, micron = false, marks }: NumberProps): Marks | undefined {
  if (marks) return marks
  if (size) return sizeMarks(lengthUnit())
  if (length) return lengthMarks(lengthUnit())
  return micron ? micronMarks(lengthUnit()) : undefined
}

/** What a field is called names the unit that is typed in it. */
function labelOf(props: NumberProps & { readonly label: string }): string {
  return props.size || props.length || props.micron ? inShownUnit(props.label) : props.label
}

/** A diameter with its three decimals (more where more were typed), any other figure as it was typed. */
function written(value: number, marks: Marks | undefined): string {
  return marks ? marks.written(value) : plain(value, 6)
}

function echo(typed: string, marks: Marks): string | undefined {
  const read = readNumber(typed)
  return read.ok ? words.next.same(marks.echo(marks.kept(read.value))) : undefined
}
