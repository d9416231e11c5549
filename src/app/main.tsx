import './paper.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './App'
import { startDesk } from './desk'
import { saveLoop, watchOverJob } from './keeping'
import { keepAids } from './kept-aids'
import { keepHand } from './kept-hand'
import { listenForKeyList, listenForUndo } from './page-keys'
import { tokenOfTwo } from './second-window-name'
import { applyTheme } from './theme'

const root = document.getElementById('root')
if (!root) throw new Error('The page has no place for the app')

applyTheme()
keepHand()
keepAids()
listenForUndo()
listenForKeyList()
watchOverJob()
window.addEventListener('beforeunload', (event) => {
  const { kind } = saveLoop.state.getState()
  if (kind === 'saving' || kind === 'failed') event.preventDefault()
})
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
)
// The windows are joined once something lies here: what the bench tells would change the address that is being opened.
void startDesk().then(async () => {
  if (tokenOfTwo() !== undefined) (await import('./second-window')).joinTwo()
})
if (window.showDirectoryPicker !== undefined) {
  void import('./folder-copies').then(({ startFolderCopies }) => startFolderCopies())
}
