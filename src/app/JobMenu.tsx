import { type ChangeEvent, type KeyboardEvent, useId, useRef } from 'react'
import { useStore } from 'zustand'
import type { Bore } from '../core/measured'
import { removeBore } from '../job/commands'
import { jobStore } from '../job/job-store'
import { words } from '../words/words'
import { useChosenBore } from './BoreTabs'
import { copyAsNewJob, openExample, openFile, saveJobToFile, startNewJob } from './desk'
import { ask, showKeptJobs } from './questions'

interface Item {
  readonly label: string
  readonly pick: () => void
  /** A rule above it. */
  readonly apart?: boolean
}

/** Everything that is done with a job as a whole. */
export function JobMenu() {
  const id = useId()
  const menu = useRef<HTMLDivElement>(null)
  const file = useRef<HTMLInputElement>(null)
  const items = useItems(() => file.current?.click())
  const openChosen = (event: ChangeEvent<HTMLInputElement>) => {
    const chosen = event.target.files?.[0]
    if (chosen) void openFile(chosen)
    // So that choosing the same file once more is a choice again.
    event.target.value = ''
  }
  return (
    <>
      <button type="button" className="bar-button" popoverTarget={id}>
        {words.file.menu}
      </button>
      <div id={id} ref={menu} popover="auto" className="menu">
        <ul>
          {items.map(({ label, pick, apart }) => (
            <li key={label} className={apart ? 'is-apart' : undefined}>
              <button
                type="button"
                onKeyDown={moveFocus}
                onClick={() => {
                  menu.current?.hidePopover()
                  pick()
                }}
              >
                {label}
              </button>
            </li>
          ))}
        </ul>
      </div>
      <input
        ref={file}
        type="file"
        accept=".json,application/json"
        hidden
        aria-label={words.file.open}
        onChange={openChosen}
      />
    </>
  )
}

function useItems(chooseFile: () => void): Item[] {
  const bore = useChosenBore()
  const isOnly = useStore(jobStore, ({ job }) => job.bores.length === 1)
  const { file } = words
  return [
    { label: file.new, pick: () => void startNewJob() },
    { label: file.open, pick: chooseFile },
    { label: file.kept, pick: showKeptJobs },
    { label: file.save, pick: () => void saveJobToFile(false), apart: true },
    { label: file.saveAs, pick: () => void saveJobToFile(true) },
    { label: file.duplicate, pick: () => void copyAsNewJob() },
    { label: file.example, pick: () => void openExample(), apart: true },
    ...(bore && !isOnly
      ? [{ label: words.bar.removeBore(nameOf(bore)), pick: () => void removeAsked(bore), apart: true }]
      : []),
  ]
}

function nameOf({ role, name }: Bore): string {
  return role === 'for-comparison' ? name : words.bar.boreNamed(name)
}

async function removeAsked(bore: Bore): Promise<void> {
  const name = nameOf(bore)
  const answer = await ask(words.bar.removeBoreAsk(name), [
    { answer: 'remove', label: words.bar.removeBore(name) },
  ])
  if (answer !== 'remove') return
  jobStore.getState().perform(words.changes.boreRemoved, (job) => removeBore(job, bore.id))
}

function moveFocus(event: KeyboardEvent<HTMLButtonElement>) {
  const buttons = [...(event.currentTarget.closest('ul')?.querySelectorAll('button') ?? [])]
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key]
  if (step === undefined) return
  event.preventDefault()
  const at = buttons.indexOf(event.currentTarget)
  buttons[(at + step + buttons.length) % buttons.length]?.focus()
}
