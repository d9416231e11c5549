import type { Findings } from '../core/findings'
import { layOut } from '../formats/plain-text'
import { inspectedScans } from '../job/inspected-scans'
import type { Job } from '../job/schema'
import { findingsPage } from '../words/findings-page'
import { writtenIn } from '../words/length-unit'
import { scanPassages } from '../words/scan-passages'

/** The findings of a job as a page of text, at most 78 columns wide. */
export function inspectText(job: Job, findings: Findings): string {
  return writtenIn(job.shownIn ?? 'mm', () =>
    layOut([...findingsPage(job, findings), ...scanPassages(inspectedScans(job))]),
  )
}
