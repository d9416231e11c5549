import { useStore } from 'zustand'
import { jobStore } from '../job/job-store'
import { words } from '../words/words'

/** One step back, one step on again. */
export function UndoButtons() {
  const last = useStore(jobStore, ({ past }) => past.at(-1)?.label)
  const next = useStore(jobStore, ({ future }) => future[0]?.label)
  const readOnly = useStore(jobStore, (state) => state.readOnly)
  const { undo } = words
  return (
    <>
      <StepButton
        text={undo.undo}
        said={last === undefined ? undo.nothing : undo.undoOf(last)}
        possible={last !== undefined && !readOnly}
        onPress={() => jobStore.getState().undo()}
      />
      <StepButton
        text={undo.redo}
        said={next === undefined ? undo.nothingToRedo : undo.redoOf(next)}
        possible={next !== undefined && !readOnly}
        onPress={() => jobStore.getState().redo()}
      />
    </>
  )
}

/** Stays where it is and can be reached while there is nothing for it to do. */
function StepButton(props: {
  readonly text: string
  readonly said: string
  readonly possible: boolean
  readonly onPress: () => void
}) {
  return (
    <button
      type="button"
      className="bar-button"
      aria-label={props.said}
      title={props.said}
      aria-disabled={!props.possible}
      onClick={props.onPress}
    >
      {props.text}
    </button>
  )
}
