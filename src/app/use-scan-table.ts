import { useEffect, useState } from 'react'
import type { ScanChoices } from '../formats/scan-table'
import type { ScanReadingState } from '../pages/import/scan-reading-state'
import type { ScanTableAsked, ScanTableSaid } from '../workers/scan-table-messages'

/**
 * Reads a file of radii off the main thread, anew for each choice; what was read before stays until it is done. Stopped,
 * it is begun again when it is asked for.
 */
export function useScanTable(
  bytes: Uint8Array,
  choices: ScanChoices,
): { readonly state: ScanReadingState; readonly stop: () => void; readonly again: () => void } {
  const [run, setRun] = useState(0)
  const [stopped, setStopped] = useState(-1)
  const [state, setState] = useState<ScanReadingState>({ kind: 'reading', done: 0, all: 0 })
  useEffect(() => {
    if (stopped === run) return
    const worker = new Worker(new URL('../workers/scan-table.worker.ts', import.meta.url), { type: 'module' })
    const reading = (done: number, all: number) =>
      setState((before) => ({
        kind: 'reading',
        done,
        all,
        ...('table' in before && before.table ? { table: before.table } : {}),
      }))
    reading(0, 0)
    worker.addEventListener('message', ({ data }: MessageEvent<ScanTableSaid>) => {
      if (data.kind === 'progress') reading(data.done, data.all)
      else setState({ kind: 'done', table: data.table })
    })
    worker.addEventListener('error', () => setState({ kind: 'failed' }))
    const asked: ScanTableAsked = { bytes, choices }
    worker.postMessage(asked)
    return () => worker.terminate()
  }, [bytes, choices, run, stopped])
  const stop = () => {
    setStopped(run)
    setState({ kind: 'stopped' })
  }
  return { state, stop, again: () => setRun(run + 1) }
}
