import { showDoubt } from '../../session/session'
import { words } from '../../words/words'
import { useSession } from './use-job'

/** Has other walls drawn that fit the same readings, until it is pressed again. */
export function DoubtButton() {
  const shown = useSession((state) => state.doubtShown)
  return (
    <button
      type="button"
      className="quiet doubt-button"
      aria-pressed={shown}
      title={words.doubt.help}
      onClick={() => showDoubt(!shown)}
    >
      {words.doubt.show}
    </button>
  )
}
