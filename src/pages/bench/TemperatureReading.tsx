import type { SetUp } from '../../core/measured'
import { newId } from '../../job/new-id'
import type { Job } from '../../job/schema'
import { setSetUp } from '../../job/set-up-commands'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { perform } from './perform'

const ways = ['one', 'two', 'soaked'] as const
type Way = (typeof ways)[number]

/** How the two temperatures were read, as one choice: it decides which errors they share. */
export function temperatureReading(job: Job, setUp: SetUp) {
  const said = words.setUp
  return {
    thermometers: (
      <ChoiceField
        label={said.labels.thermometers}
        value={wayOf(setUp)}
        options={ways.map((way) => ({ value: way, text: said.thermometers[way] }))}
        onChoose={(value) => {
          const way = ways.find((known) => known === value)
          if (way) perform(words.changes.setUp, (j) => readBy(j, setUp.id, way, job))
        }}
      />
    ),
  }
}

function wayOf(setUp: SetUp): Way {
  if (setUp.soakedTogether === true) return 'soaked'
  const { boreThermometerId: bore, referenceThermometerId: reference } = setUp
  return bore !== undefined && reference !== undefined && bore !== reference ? 'two' : 'one'
}

function readBy(job: Job, setUpId: string, way: Way, before: Job): Job {
  const first = before.thermometers[0] ?? { id: newId() }
  const second = before.thermometers[1] ?? { id: newId() }
  const needed = way === 'two' ? [first, second] : [first]
  const thermometers = [
    ...job.thermometers,
    ...needed.filter(({ id }) => !job.thermometers.some((known) => known.id === id)),
  ]
  return setSetUp({ ...job, thermometers }, setUpId, {
    soakedTogether: way === 'soaked' ? true : undefined,
    boreThermometerId: first.id,
    referenceThermometerId: way === 'two' ? second.id : first.id,
  })
}
