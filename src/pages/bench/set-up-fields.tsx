import type { ReactNode } from 'react'
import { entryOf } from '../../core/diameter/entry'
import { presetOf, stepReadUm } from '../../core/gauge/presets'
import type { Gauge, GaugeKind, SetUp, Standard } from '../../core/measured'
import { gaugeKinds, markings, standardKinds } from '../../core/measured'
import { uncheckedMicrometerHalfWidthUm } from '../../core/uncertainty/set-up-contributions'
import { changeGaugeKind, chooseStandardKind } from '../../job/instrument-kinds'
import { newId } from '../../job/new-id'
import { setGauge, setSetUp, setStandard } from '../../job/set-up-commands'
import { enterSetting, isSettingOpen } from '../../job/setting-size'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { EntryChoice } from './EntryChoice'
import { FieldUnit } from './FieldUnit'
import { dialMarks, type Marks, sizeMarks } from './marks'
import { NeededNumberField, NumberField } from './NumberField'
import { perform } from './perform'
import { temperatureFields } from './temperature-fields'
import type { OnBench } from './use-job'

type OfSetUp = Pick<OnBench, 'job' | 'setUp' | 'gauge' | 'standard'>
type Labelled = keyof typeof words.setUp.inchLabels

/** Kinds of gauge that this page can enter today. */
const enteredKinds: readonly GaugeKind[] = gaugeKinds.filter((kind) => kind !== 'radial-probe')

/** Every field of the set-up sentences but the direction test, by its slot. */
export function setUpFields(of: OfSetUp) {
  return {
    ...gaugeFields(of.gauge),
    ...standardFields(of),
    ...readingFields(of),
    ...temperatureFields(of),
    entry: <EntryChoice {...of} />,
  }
}

/** The label of a field that an instrument marked in inches words otherwise. */
export function labelOf(field: Labelled, { marking }: Marks): string {
  return marking === 'inch' ? words.setUp.inchLabels[field] : words.setUp.labels[field]
}

function gaugeFields(gauge: Gauge) {
  const said = words.setUp
  const marks = dialMarks(gauge.markedIn)
  const kinds = enteredKinds.includes(gauge.kind) ? enteredKinds : [...enteredKinds, gauge.kind]
  return {
    gauge: (
      <ChoiceField
        label={said.labels.gauge}
        value={gauge.kind}
        options={kinds.map((kind) => ({ value: kind, text: said.gauges[kind] }))}
        onChoose={(value) => {
          const kind = kinds.find((known) => known === value)
          if (kind) perform(words.changes.gauge, (job) => changeGaugeKind(job, gauge.id, kind, newId))
        }}
      />
    ),
    step: (
      <NeededNumberField
        label={labelOf('step', marks)}
        value={stepReadUm(gauge)}
        marks={marks}
        keep={(stepUm) => perform(words.changes.gauge, (job) => setGauge(job, gauge.id, { stepUm }))}
      />
    ),
    dialUnit: (
      <ChoiceField
        label={said.labels.dialUnit}
        value={marks.marking}
        options={markings.map((marking) => ({ value: marking, text: said.units.dial[marking] }))}
        onChoose={(value) => {
          const markedIn = value === 'inch' ? 'inch' : undefined
          perform(words.changes.gauge, (job) => setGauge(job, gauge.id, { markedIn }))
        }}
      />
    ),
  }
}

function standardFields({ setUp, gauge, standard }: OfSetUp) {
  const said = words.setUp
  const isDirect = entryOf(setUp, gauge) === 'direct'
  return {
    standard: (
      <ChoiceField
        label={said.labels.standard}
        value={standard.kind}
        options={standardKinds.map((kind) => ({ value: kind, text: said.standards[kind] }))}
        onChoose={(value) => {
          const kind = standardKinds.find((known) => known === value)
          if (!kind) return
          perform(words.changes.standard, (job) => chooseStandardKind(job, setUp.id, kind, newId))
        }}
      />
    ),
    sizeUnit: (
      <ChoiceField
        label={said.labels.sizeUnit}
        value={standard.markedIn ?? 'mm'}
        options={markings.map((marking) => ({ value: marking, text: said.units.size[marking] }))}
        onChoose={(value) => {
          const markedIn = value === 'inch' ? 'inch' : undefined
          perform(words.changes.standard, (job) => setStandard(job, standard.id, { markedIn }))
        }}
      />
    ),
    reference: said.references[standard.kind],
    micrometerError: (
      <MicrometerError standard={standard} marks={dialMarks(isDirect ? gauge.markedIn : standard.markedIn)} />
    ),
  }
}

