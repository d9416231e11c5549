import { type ChangeEvent, type ReactNode, useRef } from 'react'
import { words } from '../words/words'
import { openFile } from './open-file'

/** The system's way to choose a job file: the field to be put on the page, and what shows it. */
export function useFileChooser(): { readonly field: ReactNode; readonly choose: () => void } {
  const input = useRef<HTMLInputElement>(null)
  const openChosen = (event: ChangeEvent<HTMLInputElement>) => {
    const chosen = event.target.files?.[0]
    if (chosen) void openFile(chosen)
    // So that choosing the same file once more is a choice again.
    event.target.value = ''
  }
  const field = (
    <input
      ref={input}
      type="file"
      accept=".json,application/json"
      hidden
      aria-label={words.file.open}
      onChange={openChosen}
    />
  )
  return { field, choose: () => input.current?.click() }
}
