import { type Piston, pistonStates } from '../../../core/measured'
import { typicalReadingDoubtUm } from '../../../core/piston/piston-size'
import { pistonExpansion } from '../../../core/temperature/expansion'
import { newId } from '../../../job/new-id'
import { measureByNewMicrometer, removePiston, setPiston } from '../../../job/piston-commands'
import type { Job } from '../../../job/schema'
import { standardName, thermometerName } from '../../../words/instrument-names'
import { inShownUnit, lengthUnit } from '../../../words/length-unit'
import { plain, tenthsOfMicrons } from '../../../words/numbers'
import { pistonName } from '../../../words/piston-names'
import { pistonWords } from '../../../words/piston-words'
import { words } from '../../../words/words'
import { ChoiceField } from '../ChoiceField'
import { sizeMarks } from '../marks'
import { NumberField } from '../NumberField'
import { attempt, perform } from '../perform'
import { Sentence } from '../Sentence'
import { WithUnit } from '../set-up-fields'
import { type Refusal, TypedField } from '../TypedField'
import { useRange } from '../use-range'

interface PistonProps {
  readonly job: Job
  readonly piston: Piston
}

type Keep = (patch: Parameters<typeof setPiston>[2]) => Refusal

/** A piston: what it is, how it was measured or what it may be, as sentences whose parts are fields. */
export function PistonEntry({ job, piston }: PistonProps) {
  const said = pistonWords.panel
  const called = pistonName(piston, job)
  const keep: Keep = (patch) =>
    perform(pistonWords.changes.piston, (next) => setPiston(next, piston.id, patch))
  const isToBeHad = piston.state === 'obtainable'
  const hasRange = piston.minMm !== undefined || piston.maxMm !== undefined
  const props = { job, piston, called, keep }
  return (
    <li className="piston">
      <div className="sentence">
        <WhatItIs {...props} /> {isToBeHad && piston.readMm === undefined ? null : <HowMeasured {...props} />}{' '}
        {isToBeHad || hasRange ? <SizesItMayHave {...props} /> : null}
      </div>
      <div className="piston-more">
        <details>
          <summary aria-label={said.ofPiston(called, said.details)}>{said.details}</summary>
          <div className="sentence">
            <Doubts {...props} /> <Shape {...props} />
          </div>
        </details>
        <button
          type="button"
          className="quiet"
          aria-label={said.remove(called)}
          title={said.remove(called)}
          onClick={() => perform(pistonWords.changes.removed, (next) => removePiston(next, piston.id))}
        >
          ×
        </button>
      </div>
    </li>
  )
}

interface FieldsProps extends PistonProps {
  readonly called: string
  readonly keep: Keep
}

function WhatItIs({ job, piston, called, keep }: FieldsProps) {
  const said = pistonWords.panel
  const label = (of: string) => said.ofPiston(called, of)
  const text = (typed: string) => (typed.trim() === '' ? undefined : typed.trim())
  return (
    <Sentence
      template={said.what}
      fields={{
        name: (
          <TypedField
            label={label(said.labels.name)}
            text={piston.name ?? ''}
            placeholder={called}
            numeric={false}
            commit={(typed) => keep({ name: text(typed) })}
          />
        ),
        state: (
          <ChoiceField
            label={label(said.labels.state)}
            value={piston.state}
            options={pistonStates.map((value) => ({ value, text: pistonWords.states[value] }))}
            onChoose={(value) => {
              const state = pistonStates.find((known) => known === value)
              if (state) keep({ state, ...(state === 'fitted' ? {} : { boreId: undefined }) })
            }}
          />
        ),
        ranIn: piston.state === 'fitted' ? <RanIn {...{ job, piston, called, keep }} /> : '',
        grade: (
          <TypedField
            label={label(said.labels.grade)}
            text={piston.grade ?? ''}
            placeholder={words.app.notRecorded}
            numeric={false}
            commit={(typed) => keep({ grade: text(typed) })}
          />
        ),
        oversize: (
          <NumberField
            label={label(said.labels.oversize)}
            length
            none={said.standardSize}
            value={piston.oversizeMm}
            keep={(oversizeMm) => keep({ oversizeMm })}
          />
        ),
      }}
    />
  )
}

function RanIn({ job, piston, called, keep }: FieldsProps) {
  const said = pistonWords.panel
  const engine = job.bores.filter(({ role }) => role === 'of-this-engine')
  return (
    <Sentence
      template={said.ranIn}
      fields={{
        bore: (
          <ChoiceField
            label={said.ofPiston(called, said.labels.ranIn)}
            value={piston.boreId ?? ''}
            options={[
              { value: '', text: words.app.notRecorded },
              ...engine.map(({ id, name }) => ({ value: id, text: name })),
            ]}
            onChoose={(value) => keep({ boreId: value === '' ? undefined : value })}
          />
        ),
      }}
    />
  )
}

