import { useState } from 'react'
import type { Decision } from '../core/decision/decision'
import type { Evidence } from '../core/decision/evidence'
import { type Sureness, usualSeed } from '../core/decision/sureness'
import type { WhatIf } from '../core/decision/what-if'
import { surenessTexts } from '../words/decision'
import { countText } from '../words/simulation'
import { whatIfWords } from '../words/what-if-words'
import { useDecisionWorker } from './use-decision-worker'

const trials = 20_000

type State =
  | { readonly kind: 'idle' | 'failed' }
  | { readonly kind: 'running'; readonly done: number }
  | { readonly kind: 'done'; readonly sureness: Sureness | undefined }

interface CloserSurenessProps {
  readonly evidence: Evidence
  readonly tried: WhatIf
  /** The decision with what is tried out. */
  readonly decision: Decision
}

/** On request, how sure the decision is from many more trials, off the main thread. */
export function CloserSureness({ evidence, tried, decision }: CloserSurenessProps) {
  const { ask, stop } = useDecisionWorker()
  const [asked, setAsked] = useState<{ readonly of: WhatIf; readonly state: State }>()
  // What was found of another question is no answer to this one.
  const state: State = asked?.of === tried ? asked.state : { kind: 'idle' }
  const setState = (next: State) => setAsked({ of: tried, state: next })
  const start = () => {
    setState({ kind: 'running', done: 0 })
    ask(
      {
        measured: evidence.measured,
        boreId: evidence.bore.id,
        whatIf: tried,
        about: { kind: 'sureness', trials, seed: usualSeed },
      },
      (said) => {
        if (said.kind === 'progress') setState({ kind: 'running', done: said.trials })
        if (said.kind === 'sureness') setState({ kind: 'done', sureness: said.sureness })
      },
      () => setState({ kind: 'failed' }),
    )
  }
  const cancel = () => {
    stop()
    setState({ kind: 'idle' })
  }
  const said = whatIfWords
  if (state.kind === 'running') {
    return (
      <div role="status">
        <progress max={trials} value={state.done} aria-label={said.closer} />
        <p>{said.running(countText(state.done), countText(trials))}</p>
        <button type="button" className="quiet" onClick={cancel}>
          {said.cancel}
        </button>
      </div>
    )
  }
  const texts = state.kind === 'done' ? surenessTexts(decision, state.sureness) : []
  return (
    <div>
      {state.kind === 'failed' ? <p role="alert">{said.failed}</p> : null}
      {texts.length > 0 ? <p role="status">{[said.closely(countText(trials)), ...texts].join(' ')}</p> : null}
      <button type="button" className="quiet" onClick={start}>
        {said.closer}
      </button>
    </div>
  )
}
