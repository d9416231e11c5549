import { words } from '../../words/words'
import { type Refusal, TypedField } from './TypedField'

/** The name of a port or a belt. */
export function OpeningName(props: { readonly name: string; readonly rename: (name: string) => Refusal }) {
  return (
    <TypedField
      label={`${words.bore.ports.name}: ${props.name}`}
      text={props.name}
      placeholder=""
      numeric={false}
      width={15}
      commit={(typed) => props.rename(typed.trim())}
    />
  )
}
