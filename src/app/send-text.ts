import { layOut } from '../formats/plain-text'
import type { Job } from '../job/schema'
import { findingsOf } from '../job/selectors'
import { findingsPage } from '../words/findings-page'

/** The findings of a job as a page of text, as it is sent. */
export function textToSend(job: Job): string {
  return layOut(findingsPage(job, findingsOf(job)))
}
