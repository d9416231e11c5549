import { useState } from 'react'
import { isOfSizes } from '../../core/diameter/entry'
import { presetOf } from '../../core/gauge/presets'
import type { Gauge, SetUp, Standard } from '../../core/measured'
import { gaugeKinds, standardKinds } from '../../core/measured'
import { newId } from '../../job/new-id'
import { changeEntry, changeGaugeKind, setGauge, setSetUp, setStandard } from '../../job/set-up-commands'
import { microns } from '../../words/numbers'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { NeededNumberField, NumberField } from './NumberField'
import { perform } from './perform'
import { Sentence } from './Sentence'
import { temperatureReading } from './TemperatureReading'
import { TypicalFigures } from './TypicalFigures'
import type { OnBench } from './use-job'

/** Kinds of gauge that are set to a size before they are read: those this page can enter today. */
const setGaugeKinds = gaugeKinds.filter((kind) => kind.startsWith('dial') || kind === 'air-plug')

/** The set-up as a running sentence whose parts are fields. */
export function SetUpSentence({ job, setUp, finding }: OnBench) {
  const [typicalShown, setTypicalShown] = useState(false)
  const gauge = entryOf(job.gauges, setUp.gaugeId)
  const standard = entryOf(job.standards, setUp.standardId)
  const said = words.setUp
  const fields = {
    ...gaugeFields(gauge, standard, setUp),
    ...conditionFields(setUp),
    ...temperatureReading(job, setUp),
  }
  const correction = finding.stations[0]?.correctionMm
  return (
    <>
      <p className="sentence">
        <Sentence template={isOfSizes(setUp.entry) ? said.sizes : said.deviations} fields={fields} />{' '}
        {standard.kind === 'micrometer' ? (
          <Sentence
            template={said.micrometerCheck}
            fields={{
              micrometerError: (
                <NumberField
                  label={said.labels.micrometerError}
                  value={standard.errorUm}
                  keep={(errorUm) =>
                    perform(words.changes.standard, (j) => setStandard(j, standard.id, { errorUm }))
                  }
                />
              ),
            }}
          />
        ) : null}{' '}
        {correction !== undefined && Math.abs(correction) >= 0.00005 ? (
          <span className="aside">{said.temperatureEffect(microns(correction, { sign: true }))}</span>
        ) : null}{' '}
        <button
          type="button"
          className="quiet"
          aria-expanded={typicalShown}
          onClick={() => setTypicalShown(!typicalShown)}
        >
          {said.typicalTitle}
        </button>
      </p>
      {typicalShown ? <TypicalFigures job={job} setUp={setUp} gauge={gauge} standard={standard} /> : null}
    </>
  )
}

function entryOf<T extends { readonly id: string }>(list: readonly T[], id: string): T {
  const entry = list.find((item) => item.id === id)
  if (!entry) throw new Error(`SetUpSentence: nothing with the id ${id}`)
  return entry
}

function gaugeFields(gauge: Gauge, standard: Standard, setUp: SetUp) {
  const said = words.setUp
  const kinds = setGaugeKinds.includes(gauge.kind) ? setGaugeKinds : [...setGaugeKinds, gauge.kind]
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
        label={said.labels.step}
        value={gauge.stepUm ?? presetOf(gauge.kind).stepUm}
        keep={(stepUm) => perform(words.changes.gauge, (job) => setGauge(job, gauge.id, { stepUm }))}
      />
    ),
    size: (
      <NeededNumberField
        label={said.labels.size}
        value={setUp.settingSizeMm}
        size
        keep={(settingSizeMm) =>
          perform(words.changes.setUp, (job) => setSetUp(job, setUp.id, { settingSizeMm }))
        }
      />
    ),
    standard: (
      <ChoiceField
        label={said.labels.standard}
        value={standard.kind}
        options={standardKinds.map((kind) => ({ value: kind, text: said.standards[kind] }))}
        onChoose={(value) => {
          const kind = standardKinds.find((known) => known === value)
          if (kind) perform(words.changes.standard, (job) => setStandard(job, standard.id, { kind }))
        }}
      />
    ),
    entry: (
      <ChoiceField
        label={said.labels.entry}
        value={setUp.entry}
        options={(['size', 'deviation'] as const).map((entry) => ({
          value: entry,
          text: said.entries[entry],
        }))}
        onChoose={(value) => {
          const entry = value === 'deviation' ? 'deviation' : 'size'
          perform(words.changes.entry, (job) => changeEntry(job, setUp.id, entry, newId))
        }}
      />
    ),
  }
}

function conditionFields(setUp: SetUp) {
  const said = words.setUp
  const keep =
    (field: 'zeroOpenUm' | 'zeroCloseUm' | 'boreTemperatureC' | 'referenceTemperatureC') =>
    (value: number | undefined) =>
      perform(words.changes.setUp, (job) => setSetUp(job, setUp.id, { [field]: value }))
  return {
    direction: (
      <ChoiceField
        label={said.labels.direction}
        value={setUp.largerIs ?? ''}
        options={[
          { value: '', text: words.app.notRecorded },
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
    ),
    zeroOpen: <NumberField label={said.labels.zeroOpen} value={setUp.zeroOpenUm} keep={keep('zeroOpenUm')} />,
    zeroClose: (
      <NumberField label={said.labels.zeroClose} value={setUp.zeroCloseUm} keep={keep('zeroCloseUm')} />
    ),
    boreTemperature: (
      <NumberField
        label={said.labels.boreTemperature}
        value={setUp.boreTemperatureC}
        keep={keep('boreTemperatureC')}
      />
    ),
    referenceTemperature: (
      <NumberField
        label={said.labels.referenceTemperature}
        value={setUp.referenceTemperatureC}
        keep={keep('referenceTemperatureC')}
      />
    ),
  }
}
