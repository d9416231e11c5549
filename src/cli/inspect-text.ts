import type { Findings } from '../core/findings'
import { layOut } from '../formats/plain-text'
import type { Job } from '../job/schema'
import { findingsPage } from '../words/findings-page'
import { inspectedScans, scanPassages } from './inspect-scans'

/** The findings of a job as a page of text, at most 78 columns wide. */
export function inspectText(job: Job, findings: Findings): string {
  return layOut([...findingsPage(job, findings), ...scanPassages(inspectedScans(job))])
}
