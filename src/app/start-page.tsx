import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './App'
import { onCodeInAddress, startDesk } from './desk'
import { saveLoop, watchOverJob } from './keeping'
import { keepAids } from './kept-aids'
import { keepHand } from './kept-hand'
import { onLanguageElsewhere } from './language-here'
import { keepLengthUnit } from './length-unit-here'
import { openCodeLater } from './open-code-later'
import { listenForKeyList, listenForUndo } from './page-keys'
import { isSecondWindow, tokenOfTwo } from './second-window-name'
import { applyTheme } from './theme'

/** Starts the page, in the language that was chosen before this was loaded. */
export function startPage(root: HTMLElement): void {
  applyTheme()
  keepHand()
  keepAids()
  keepLengthUnit()
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
  // What is shown to the owner speaks as the bench does.
  if (isSecondWindow()) onLanguageElsewhere(() => location.reload())
  onCodeInAddress(openCodeLater)
  // The windows are joined once something lies here: what the bench tells would change the address that is being opened.
  void startDesk().then(async () => {
    if (tokenOfTwo() !== undefined) (await import('./second-window')).joinTwo()
  })
  if (window.showDirectoryPicker !== undefined) {
    void import('./folder-copies').then(({ startFolderCopies }) => startFolderCopies())
  }
}
