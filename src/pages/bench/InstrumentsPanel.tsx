import type { ReactNode } from 'react'
import {
  addGauge,
  addSetUp,
  addStandard,
  addThermometer,
  type InstrumentList,
  removeInstrument,
  setUpsUsing,
} from '../../job/instrument-list'
import { newId } from '../../job/new-id'
import { pistonsUsing } from '../../job/piston-commands'
import type { Job } from '../../job/schema'
import { setGauge, setStandard, setThermometer } from '../../job/set-up-commands'
import { gaugeName, setUpName, standardName, thermometerName } from '../../words/instrument-names'
import { pistonName } from '../../words/piston-names'
import { words } from '../../words/words'
import { GaugeChecks, GaugeStudies } from './GaugeChecks'
import { ListedRow } from './ListedRow'
import { perform } from './perform'
import { RemoveListed } from './RemoveListed'
import { SetUpRow } from './SetUpRow'
import { TypedField } from './TypedField'
import type { OnBench } from './use-job'

/** Gauges, rings and micrometers, thermometers and settings of the job, and which bores use what. */
export function InstrumentsPanel(bench: OnBench) {
  const { job, setUp } = bench
  const said = words.instruments
  const change = (next: (job: Job) => Job) => perform(words.changes.instruments, next)
  return (
    <section className="panel instruments" aria-label={said.title}>
      <p className="aside">{said.lead}</p>
      <h2>{said.lists.setUps}</h2>
      <ul>
        {job.setUps.map((each) => (
          <SetUpRow key={each.id} {...bench} listed={each} />
        ))}
      </ul>
      <AddButton text={said.add.setUps} onAdd={() => change((next) => addSetUp(next, setUp.id, newId))} />
      <h2>{said.lists.gauges}</h2>
      <ul>
        {job.gauges.map((gauge) => (
          <InstrumentRow
            key={gauge.id}
            job={job}
            list="gauges"
            instrument={gauge}
            label={said.gaugeLabel}
            called={gaugeName(gauge, job)}
            rename={(name) => change((next) => setGauge(next, gauge.id, { name }))}
          >
            <GaugeChecks {...bench} gauge={gauge} />
            <GaugeStudies job={job} gauge={gauge} />
          </InstrumentRow>
        ))}
      </ul>
      <AddButton text={said.add.gauges} onAdd={() => change((next) => addGauge(next, 'dial-0.01', newId))} />
      <h2>{said.lists.standards}</h2>
      <ul>
        {job.standards.map((standard) => (
          <InstrumentRow
            key={standard.id}
            job={job}
            list="standards"
            instrument={standard}
            label={said.standardLabel}
            called={standardName(standard, job)}
            rename={(name) => change((next) => setStandard(next, standard.id, { name }))}
          />
        ))}
      </ul>
      <AddButton text={said.add.ring} onAdd={() => change((next) => addStandard(next, 'ring', newId))} />{' '}
      <AddButton
        text={said.add.micrometer}
        onAdd={() => change((next) => addStandard(next, 'micrometer', newId))}
      />
      <h2>{said.lists.thermometers}</h2>
      <ul>
        {job.thermometers.map((thermometer) => (
          <InstrumentRow
            key={thermometer.id}
            job={job}
            list="thermometers"
            instrument={thermometer}
            label={said.thermometerLabel}
            called={thermometerName(thermometer, job)}
            rename={(name) => change((next) => setThermometer(next, thermometer.id, { name }))}
          />
        ))}
      </ul>
      <AddButton text={said.add.thermometers} onAdd={() => change((next) => addThermometer(next, newId))} />
    </section>
  )
}

function AddButton({ text, onAdd }: { readonly text: string; readonly onAdd: () => void }) {
  return (
    <button type="button" className="quiet" onClick={onAdd}>
      {text}
    </button>
  )
}

function InstrumentRow(props: {
  readonly job: Job
  readonly list: InstrumentList
  readonly instrument: { readonly id: string; readonly name?: string }
  readonly label: string
  readonly called: string
  readonly rename: (name: string | undefined) => string | undefined
  readonly children?: ReactNode
}) {
  const { job, list, instrument, label, called, rename, children } = props
  const said = words.instruments
  const users = [
    ...setUpsUsing(job, list, instrument.id).map((setUp) => setUpName(setUp, job)),
    ...pistonsUsing(job, instrument.id).map((piston) => pistonName(piston, job)),
  ]
  return (
    <ListedRow
      users={users}
      remove={
        <RemoveListed
          called={called}
          users={users}
          remove={(next) => removeInstrument(next, list, instrument.id)}
        />
      }
      beneath={children}
    >
      <TypedField
        label={said.labelOf(label, called)}
        text={instrument.name ?? ''}
        placeholder={called}
        numeric={false}
        commit={(typed) => rename(typed.trim() === '' ? undefined : typed.trim())}
      />
    </ListedRow>
  )
}
