import { type ChangeEvent, type ReactNode, useRef } from 'react'
import { words } from '../words/words'
import { openFile } from './open-file'

const tables = '.csv,.tsv,.txt,text/csv,text/tab-separated-values,text/plain'
const accepted = { file: `.json,application/json,.html,text/html,${tables}`, table: tables } as const

/** The system's way to choose a job file or a table: the field to be put on the page, and what shows it. */
export function useFileChooser(kind: keyof typeof accepted = 'file'): {
  readonly field: ReactNode
  readonly choose: () => void
} {
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
      accept={accepted[kind]}
      hidden
      aria-label={kind === 'file' ? words.file.open : words.table.menu}
      onChange={openChosen}
    />
  )
  return { field, choose: () => input.current?.click() }
}
