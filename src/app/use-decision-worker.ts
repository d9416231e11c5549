import { useCallback, useEffect, useRef } from 'react'
import type { DecisionAsked, DecisionSaid } from '../workers/decision-messages'

interface Asking {
  readonly ask: (asked: DecisionAsked, hear: (said: DecisionSaid) => void, fail: () => void) => void
  readonly stop: () => void
}

/** One question at a time to a worker of its own: a new one, or leaving, ends the one before. */
export function useDecisionWorker(): Asking {
  const worker = useRef<Worker>(undefined)
  const stop = useCallback(() => {
    worker.current?.terminate()
    worker.current = undefined
  }, [])
  useEffect(() => stop, [stop])
  const ask = useCallback<Asking['ask']>(
    (asked, hear, fail) => {
      stop()
      const made = new Worker(new URL('../workers/decision.worker.ts', import.meta.url), { type: 'module' })
      worker.current = made
      made.addEventListener('message', ({ data }: MessageEvent<DecisionSaid>) => {
        if (data.kind === 'done') stop()
        else hear(data)
      })
      made.addEventListener('error', () => {
        stop()
        fail()
      })
      made.postMessage(asked)
    },
    [stop],
  )
  return { ask, stop }
}
