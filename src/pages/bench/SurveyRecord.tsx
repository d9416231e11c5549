import { entryOf } from '../../core/diameter/entry'
import { typicalTurnUm } from '../../core/gauge/presets'
import { clampings } from '../../core/measured'
import { setSurvey } from '../../job/commands'
import { setGauge, setSetUp } from '../../job/set-up-commands'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { FieldUnit } from './FieldUnit'
import { MachineSentence } from './MachineSentence'
import { dialMarks, sizeMarks } from './marks'
import { NumberField } from './NumberField'
import { perform } from './perform'
import { Sentence } from './Sentence'
import { WithUnit } from './set-up-fields'
import { TypedField } from './TypedField'
import type { OnBench } from './use-job'

/** What else belongs to the occasion and its setting: any of it may stay not recorded. */
export function SurveyRecord(bench: OnBench) {
  const said = words.setUp.more
  const { survey, setUp, gauge } = bench
  const isDirect = entryOf(setUp, gauge) === 'direct'
  return (
    <section className="panel" aria-label={said.title}>
      <p className="sentence">
        <MachineSentence {...bench.job} />{' '}
        <Sentence
          template={survey.clamping === 'torque-plate' ? said.surveyPlate : said.survey}
          fields={surveyFields(bench)}
        />{' '}
        <Sentence template={isDirect ? said.setUpDirect : said.setUp} fields={gaugeFields(bench)} />
      </p>
      <p className="aside">{said.caliperHelp}</p>
    </section>
  )
}

function surveyFields({ bore, survey, gauge }: OnBench) {
  const said = words.setUp.more
  const keep = (patch: Parameters<typeof setSurvey>[3]) =>
    perform(words.changes.survey, (job) => setSurvey(job, bore.id, survey.id, patch))
  const marks = sizeMarks(gauge.markedIn)
  return {
    caliper: (
      <WithUnit marks={marks}>
        <NumberField
          label={said.labels.caliper}
          value={survey.caliperMm}
          marks={marks}
          keep={(caliperMm) => keep({ caliperMm })}
        />
      </WithUnit>
    ),
    clamping: (
      <ChoiceField
        label={said.labels.clamping}
        value={survey.clamping ?? ''}
        options={[
          { value: '', text: words.app.notRecorded },
          ...clampings.map((clamping) => ({ value: clamping, text: said.clampings[clamping] })),
        ]}
        onChoose={(value) => keep({ clamping: clampings.find((known) => known === value) })}
      />
    ),
    torque: (
      <NumberField
        label={said.labels.torque}
        value={survey.plateTorqueNm}
        keep={(plateTorqueNm) => keep({ plateTorqueNm })}
      />
    ),
    measuredBy: (
      <TypedField
        label={said.labels.measuredBy}
        text={survey.measuredBy ?? ''}
        placeholder={words.app.notRecorded}
        numeric={false}
        commit={(typed) => keep({ measuredBy: typed.trim() === '' ? undefined : typed.trim() })}
      />
    ),
    rested: (
      <NumberField
        label={said.labels.rested}
        value={survey.restedHours}
        keep={(restedHours) => keep({ restedHours })}
      />
    ),
    contact: (
      <ChoiceField
        label={said.labels.contact}
        value={survey.contactChanged === undefined ? '' : survey.contactChanged ? 'changed' : 'kept'}
        options={[
          { value: '', text: words.app.notRecorded },
          ...(['kept', 'changed'] as const).map((value) => ({ value, text: said.contacts[value] })),
        ]}
        onChoose={(value) => keep({ contactChanged: value === '' ? undefined : value === 'changed' })}
      />
    ),
  }
}

function gaugeFields({ setUp, gauge, standard }: OnBench) {
  const said = words.setUp.more
  const marks = dialMarks(gauge.markedIn)
  const typicalUm = typicalTurnUm(gauge)
  const keepGauge = (patch: Parameters<typeof setGauge>[2]) =>
    perform(words.changes.gauge, (job) => setGauge(job, gauge.id, patch))
  const keepSetUp = (patch: Parameters<typeof setSetUp>[2]) =>
    perform(words.changes.setUp, (job) => setSetUp(job, setUp.id, patch))
  return {
    calibrated: (
      <TypedField
        label={said.labels.calibrated}
        text={gauge.calibratedOn ?? ''}
        placeholder={words.app.notRecorded}
        numeric={false}
        commit={(typed) => keepGauge({ calibratedOn: typed.trim() === '' ? undefined : typed.trim() })}
      />
    ),
    turn: (
      <WithUnit marks={marks}>
        <NumberField
          label={said.labels.turn}
          value={gauge.turnValueUm}
          marks={marks}
          none={
            typicalUm === undefined
              ? words.app.notRecorded
              : words.setUp.notRecorded(said.turnTaken(marks.written(typicalUm)))
          }
          keep={(turnValueUm) => keepGauge({ turnValueUm })}
        />
      </WithUnit>
    ),
    warmed: (
      <NumberField
        label={said.labels.warmed}
        value={setUp.gaugeWarmedK}
        none={words.setUp.notRecorded(said.warmedNone)}
        keep={(gaugeWarmedK) => keepSetUp({ gaugeWarmedK })}
      />
    ),
    reference: words.setUp.references[standard.kind],
    referenceClose: (
      <>
        <NumberField
          label={said.labels.referenceClose}
          value={setUp.referenceTemperatureCloseC}
          none={words.setUp.notRecorded(said.referenceCloseTaken)}
          keep={(referenceTemperatureCloseC) => keepSetUp({ referenceTemperatureCloseC })}
        />
        <FieldUnit text="°C" />
      </>
    ),
  }
}
