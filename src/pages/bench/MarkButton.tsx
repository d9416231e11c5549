import { setMarking } from '../../session/session'
import { words } from '../../words/words'
import { useSession } from './use-job'

/** Lets a finger mark the map, where it scrolls the page otherwise. */
export function MarkButton() {
  const marking = useSession((state) => state.marking)
  const said = words.surface
  return (
    <button
      type="button"
      className="quiet mark-button"
      aria-pressed={marking}
      title={said.markHelp}
      onClick={() => setMarking(!marking)}
    >
      {said.mark}
    </button>
  )
}
