import { Fragment, type ReactNode } from 'react'
import { inShownUnit } from '../../words/length-unit'
import { slots } from '../../words/slots'
import { useFieldLayout } from './field-layout'

/** A sentence whose named slots hold fields, in the order of the language; stacked, the fields alone. */
export function Sentence<Slot extends string>({
  template,
  fields,
}: {
  readonly template: string
  readonly fields: Readonly<Record<Slot, ReactNode>>
}) {
  const isStacked = useFieldLayout() === 'stacked'
  return (
    <>
      {slots(template).map((part) => {
        const shown = 'text' in part ? inShownUnit(part.text) : fields[part.slot as Slot]
        if (isStacked && typeof shown === 'string') return null
        return 'text' in part ? shown : <Fragment key={part.slot}>{shown}</Fragment>
      })}
    </>
  )
}
