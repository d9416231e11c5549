import { useStore } from 'zustand'
import { words } from '../words/words'
import type { PenState } from './job-pen'
import { jobPen } from './keeping'
import { ask } from './questions'

/** Says that another tab writes the job, and takes it over. Nothing while this tab writes it. */
export function PenLine() {
  const state = useStore(jobPen.state)
  const said = saidOf(state)
  if (said === undefined) return null
  return (
    <section className="pen-line" aria-label={words.pen.label}>
      <p role="status">{said}</p>
      {state.kind === 'following' ? (
        <button type="button" className="button" onClick={() => void takeOver()}>
          {words.pen.takeOver}
        </button>
      ) : null}
    </section>
  )
}

function saidOf(state: PenState): string | undefined {
  if (state.kind === 'handing-over') return words.pen.handingOver
  if (state.kind !== 'following') return undefined
  return state.lost === undefined ? words.pen.following : words.pen.lost[state.lost]
}

async function takeOver(): Promise<void> {
  if ((await jobPen.takeOver()) === 'taken') return
  const answer = await ask(words.pen.unsavedAsk, [{ answer: 'take', label: words.pen.takeOverAnyway }])
  if (answer === 'take') await jobPen.takeOver(true)
}
