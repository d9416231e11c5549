import { useEffect, useState } from 'react'
import type { TableChoices } from '../formats/table-file'
import type { TableReadingState } from '../pages/import/table-reading-state'
import type { TableAsked, TableSaid } from '../workers/table-messages'

/**
 * Reads a table off the main thread, anew for each choice; what was read before stays until it is done. `run` counts
 * how often it is to be begun again after it was stopped.
 */
export function useTableFile(
  bytes: Uint8Array,
  choices: TableChoices,
): { readonly state: TableReadingState; readonly stop: () => void; readonly again: () => void } {
  const [run, setRun] = useState(0)
  const [state, setState] = useState<TableReadingState>({ kind: 'reading', done: 0, all: 0 })
  const [stopped, setStopped] = useState(-1)
  useEffect(() => {
    if (stopped === run) return
    const worker = new Worker(new URL('../workers/table.worker.ts', import.meta.url), { type: 'module' })
    const before = (state: TableReadingState) => ('file' in state ? { file: state.file } : {})
    setState((state) => ({ kind: 'reading', done: 0, all: 0, ...before(state) }))
    worker.addEventListener('message', ({ data }: MessageEvent<TableSaid>) => {
      if (data.kind === 'progress') {
        setState((state) => ({ kind: 'reading', done: data.done, all: data.all, ...before(state) }))
      } else setState({ kind: 'done', file: data.file })
    })
    worker.addEventListener('error', () => setState({ kind: 'failed' }))
    const asked: TableAsked = { bytes, choices }
    worker.postMessage(asked)
    return () => worker.terminate()
  }, [bytes, choices, run, stopped])
  const stop = () => {
    setStopped(run)
    setState({ kind: 'stopped' })
  }
  return { state, stop, again: () => setRun(run + 1) }
}
