import { Fragment, type ReactNode } from 'react'
import { slots } from '../../words/slots'

/** A sentence whose named slots hold fields, in the order of the language. */
export function Sentence<Slot extends string>({
  template,
  fields,
}: {
  readonly template: string
  readonly fields: Readonly<Record<Slot, ReactNode>>
}) {
  return (
    <>
      {slots(template).map((part) =>
        'text' in part ? part.text : <Fragment key={part.slot}>{fields[part.slot as Slot]}</Fragment>,
      )}
    </>
  )
}