/** The value that makes a new micrometer. */
const another = '+'

function HowMeasured({ job, piston, called, keep }: FieldsProps) {
  const said = pistonWords.panel
  const label = (of: string) => said.ofPiston(called, of)
  const micrometer = job.standards.find(({ id }) => id === piston.standardId)
  const marks = sizeMarks(micrometer?.markedIn)
  const number = (field: 'heightMm' | 'temperatureC' | 'micrometerTemperatureC', of: string) => (
    <NumberField
      label={label(of)}
      length={field === 'heightMm'}
      value={piston[field]}
      keep={(value) => keep({ [field]: value })}
    />
  )
  return (
    <Sentence
      template={said.read}
      fields={{
        read: (
          <WithUnit marks={marks}>
            <NumberField
              label={inShownUnit(label(said.labels.read), marks.marking)}
              marks={marks}
              value={piston.readMm}
              keep={(readMm) => keep({ readMm })}
            />
          </WithUnit>
        ),
        height: number('heightMm', said.labels.height),
        micrometer: (
          <ChoiceField
            label={label(said.labels.micrometer)}
            value={piston.standardId ?? ''}
            options={[
              { value: '', text: words.app.notRecorded },
              ...job.standards
                .filter(({ id, kind }) => kind === 'micrometer' || id === piston.standardId)
                .map((standard) => ({ value: standard.id, text: standardName(standard, job) })),
              { value: another, text: said.newMicrometer },
            ]}
            onChoose={(value) => {
              if (value !== another) keep({ standardId: value === '' ? undefined : value })
              else
                perform(words.changes.instruments, (next) => measureByNewMicrometer(next, piston.id, newId))
            }}
          />
        ),
        temperature: number('temperatureC', said.labels.temperature),
        micrometerTemperature: number('micrometerTemperatureC', said.labels.micrometerTemperature),
        thermometer: (
          <ChoiceField
            label={label(said.labels.thermometer)}
            value={piston.thermometerId ?? ''}
            options={[
              { value: '', text: words.instruments.noThermometer },
              ...job.thermometers.map((each) => ({ value: each.id, text: thermometerName(each, job) })),
            ]}
            onChoose={(value) => keep({ thermometerId: value === '' ? undefined : value })}
          />
        ),
      }}
    />
  )
}

function SizesItMayHave({ piston, called }: FieldsProps) {
  const said = pistonWords.panel
  const marks = sizeMarks(lengthUnit())
  const sizes = useRange({
    name: `sizes of piston ${piston.id}`,
    low: piston.minMm,
    high: piston.maxMm,
    keep: (minMm, maxMm) =>
      attempt(pistonWords.changes.piston, (job) => setPiston(job, piston.id, { minMm, maxMm })),
    written: marks.written,
  })
  return (
    <Sentence
      template={said.range}
      fields={{
        min: <NumberField label={said.ofPiston(called, said.labels.rangeMin)} size {...sizes.low} />,
        max: <NumberField label={said.ofPiston(called, said.labels.rangeMax)} size {...sizes.high} />,
      }}
    />
  )
}

/** What the drawing of it in the bore needs. */
function Shape({ piston, called, keep }: FieldsProps) {
  const said = pistonWords.panel
  return (
    <Sentence
      template={said.shape}
      fields={{
        crown: (
          <NumberField
            label={said.ofPiston(called, said.labels.crown)}
            length
            value={piston.crownHeightMm}
            keep={(crownHeightMm) => keep({ crownHeightMm })}
          />
        ),
        ring: (
          <NumberField
            label={said.ofPiston(called, said.labels.topRing)}
            length
            value={piston.topRingHeightMm}
            keep={(topRingHeightMm) => keep({ topRingHeightMm })}
          />
        ),
      }}
    />
  )
}

/** Per million and kelvin, as it is typed, against 1/K, as it is kept. */
const perMillion = 1e6

function Doubts({ piston, called, keep }: FieldsProps) {
  const said = pistonWords.panel
  const { expansionPerK, readingDoubtUm } = piston
  const typical = plain(pistonExpansion({ id: piston.id, state: piston.state }).perK * perMillion, 2)
  return (
    <Sentence
      template={said.doubt}
      fields={{
        doubt: (
          <NumberField
            label={said.ofPiston(called, said.labels.doubt)}
            micron
            none={said.taken(tenthsOfMicrons(typicalReadingDoubtUm / 1000))}
            value={readingDoubtUm}
            keep={(value) => keep({ readingDoubtUm: value })}
          />
        ),
        expansion: (
          <NumberField
            label={said.ofPiston(called, said.labels.expansion)}
            none={said.taken(typical)}
            value={expansionPerK === undefined ? undefined : Number((expansionPerK * perMillion).toFixed(6))}
            keep={(value) => keep({ expansionPerK: value === undefined ? undefined : value / perMillion })}
          />
        ),
      }}
    />
  )
}
