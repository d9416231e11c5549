import { useFieldLayout } from './field-layout'

/** The unit after a field in a sentence; in a stack the label of the field has it already. */
export function FieldUnit({ text }: { readonly text: string }) {
  return useFieldLayout() === 'stacked' ? null : <> {text}</>
}
