import { useEffect, useMemo } from 'react'
import { useStore } from 'zustand'
import { jobStore } from '../job/job-store'
import { Shelf } from '../pages/shelf/Shelf'
import type { ShelfActs } from '../pages/shelf/shelf-jobs'
import { wallPalette } from '../scene/wall-palette'
import { desk, leaveShelf, startNewJob } from './desk'
import { showKeptSpecs } from './questions'
import {
  archiveListed,
  deleteListed,
  duplicateListed,
  fetchMaps,
  lookThroughShelf,
  openListed,
  shelfJobs,
  stopLooking,
} from './shelf-jobs'
import { themeStore } from './theme'
import { useFileChooser } from './use-file-chooser'

/** The shelf with the jobs of this browser on it. */
export function ShelfPage() {
  const listed = useStore(shelfJobs)
  const isBenchBehind = useStore(desk, ({ behindShelf }) => behindShelf === 'bench')
  const benchId = useStore(jobStore, ({ job }) => job.id)
  const theme = useStore(themeStore, (state) => state.theme)
  const file = useFileChooser()
  useEffect(() => {
    void lookThroughShelf()
    return stopLooking
  }, [])
  const { choose } = file
  const acts = useMemo((): ShelfActs => actsWith(choose), [choose])
  const onBench = isBenchBehind ? { onBench: benchId } : {}
  return (
    <>
      <Shelf shelf={{ ...listed, ...onBench }} acts={acts} colours={wallPalette(theme).ramp} />
      {file.field}
    </>
  )
}

function actsWith(chooseFile: () => void): ShelfActs {
  return {
    open: (job) => void openListed(job),
    duplicate: (job) => void duplicateListed(job),
    archive: (job, isArchived) => void archiveListed(job, isArchived),
    remove: (job) => void deleteListed(job, true),
    restore: (job) => void deleteListed(job, false),
    wantMaps: (ids) => void fetchMaps(ids),
    leave: leaveShelf,
    startNew: () => void startNewJob(),
    chooseFile,
    showKeptSpecs,
  }
}
