/**
 * Changes to the scans of a bore, as pure functions from one document to the next. A change that changes nothing
 * returns the same object; an id that does not exist is our own mistake and throws.
 */
import type { Bore, Scan, Survey } from '../core/measured'
import { type Patch, patched, withEntry } from './patch'
import type { Job } from './schema'

export function addScan(job: Job, boreId: string, scan: Scan): Job {
  return withScansOf(job, boreId, (scans) => [...scans, scan])
}

export function setScan(job: Job, boreId: string, id: string, patch: Patch<Omit<Scan, 'id' | 'hash'>>): Job {
  return withScansOf(job, boreId, (scans) => withEntry(scans, id, (scan) => patched(scan, patch)))
}

/** Takes a scan off a bore; surface findings that were found in it stay. Its values stay where scans are kept, for undo. */
export function removeScan(job: Job, boreId: string, id: string): Job {
  const without = withScansOf(job, boreId, (scans) => {
    withEntry(scans, id, (scan) => scan)
    return scans.filter((scan) => scan.id !== id)
  })
  return withBore(without, boreId, (bore) => {
    const surveys = bore.surveys.map((survey) => unnamed(survey, id))
    return surveys.every((survey, index) => survey === bore.surveys[index]) ? bore : { ...bore, surveys }
  })
}

function unnamed(survey: Survey, scanId: string): Survey {
  if (!survey.surfaceFindings?.some((finding) => finding.scanId === scanId)) return survey
  const surfaceFindings = survey.surfaceFindings.map((finding) =>
    finding.scanId === scanId ? patched(finding, { scanId: undefined }) : finding,
  )
  return { ...survey, surfaceFindings }
}

function withScansOf(job: Job, boreId: string, change: (scans: readonly Scan[]) => readonly Scan[]): Job {
  return withBore(job, boreId, (bore) => {
    const scans = change(bore.scans ?? [])
    return patched(bore, { scans: scans.length > 0 ? scans : undefined })
  })
}

function withBore(job: Job, boreId: string, change: (bore: Bore) => Bore): Job {
  const bores = withEntry(job.bores, boreId, change)
  return bores === job.bores ? job : { ...job, bores }
}
