import { type ComponentType, createContext, useContext } from 'react'

export interface KeptSpecsProps {
  /** Before everything else on the sheet, to begin with; or beside the limits, to keep them. */
  readonly place: 'start' | 'limits'
}

/** What takes kept limits and keeps those typed: they are kept in another layer. */
export const KeptSpecsSlot = createContext<ComponentType<KeptSpecsProps> | undefined>(undefined)

export function useKeptSpecsSlot(): ComponentType<KeptSpecsProps> | undefined {
  return useContext(KeptSpecsSlot)
}
