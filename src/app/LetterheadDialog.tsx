import './letterhead.css'
import { useEffect } from 'react'
import { useStore } from 'zustand'
import { letterheadWords } from '../words/letterhead-words'
import { words } from '../words/words'
import { Dialog } from './Dialog'
import { LetterheadFields } from './LetterheadFields'
import {
  keepLetterhead,
  type LetterheadRead,
  type LetterheadState,
  letterheadStore,
  readLetterhead,
} from './letterhead'
import { leaveLetterhead } from './letterhead-fields'
import { closeLetterhead } from './questions'

/** The letterhead, kept as it is typed. */
export function LetterheadDialog() {
  const said = letterheadWords.dialog
  const state = useStore(letterheadStore)
  useEffect(() => void readLetterhead(), [])
  const close = () => {
    // Escape closes the dialog without leaving the field first.
    leaveLetterhead('appAddress')
    closeLetterhead()
  }
  return (
    <Dialog
      title={said.title}
      onClose={close}
      className="letterhead"
      {...(state.kind === 'read' && state.kept === 'kept' ? { said: said.saved } : {})}
    >
      <p className="soft">{said.lead}</p>
      {state.kind === 'read' ? (
        <>
          {state.wasSetAside ? <p role="alert">{said.setAside}</p> : null}
          <LetterheadFields letterhead={state.letterhead} />
          <NotKept kept={state.kept} />
        </>
      ) : (
        <NotRead state={state} />
      )}
    </Dialog>
  )
}

function NotKept({ kept }: { readonly kept: LetterheadRead['kept'] | undefined }) {
  const said = letterheadWords.dialog
  if (kept === undefined || kept === 'keeping' || kept === 'kept') return null
  return (
    <p role="alert" className="refusal">
      {said.notKept(words.saving.unreachableWhy[kept])}{' '}
      <button type="button" className="quiet" onClick={() => void keepLetterhead()}>
        {said.again}
      </button>
    </p>
  )
}

function NotRead({ state }: { readonly state: Exclude<LetterheadState, LetterheadRead> }) {
  const said = letterheadWords.dialog
  if (state.kind === 'newer') return <p role="alert">{said.newer}</p>
  if (state.kind !== 'failed') return null
  return (
    <p role="alert">
      {said.notRead(words.saving.unreachableWhy[state.code])}{' '}
      <button type="button" className="quiet" onClick={() => void readLetterhead()}>
        {said.again}
      </button>
    </p>
  )
}
