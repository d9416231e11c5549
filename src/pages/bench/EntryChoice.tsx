import { useState } from 'react'
import { entriesOf, entryOf, isOfSizes } from '../../core/diameter/entry'
import type { Entry } from '../../core/measured'
import { surveysUsing } from '../../job/instrument-list'
import { newId } from '../../job/new-id'
import { changeEntry } from '../../job/set-up-commands'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { perform } from './perform'
import type { Refusal } from './TypedField'
import type { OnBench } from './use-job'

/** How readings are written down, among the ways that the kind of gauge allows. */
export function EntryChoice({ job, setUp, gauge }: Pick<OnBench, 'job' | 'setUp' | 'gauge'>) {
  const [refusal, setRefusal] = useState<Refusal>()
  const said = words.setUp
  const now = entryOf(setUp, gauge)
  const allowed = entriesOf(gauge.kind)
  const ways: readonly Entry[] = allowed.includes(now) ? allowed : [...allowed, now]
  const isRead = surveysUsing(job, setUp.id).some(({ survey }) => survey.readings.length > 0)
  const isSizeless = now === 'reverse' && setUp.overContactsMm === undefined && isRead
  return (
    <>
      <ChoiceField
        label={said.labels.entry}
        value={now}
        options={ways.map((entry) => ({ value: entry, text: said.entries[entry] }))}
        onChoose={(value) => {
          const entry = ways.find((known) => known === value)
          if (!entry) return
          setRefusal(
            isSizeless && isOfSizes(entry)
              ? said.noSizesYet
              : perform(words.changes.entry, (before) => changeEntry(before, setUp.id, entry, newId)),
          )
        }}
      />
      {refusal === undefined ? null : (
        <span role="alert" className="refusal">
          {refusal}
        </span>
      )}
    </>
  )
}
