import { lookFrom, setExaggeration, turnView, type ViewName, zoomView } from '../../session/session'
import { plain } from '../../words/numbers'
import { readNumber } from '../../words/read-number'
import { words } from '../../words/words'
import { type Refusal, TypedField } from './TypedField'
import { useSession } from './use-job'

const views: readonly Exclude<ViewName, 'free'>[] = ['front', 'right', 'rear', 'left', 'above']

/** Everything the picture can be told to do, as buttons that can be seen. */
export function PictureControls(props: {
  /** The exaggeration the limits need, and the most that can be drawn; undefined before the first wall. */
  readonly own: number | undefined
  readonly end: number | undefined
}) {
  const said = words.picture
  return (
    <div className="controls">
      <fieldset aria-label={said.views.label}>
        <ViewButtons />
        <TurnButtons />
      </fieldset>
      <Exaggeration {...props} />
    </div>
  )
}

/** The named views. */
export function ViewButtons() {
  const name = useSession((state) => state.view.name)
  return views.map((view) => (
    <button key={view} type="button" aria-pressed={name === view} onClick={() => lookFrom(view)}>
      {words.picture.views[view]}
    </button>
  ))
}

/** Turning and coming closer, step by step. */
export function TurnButtons() {
  const said = words.picture
  return (
    <>
      <IconButton label={said.turnLeft} mark="⟲" onPress={() => turnView(-1)} />
      <IconButton label={said.turnRight} mark="⟳" onPress={() => turnView(1)} />
      <IconButton label={said.zoomOut} mark="−" onPress={() => zoomView(-1)} />
      <IconButton label={said.zoomIn} mark="+" onPress={() => zoomView(1)} />
    </>
  )
}

function IconButton(props: { readonly label: string; readonly mark: string; readonly onPress: () => void }) {
  return (
    <button
      type="button"
      className="icon"
      aria-label={props.label}
      title={props.label}
      onClick={props.onPress}
    >
      {props.mark}
    </button>
  )
}

const steps = 200

/** A slider on a logarithmic scale from 1 to the most that can be drawn. */
export function Exaggeration({
  own,
  end,
}: {
  readonly own: number | undefined
  readonly end: number | undefined
}) {
  const said = words.picture
  const chosen = useSession((state) => state.exaggeration)
  if (own === undefined || end === undefined || end <= 1) return null
  const shown = Math.min(chosen ?? own, end)
  const position = (Math.log(shown) / Math.log(end)) * steps
  return (
    <div className="exaggeration">
      <input
        type="range"
        min="0"
        max={steps}
        step="1"
        aria-label={said.exaggeration}
        aria-valuetext={said.exaggerationIs(plain(shown, shown < 10 ? 1 : 0))}
        value={position}
        onChange={(event) => setExaggeration(end ** (Number(event.target.value) / steps))}
      />
      <span className="factor">
        ×
        <TypedField
          label={said.exaggerationTyped}
          text={plain(shown, shown < 10 ? 1 : 0)}
          placeholder=""
          width={5}
          commit={(typed) => typedFactor(typed, end)}
        />
      </span>
      <button
        type="button"
        aria-pressed={chosen === undefined}
        title={said.exaggerationOwn}
        onClick={() => setExaggeration(undefined)}
      >
        {said.exaggerationAuto}
      </button>
    </div>
  )
}

/** Empty gives the choice back to the job; what cannot be drawn is refused. */
function typedFactor(typed: string, end: number): Refusal {
  if (typed.trim() === '') {
    setExaggeration(undefined)
    return undefined
  }
  const read = readNumber(typed)
  if (!read.ok) return words.number.refused[read.why]
  if (read.value < 1 || read.value > end) {
    return words.picture.exaggerationRange('1', plain(Math.floor(end), 0))
  }
  setExaggeration(read.value)
  return undefined
}
