import { lazy, Suspense } from 'react'
import { useStore } from 'zustand'
import { words } from '../words/words'
import { Dialog } from './Dialog'
import { closeJobsTaken, closeKeeping, closeVersions, inFront } from './questions'

const JobsTakenReport = lazy(async () => ({ default: (await import('./JobsTakenReport')).JobsTakenReport }))
const Versions = lazy(async () => ({ default: (await import('./Versions')).Versions }))
const KeepingDetails = lazy(async () => ({ default: (await import('./KeepingDetails')).KeepingDetails }))

/** What tells of the keeping of jobs, in front of the page. */
export function KeepingInFront() {
  const { versions, keeping, jobsTaken } = useStore(inFront)
  return (
    <Suspense fallback={null}>
      {jobsTaken ? (
        <Dialog title={words.jobsTaken.title(jobsTaken.name)} onClose={closeJobsTaken}>
          <JobsTakenReport {...jobsTaken} />
        </Dialog>
      ) : null}
      {keeping ? (
        <Dialog title={words.keeping.title} onClose={closeKeeping}>
          <KeepingDetails />
        </Dialog>
      ) : null}
      {versions ? (
        <Dialog title={words.versions.title} onClose={closeVersions}>
          <Versions onRestored={closeVersions} />
        </Dialog>
      ) : null}
    </Suspense>
  )
}
