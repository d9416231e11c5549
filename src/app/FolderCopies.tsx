import { useStore } from 'zustand'
import { words } from '../words/words'
import { allowFolder, folderCopies, leaveFolder, pickFolder } from './folder-copies'

/** Copies in a folder of the user's: whether they are written, what is wrong, and how to begin and end. */
export function FolderCopies() {
  const state = useStore(folderCopies)
  const said = words.folder
  if (state.kind === 'impossible') return <p className="soft">{said.impossible}</p>
  return (
    <section className="folder-copies" aria-label={said.label}>
      <p role="status">{saidOf(state)}</p>
      <div className="keeping-ways">
        {state.kind === 'asks' ? (
          <button type="button" className="button" onClick={() => void allowFolder()}>
            {said.allow}
          </button>
        ) : null}
        <button type="button" className="button" onClick={() => void pickFolder()}>
          {state.kind === 'off' ? said.pick : said.pickOther}
        </button>
        {state.kind === 'off' ? null : (
          <button type="button" className="button" onClick={() => void leaveFolder()}>
            {said.leave}
          </button>
        )}
      </div>
    </section>
  )
}

function saidOf(state: Exclude<ReturnType<typeof folderCopies.getState>, { kind: 'impossible' }>): string {
  const said = words.folder
  switch (state.kind) {
    case 'off':
      return said.off
    case 'asks':
      return said.asks(state.name)
    case 'on':
      return state.file === undefined ? said.on(state.name) : said.written(state.name, state.file)
    case 'failed':
      return said.failed[state.why](state.name)
  }
}
