import { useEffect, useRef, useState } from 'react'
import { useStore } from 'zustand'
import type { Simulation } from '../core/simulation/simulate'
import { jobStore } from '../job/job-store'
import type { Job } from '../job/schema'
import { countText, simulationTexts } from '../words/simulation'
import { words } from '../words/words'
import type { SimulationAsked, SimulationSaid } from '../workers/simulation-messages'

const trials = 20_000
/** Always the same, so that the same readings give the same answer. */
const seed = 1

type State =
  | { readonly kind: 'idle' | 'failed' }
  | { readonly kind: 'running'; readonly done: number }
  | { readonly kind: 'done'; readonly simulation: Simulation; readonly job: Job }

/** On request, all of the job simulated off the main thread, with how far it is and a way to stop it. */
export function SimulationCheck() {
  const job = useStore(jobStore, (state) => state.job)
  const [state, setState] = useState<State>({ kind: 'idle' })
  const worker = useRef<Worker>(undefined)
  const stop = () => {
    worker.current?.terminate()
    worker.current = undefined
  }
  useEffect(() => stop, [])
  const start = () => {
    stop()
    setState({ kind: 'running', done: 0 })
    const made = new Worker(new URL('../workers/simulate.worker.ts', import.meta.url), { type: 'module' })
    worker.current = made
    made.addEventListener('message', ({ data }: MessageEvent<SimulationSaid>) => {
      if (data.kind === 'progress') return setState({ kind: 'running', done: data.trials })
      stop()
      setState({ kind: 'done', simulation: data.simulation, job })
    })
    made.addEventListener('error', () => {
      stop()
      setState({ kind: 'failed' })
    })
    const asked: SimulationAsked = { measured: job, trials, seed }
    made.postMessage(asked)
  }
  const cancel = () => {
    stop()
    setState({ kind: 'idle' })
  }
  return <Shown state={state} job={job} start={start} cancel={cancel} />
}

function Shown(props: { state: State; job: Job; start: () => void; cancel: () => void }) {
  const { state, job, start, cancel } = props
  const said = words.simulation
  if (state.kind === 'running') {
    return (
      <div className="simulation" role="status">
        <progress max={trials} value={state.done} aria-label={said.start} />
        <p>{said.running(countText(state.done), countText(trials))}</p>
        <button type="button" className="quiet" onClick={cancel}>
          {said.cancel}
        </button>
      </div>
    )
  }
  const texts = state.kind === 'done' ? simulationTexts(state.simulation) : []
  return (
    <div className="simulation">
      {state.kind === 'failed' ? <p role="alert">{said.failed}</p> : null}
      {texts.map((text) => (
        <p key={text} role="status">
          {text}
        </p>
      ))}
      {state.kind === 'done' && state.job !== job ? <p>{said.stale}</p> : null}
      <button type="button" className="quiet" onClick={start} title={said.lead}>
        {said.start}
      </button>
    </div>
  )
}
