import type { SetUp } from '../../core/measured'
import { newId } from '../../job/new-id'
import type { Job } from '../../job/schema'
import { setSetUp } from '../../job/set-up-commands'
import { plain } from '../../words/numbers'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { FieldUnit } from './FieldUnit'
import { NumberField } from './NumberField'
import { perform } from './perform'

const ways = ['one', 'two', 'soaked'] as const
type Way = (typeof ways)[number]

/** The two temperatures, and how they were read as one choice: it decides which errors they share. */
export function temperatureFields({ setUp }: { readonly setUp: SetUp }) {
  const said = words.setUp
  const { boreTemperatureC: bore, referenceTemperatureC: reference } = setUp
  const keep = (patch: Parameters<typeof setSetUp>[2]) =>
    perform(words.changes.setUp, (job) => setSetUp(job, setUp.id, patch))
  return {
    boreTemperature: (
      <Celsius
        label={said.labels.boreTemperature}
        value={bore}
        other={reference}
        keep={(boreTemperatureC) => keep({ boreTemperatureC })}
      />
    ),
    referenceTemperature: (
      <Celsius
        label={said.labels.referenceTemperature}
        value={reference}
        other={bore}
        keep={(referenceTemperatureC) => keep({ referenceTemperatureC })}
      />
    ),
    thermometers: (
      <ChoiceField
        label={said.labels.thermometers}
        value={wayOf(setUp)}
        options={ways.map((way) => ({ value: way, text: said.thermometers[way] }))}
        onChoose={(value) => {
          const way = ways.find((known) => known === value)
          if (way) perform(words.changes.setUp, (job) => readBy(job, setUp, way))
        }}
      />
    ),
  }
}

function Celsius(props: {
  readonly label: string
  readonly value: number | undefined
  /** The other of the two, which stands in for one that was not recorded. */
  readonly other: number | undefined
  readonly keep: (value: number | undefined) => string | undefined
}) {
  const { taken, notRecorded } = words.setUp
  const { label, value, other, keep } = props
  const assumed = other === undefined ? taken.temperature : taken.sameTemperature(plain(other, 1))
  return (
    <>
      <NumberField label={label} value={value} none={notRecorded(assumed)} keep={keep} />
      <FieldUnit text="°C" />
    </>
  )
}

function wayOf(setUp: SetUp): Way {
  if (setUp.soakedTogether === true) return 'soaked'
  const { boreThermometerId: bore, referenceThermometerId: reference } = setUp
  return bore !== undefined && reference !== undefined && bore !== reference ? 'two' : 'one'
}

/** Thermometers that the set-up names are kept; others are taken from the job's list, or added to it. */
function readBy(job: Job, setUp: SetUp, way: Way): Job {
  const listed = (id: string | undefined) => job.thermometers.find((thermometer) => thermometer.id === id)
  const first = listed(setUp.boreThermometerId) ?? job.thermometers[0] ?? { id: newId() }
  const named = listed(setUp.referenceThermometerId)
  const second = (named?.id === first.id ? undefined : named) ??
    job.thermometers.find(({ id }) => id !== first.id) ?? { id: newId() }
  const needed = way === 'two' ? [first, second] : [first]
  const thermometers = [...job.thermometers, ...needed.filter(({ id }) => !listed(id))]
  return setSetUp({ ...job, thermometers }, setUp.id, {
    soakedTogether: way === 'soaked' ? true : undefined,
    boreThermometerId: first.id,
    referenceThermometerId: way === 'two' ? second.id : first.id,
  })
}
