import { words } from '../words/words'
import { startNewJob } from './desk'
import { showNote } from './questions'

/** Says that a job is an example, and leads to what it is about and to a job of one's own. */
export function InventedBanner() {
  return (
    <>
      <button
        type="button"
        className="bar-about"
        aria-haspopup="dialog"
        title={words.note.about}
        onClick={showNote}
      >
        {words.demo.banner}
      </button>
      <button type="button" className="quiet" onClick={() => void startNewJob()}>
        {words.demo.startOwn}
      </button>
    </>
  )
}
