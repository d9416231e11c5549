import { describeJob } from '../../job/commands'
import type { Job } from '../../job/schema'
import { words } from '../../words/words'
import { NumberField } from './NumberField'
import { perform } from './perform'
import { Sentence } from './Sentence'
import { TypedField } from './TypedField'

/** What the engine is in, by which a job is found again, and how much it runs, which turns hours into a day. */
export function MachineSentence({ machine, hoursPerWeek }: Pick<Job, 'machine' | 'hoursPerWeek'>) {
  const keep = (typed: string) => {
    const named = typed.trim() === '' ? undefined : typed.trim()
    return perform(words.changes.machine, (job) => describeJob(job, { machine: named }))
  }
  return (
    <Sentence
      template={words.bore.machine}
      fields={{
        machine: (
          <TypedField
            label={words.bar.machine}
            text={machine ?? ''}
            placeholder={words.app.notRecorded}
            numeric={false}
            width={Math.min(widest, Math.max(12, machine?.length ?? 0))}
            commit={keep}
          />
        ),
        hoursPerWeek: (
          <NumberField
            label={words.bore.labels.hoursPerWeek}
            value={hoursPerWeek}
            keep={(value) =>
              perform(words.changes.machine, (job) => describeJob(job, { hoursPerWeek: value }))
            }
          />
        ),
      }}
    />
  )
}

/** Digits: a longer name is read by going through it, so that the field stays within its line. */
const widest = 36
