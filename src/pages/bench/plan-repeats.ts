import { describeJob } from '../../job/commands'
import { words } from '../../words/words'
import { perform } from './perform'

/** So many readings are to be taken at each station of the job. */
export function planRepeats(repeatsPerStation: number): void {
  perform(words.changes.repeatsPerStation, (job) => describeJob(job, { repeatsPerStation }))
}
