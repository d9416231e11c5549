import { useEffect, useState } from 'react'
import { useStore } from 'zustand'
import { dayAndTime } from '../pages/shelf/day-and-time'
import { words } from '../words/words'
import { copyState } from './copy-reminder'
import { saveJobToFile } from './desk'
import { FolderCopies } from './FolderCopies'
import type { PenState } from './job-pen'
import { jobPen, saveLoop } from './keeping'
import { persistence } from './persistence'
import { closeKeeping, showVersions } from './questions'
import { saveAllToFile } from './save-all'

/** Whether and where the job is kept, what the browser promises, and the copies there are. */
export function KeepingDetails() {
  const save = useStore(saveLoop.state)
  const { answer } = useStore(persistence)
  const { mark } = useStore(copyState)
  const pen = useStore(jobPen.state)
  const used = useUsed()
  const { keeping, saving, versions, file } = words
  const toVersions = () => {
    closeKeeping()
    showVersions()
  }
  return (
    <>
      <p>{save.kind === 'failed' ? saving.errors[save.code] : keeping.inBrowser}</p>
      <ul className="plain-list">
        <li>{mark.copiedAt === undefined ? keeping.notCopied : keeping.copied(dayAndTime(mark.copiedAt))}</li>
        <li>{keeping.persistence[answer]}</li>
        {used === undefined ? null : <li>{used}</li>}
        {penText(pen) === undefined ? null : <li>{penText(pen)}</li>}
      </ul>
      <div className="keeping-ways">
        <button type="button" className="button" onClick={() => void saveJobToFile(false)}>
          {saving.toFile}
        </button>
        <button type="button" className="button" onClick={() => void saveAllToFile()}>
          {file.saveAll}
        </button>
        <button type="button" className="button" onClick={toVersions}>
          {versions.menu}
        </button>
      </div>
      <FolderCopies />
    </>
  )
}

function penText({ kind }: PenState): string | undefined {
  if (kind === 'unguarded') return words.pen.unguarded
  if (kind === 'held' || kind === 'following') return words.keeping.pen[kind]
  return undefined
}

/** How much room is used, where the browser tells. */
function useUsed(): string | undefined {
  const [said, setSaid] = useState<string>()
  useEffect(() => {
    let wanted = true
    const storage: StorageManager | undefined = navigator.storage
    void storage?.estimate?.().then(({ usage, quota }) => {
      if (!wanted || usage === undefined || quota === undefined) return
      const { used, megabytes } = words.keeping
      setSaid(used(megabytes(usage / 1e6), megabytes(quota / 1e6)))
    })
    return () => {
      wanted = false
    }
  }, [])
  return said
}
