import { type ComponentType, createContext, useContext } from 'react'
import type { Photograph } from '../../core/measured'
import type { Refusal } from './TypedField'

export interface PhotographsProps {
  /** What the photographs are of, in words. */
  readonly title: string
  readonly photos: readonly Photograph[]
  /** Takes a photograph that is kept, or says why not. */
  readonly add: (photo: Photograph) => Refusal
  readonly remove: (hash: string) => void
}

/** What shows the photographs of a finding and takes new ones: pictures are kept in another layer. */
export const PhotographsSlot = createContext<ComponentType<PhotographsProps> | undefined>(undefined)

export function usePhotographsSlot(): ComponentType<PhotographsProps> | undefined {
  return useContext(PhotographsSlot)
}
