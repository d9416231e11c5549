import { createContext, useContext } from 'react'

/** Fields stand within a sentence, or one beneath the other, each with its label. */
export type FieldLayout = 'in-sentence' | 'stacked'

export const FieldLayoutContext = createContext<FieldLayout>('in-sentence')

export function useFieldLayout(): FieldLayout {
  return useContext(FieldLayoutContext)
}
