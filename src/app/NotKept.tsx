import { useStore } from 'zustand'
import { words } from '../words/words'
import { saveJobToFile } from './desk'
import { keepAgain, saveLoop } from './keeping'

/** What is to be done while the browser does not keep the job. Nothing while it does. */
export function NotKept() {
  const state = useStore(saveLoop.state)
  if (state.kind !== 'failed') return null
  return (
    <div className="not-kept" role="alert">
      <p>
        {words.saving.failedKept} {words.saving.errors[state.code]}
      </p>
      {state.code === 'gone' ? (
        <button type="button" className="button" onClick={() => void keepAgain()}>
          {words.saving.keepAgain}
        </button>
      ) : (
        <button type="button" className="button" onClick={() => saveLoop.retry()}>
          {words.saving.retry}
        </button>
      )}
      <button type="button" className="button" onClick={() => void saveJobToFile(false)}>
        {words.saving.toFile}
      </button>
    </div>
  )
}
