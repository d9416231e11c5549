import type { Spec } from '../../core/measured'
import { setSpec } from '../../job/commands'
import { words } from '../../words/words'
import { NumberField } from './NumberField'
import { perform } from './perform'
import { Sentence } from './Sentence'

/** Hours after which the manual wants the bore measured again, as a sentence. */
export function ServiceInterval({ spec }: { readonly spec: Spec }) {
  const said = words.limits
  return (
    <Sentence
      template={said.interval}
      fields={{
        serviceInterval: (
          <NumberField
            label={said.labels.serviceInterval}
            value={spec.serviceIntervalHours}
            none={said.none}
            keep={(serviceIntervalHours) =>
              perform(words.changes.limits, (job) => setSpec(job, { serviceIntervalHours }))
            }
          />
        ),
      }}
    />
  )
}
