import { ownerWords } from '../../words/owner-words'
import { words } from '../../words/words'
import { TurnButtons, ViewButtons } from '../bench/PictureControls'
import { useLayout } from '../bench/phone/use-layout'
import { useSession } from '../bench/use-job'
import type { ComparedWall } from '../compare/compared-walls'

/** Leaves the talk to turn the bore, with buttons for it, and comes back. */
export function TurnByHand(props: {
  readonly wall: ComparedWall
  readonly isOn: boolean
  readonly onTurn: () => void
  readonly onBack: () => void
}) {
  const { wall, isOn, onTurn, onBack } = props
  const pointed = useSession((state) => state.pointed)
  const isNarrow = useLayout() === 'one'
  const said = ownerWords.show
  if (!isOn) {
    return (
      <div className="show-turn controls">
        <button type="button" onClick={onTurn}>
          {said.turn}
        </button>
      </div>
    )
  }
  return (
    <div className="show-turn controls">
      <button type="button" className="is-back" onClick={onBack}>
        {said.turnBack}
      </button>
      <fieldset aria-label={words.picture.views.label}>
        {isNarrow ? null : <ViewButtons />}
        <TurnButtons />
      </fieldset>
      <p className="show-read-out">{pointed ? wall.readOut(pointed) : said.turning}</p>
    </div>
  )
}
