import { jobStore } from '../job/job-store'
import { writeLengthsIn } from '../words/length-unit'

/** Writes lengths in the unit of the job in hand, now and at each change: before anything of the change is drawn. */
export function keepLengthUnit(): void {
  writeLengthsIn(jobStore.getState().job.shownIn ?? 'mm')
  jobStore.subscribe(({ job }) => writeLengthsIn(job.shownIn ?? 'mm'))
}