function MicrometerError({ standard, marks }: { readonly standard: Standard; readonly marks: Marks }) {
  const said = words.setUp
  const taken =
    standard.kind === 'micrometer'
      ? said.taken.micrometer(marks.written(uncheckedMicrometerHalfWidthUm))
      : said.taken.zero
  return (
    <WithUnit marks={marks}>
      <NumberField
        label={labelOf('micrometerError', marks)}
        value={standard.errorUm}
        marks={marks}
        none={said.notRecorded(taken)}
        keep={(errorUm) =>
          perform(words.changes.standard, (job) => setStandard(job, standard.id, { errorUm }))
        }
      />
    </WithUnit>
  )
}

function readingFields(of: OfSetUp) {
  const { setUp, gauge, standard } = of
  const said = words.setUp
  const ofGauge = dialMarks(gauge.markedIn)
  const ofStandard = sizeMarks(standard.markedIn)
  const keep = (patch: Parameters<typeof setSetUp>[2]) =>
    perform(words.changes.setUp, (job) => setSetUp(job, setUp.id, patch))
  const driftUm = gauge.driftHalfWidthUm ?? presetOf(gauge.kind).driftHalfWidthUm
  const drift = driftUm === undefined ? said.taken.nothing : said.taken.drift(ofGauge.written(driftUm))
  const dial = (
    field: 'zeroOpen' | 'zeroClose' | 'dialOverContacts',
    value: number | undefined,
    taken: string,
    patch: (um: number | undefined) => Parameters<typeof setSetUp>[2],
  ) => (
    <WithUnit marks={ofGauge}>
      <NumberField
        label={labelOf(field, ofGauge)}
        value={value}
        marks={ofGauge}
        none={said.notRecorded(taken)}
        keep={(um) => keep(patch(um))}
      />
    </WithUnit>
  )
  return {
    size: <SettingSize {...of} />,
    zeroOpen: dial('zeroOpen', setUp.zeroOpenUm, said.taken.zero, (zeroOpenUm) => ({ zeroOpenUm })),
    zeroClose: dial('zeroClose', setUp.zeroCloseUm, drift, (zeroCloseUm) => ({ zeroCloseUm })),
    overContacts: (
      <NumberField
        label={labelOf('overContacts', ofStandard)}
        value={setUp.overContactsMm}
        marks={ofStandard}
        keep={(overContactsMm) => keep({ overContactsMm })}
      />
    ),
    dialOverContacts: dial(
      'dialOverContacts',
      setUp.dialOverContactsUm,
      said.taken.zero,
      (dialOverContactsUm) => ({ dialOverContactsUm }),
    ),
    direction: <Direction setUp={setUp} />,
  }
}

/** The setting as its standard shows it; read directly, roughly the size of the bore as the gauge shows it. */
function SettingSize({ setUp, gauge, standard }: OfSetUp) {
  const isDirect = entryOf(setUp, gauge) === 'direct'
  const marks = sizeMarks(isDirect ? gauge.markedIn : standard.markedIn)
  const taken = words.setUp.taken.size(marks.written(setUp.settingSizeMm))
  const field = (
    <NeededNumberField
      label={labelOf(isDirect ? 'roughSize' : 'size', marks)}
      value={setUp.settingSizeMm}
      marks={marks}
      {...(isSettingOpen(setUp) ? { none: words.setUp.notRecorded(taken) } : {})}
      keep={(sizeMm) => perform(words.changes.setUp, (next) => enterSetting(next, setUp.id, sizeMm))}
    />
  )
  return isDirect ? <WithUnit marks={marks}>{field}</WithUnit> : field
}

function Direction({ setUp }: { readonly setUp: SetUp }) {
  const said = words.setUp
  return (
    <ChoiceField
      label={said.labels.direction}
      value={setUp.largerIs ?? ''}
      options={[
        { value: '', text: said.notRecorded(said.taken.clockwise) },
        ...(['clockwise', 'anticlockwise'] as const).map((way) => ({
          value: way,
          text: said.directions[way],
        })),
      ]}
      onChoose={(value) => {
        const largerIs = value === 'clockwise' || value === 'anticlockwise' ? value : undefined
        perform(words.changes.setUp, (job) => setSetUp(job, setUp.id, { largerIs }))
      }}
    />
  )
}

/** A figure with the unit that its instrument is marked in. */
export function WithUnit({ marks, children }: { readonly marks: Marks; readonly children: ReactNode }) {
  return (
    <>
      {children}
      <FieldUnit text={marks.unit} />
    </>
  )
}
