import { useEffect, useState } from 'react'
import { useStore } from 'zustand'
import { jobStore } from '../job/job-store'
import { readingsIn } from '../job/readings-in'
import { perform } from '../pages/bench/perform'
import type { Refusal } from '../pages/bench/TypedField'
import { dayAndTime } from '../pages/shelf/day-and-time'
import type { JobVersion } from '../storage/job-versions'
import { mostVersions } from '../storage/thinned-versions'
import { words } from '../words/words'
import { nameOr, say } from './desk'
import { saveLoop } from './keeping'
import { textToSend } from './send-text'
import { unlessShelfFails } from './shelf-here'

/** The job as it stood earlier: when, what stood in it, to look at and to go back to. */
export function Versions({ onRestored }: { readonly onRestored: () => void }) {
  const id = useStore(jobStore, ({ job }) => job.id)
  const [versions, setVersions] = useState<readonly JobVersion[]>()
  const [refusal, setRefusal] = useState<Refusal>()
  useEffect(() => {
    let wanted = true
    void readVersions(id).then((found) => {
      if (wanted) setVersions(found)
    })
    return () => {
      wanted = false
    }
  }, [id])
  const restore = async (version: JobVersion) => {
    const why = await restored(version)
    setRefusal(why)
    if (why === undefined) onRestored()
  }
  const said = words.versions
  if (!versions) return <p>{words.app.loading}</p>
  return (
    <>
      <p className="soft">{said.lead(mostVersions)}</p>
      {refusal === undefined ? null : (
        <p role="alert" className="refusal">
          {refusal}
        </p>
      )}
      {versions.length === 0 ? <p>{said.none}</p> : null}
      <ul className="version-list">
        {versions.map((version) => (
          <Version key={version.key} version={version} onRestore={() => void restore(version)} />
        ))}
      </ul>
    </>
  )
}

function Version({ version, onRestore }: { readonly version: JobVersion; readonly onRestore: () => void }) {
  const { changedAt, why, read } = version
  const said = words.versions
  const when = dayAndTime(changedAt)
  const [looking, setLooking] = useState(false)
  return (
    <li>
      <div className="version-line">
        <span>
          <strong>{when}</strong> {said.why[why]}
          <br />
          {read.ok
            ? said.held(nameOr(read.job.name), words.shelf.readings(readingsIn(read.job)))
            : said.unreadable}
        </span>
        {read.ok ? (
          <>
            <button
              type="button"
              className="button"
              aria-label={said.lookAt(when)}
              aria-expanded={looking}
              onClick={() => setLooking(!looking)}
            >
              {said.look}
            </button>
            <button type="button" className="button" aria-label={said.restoreOf(when)} onClick={onRestore}>
              {said.restore}
            </button>
          </>
        ) : null}
      </div>
      {looking && read.ok ? (
        <textarea
          className="version-text"
          readOnly
          rows={12}
          wrap="off"
          aria-label={said.textOf(when)}
          value={textToSend(read.job)}
        />
      ) : null}
    </li>
  )
}

async function readVersions(id: string): Promise<readonly JobVersion[]> {
  await saveLoop.settled()
  return (await unlessShelfFails((open) => open.versions(id))) ?? []
}

/** Lays the earlier version on the bench as a change that can be undone; what stands there is kept before. */
async function restored({ changedAt, read }: JobVersion): Promise<Refusal> {
  if (!read.ok) return undefined
  await saveLoop.settled()
  const { id } = jobStore.getState().job
  const kept = await unlessShelfFails(async (open) => {
    await open.keepVersion(id, 'restore')
    return true
  })
  if (!kept) return undefined
  const refusal = perform(words.changes.restored, () => ({ ...read.job, id }))
  if (refusal === undefined) say(words.versions.restored(dayAndTime(changedAt)))
  return refusal
}
