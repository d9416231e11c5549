import { createContext, useContext } from 'react'
import { type Draft, keepDraft, session } from '../../session/session'

const DraftScopeContext = createContext<string | undefined>(undefined)

/** The survey that the fields within belong to: what they refuse is kept under its name, also while it is not shown. */
export const DraftScope = DraftScopeContext.Provider

export interface KeptDraft {
  /** What was refused in this field when it was shown last. */
  readonly before: Draft | undefined
  readonly keep: (draft: Draft | undefined) => void
}

export function useKeptDraft(label: string): KeptDraft {
  const scope = useContext(DraftScopeContext)
  if (scope === undefined) return { before: undefined, keep: () => undefined }
  const field = `${scope} ${label}`
  return {
    before: session.getState().drafts[field],
    keep: (draft) => keepDraft(field, draft),
  }
}
