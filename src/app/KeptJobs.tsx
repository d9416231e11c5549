import { useCallback, useEffect, useState } from 'react'
import { useStore } from 'zustand'
import { jobStore } from '../job/job-store'
import type { SetAside } from '../storage/aside-pile'
import type { ShelfEntry } from '../storage/job-shelf'
import { words } from '../words/words'
import { nameOr, openKept, removeKept, saveSetAside } from './desk'
import { saveLoop } from './keeping'
import { ask, closeKeptJobs } from './questions'
import { unlessShelfFails } from './shelf-here'

interface Kept {
  readonly jobs: readonly ShelfEntry[]
  readonly aside: readonly SetAside[]
}

/** The jobs in this browser, the last changed first, and the records that could not be read. */
export function KeptJobs() {
  const [kept, setKept] = useState<Kept>()
  const look = useCallback(async () => {
    await saveLoop.settled()
    const found = await unlessShelfFails(async (shelf) => ({
      jobs: await shelf.list(),
      aside: await shelf.setAside(),
    }))
    if (found) setKept(found)
    else closeKeptJobs()
  }, [])
  useEffect(() => void look(), [look])
  if (!kept) return <p>{words.app.loading}</p>
  return (
    <>
      <p className="soft">{words.kept.asked}</p>
      {kept.jobs.length === 0 ? <p>{words.kept.none}</p> : null}
      <ul className="kept-list">
        {kept.jobs.map((entry) => (
          <KeptJob key={entry.id} entry={entry} onRemoved={look} />
        ))}
      </ul>
      <SetAsideList aside={kept.aside} />
    </>
  )
}

function KeptJob({ entry, onRemoved }: { readonly entry: ShelfEntry; readonly onRemoved: () => void }) {
  const isCurrent = useStore(jobStore, ({ job }) => job.id === entry.id)
  const name = nameOr(entry.name)
  const open = async () => {
    if (isCurrent || (await openKept(entry.id, entry.name))) closeKeptJobs()
    else onRemoved()
  }
  const remove = async () => {
    const answer = await ask(words.kept.removeAsk(name), [
      { answer: 'remove', label: words.kept.remove(name) },
    ])
    if (answer !== 'remove') return
    await removeKept(entry.id)
    onRemoved()
  }
  return (
    <li>
      <button
        type="button"
        className="kept-open"
        aria-label={words.kept.open(name)}
        onClick={() => void open()}
      >
        {name}
      </button>
      <span className="kept-when">
        {isCurrent ? words.kept.current : words.kept.changed(dayAndTime(entry.changedAt))}
      </span>
      {isCurrent ? null : (
        <button
          type="button"
          className="quiet"
          aria-label={words.kept.remove(name)}
          onClick={() => void remove()}
        >
          {words.kept.delete}
        </button>
      )}
    </li>
  )
}

function SetAsideList({ aside }: { readonly aside: readonly SetAside[] }) {
  if (aside.length === 0) return null
  return (
    <>
      <h3>{words.kept.setAsideTitle}</h3>
      <p className="soft">{words.kept.setAsideLead}</p>
      <ul className="kept-list">
        {aside.map(({ key, name, reason, text, setAsideAt }) => (
          <li key={key}>
            <span>{nameOr(name)}</span>
            <span className="kept-when">
              {words.kept.setAsideWhy[reason]}, {dayAndTime(setAsideAt)}
            </span>
            <button type="button" className="quiet" onClick={() => saveSetAside(name, text)}>
              {words.kept.setAsideSave}
            </button>
          </li>
        ))}
      </ul>
    </>
  )
}

const calendar = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' })

function dayAndTime(iso: string): string {
  const at = new Date(iso)
  // A record of an older or damaged shelf may hold any text here.
  return Number.isNaN(at.getTime()) ? iso : calendar.format(at)
}
