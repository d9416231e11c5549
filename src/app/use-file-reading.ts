import { useEffect, useRef, useState } from 'react'
import type { FileReading } from '../pages/import/file-reading'
import type { FileAsked, FileSaid } from '../workers/file-messages'

/**
 * Reads a file off the main thread, anew for each choice; what was read before stays until it is done. Stopped, it is
 * begun again when it is asked for. `open` makes the worker, the same function at every call; `onRead` hears what was
 * read before any of it is drawn.
 */
export function useFileReading<Choices, Read>(
  open: () => Worker,
  bytes: Uint8Array,
  choices: Choices,
  onRead?: (read: Read) => void,
): { readonly state: FileReading<Read>; readonly stop: () => void; readonly again: () => void } {
  const [run, setRun] = useState(0)
  const [stopped, setStopped] = useState(-1)
  const latest = useRef(onRead)
  latest.current = onRead
  const [state, setState] = useState<FileReading<Read>>({ kind: 'reading', done: 0, all: 0 })
  useEffect(() => {
    if (stopped === run) return
    const worker = open()
    const reading = (done: number, all: number) =>
      setState((before) => ({
        kind: 'reading',
        done,
        all,
        ...('read' in before && before.read !== undefined ? { read: before.read } : {}),
      }))
    reading(0, 0)
    worker.addEventListener('message', ({ data }: MessageEvent<FileSaid<Read>>) => {
      if (data.kind === 'progress') return reading(data.done, data.all)
      latest.current?.(data.read)
      setState({ kind: 'done', read: data.read })
    })
    worker.addEventListener('error', () => setState({ kind: 'failed' }))
    const asked: FileAsked<Choices> = { bytes, choices }
    worker.postMessage(asked)
    return () => worker.terminate()
  }, [open, bytes, choices, run, stopped])
  return {
    state: stopped === run ? { kind: 'stopped' } : state,
    stop: () => setStopped(run),
    again: () => setRun(run + 1),
  }
}
