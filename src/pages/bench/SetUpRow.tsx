import type { SetUp } from '../../core/measured'
import {
  chooseGauge,
  chooseSetUp,
  chooseStandard,
  removeSetUp,
  type SurveyOfBore,
  surveysUsing,
} from '../../job/instrument-list'
import { newId } from '../../job/new-id'
import type { Job } from '../../job/schema'
import { setSetUp } from '../../job/set-up-commands'
import { gaugeName, setUpName, standardName, thermometerName } from '../../words/instrument-names'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { ListedRow } from './ListedRow'
import { perform } from './perform'
import { RemoveListed } from './RemoveListed'
import { Sentence } from './Sentence'
import { TypedField } from './TypedField'
import type { OnBench } from './use-job'

/** One setting of the job: its instruments, the bores measured with it, and whether this one was. */
export function SetUpRow({ job, bore, survey, listed }: OnBench & { readonly listed: SetUp }) {
  const said = words.instruments
  const called = setUpName(listed, job)
  const users = surveysUsing(job, listed.id).map(surveyName)
  return (
    <ListedRow
      users={users}
      remove={<RemoveListed called={called} users={users} remove={(next) => removeSetUp(next, listed.id)} />}
    >
      <Sentence template={said.setUp} fields={fieldsOf(job, listed, called)} />{' '}
      {survey.setUpId === listed.id ? null : (
        <button
          type="button"
          className="quiet"
          aria-label={said.labelOf(said.useHere, called)}
          onClick={() =>
            perform(words.changes.setUp, (next) => chooseSetUp(next, bore.id, survey.id, listed.id))
          }
        >
          {said.useHere}
        </button>
      )}
    </ListedRow>
  )
}

/** A bore, with the occasion where it was measured more than once. */
function surveyName({ bore, survey }: SurveyOfBore): string {
  const said = words.instruments
  const occasion = survey.name?.trim() || survey.date
  return bore.surveys.length > 1 && occasion ? said.boreOnce(bore.name, occasion) : said.bore(bore.name)
}

function fieldsOf(job: Job, setUp: SetUp, called: string) {
  const said = words.instruments
  const change = (next: (job: Job) => Job) => perform(words.changes.setUp, next)
  const label = (which: keyof typeof said.labels) => said.labelOf(said.labels[which], called)
  const thermometer = (field: 'boreThermometer' | 'referenceThermometer') => (
    <ChoiceField
      label={label(field)}
      value={setUp[`${field}Id`] ?? ''}
      options={[
        { value: '', text: said.noThermometer },
        ...job.thermometers.map((each) => ({ value: each.id, text: thermometerName(each, job) })),
      ]}
      onChoose={(value) =>
        change((next) => setSetUp(next, setUp.id, { [`${field}Id`]: value === '' ? undefined : value }))
      }
    />
  )
  return {
    name: (
      <TypedField
        label={label('name')}
        text={setUp.name ?? ''}
        placeholder={called}
        numeric={false}
        commit={(typed) =>
          change((next) => setSetUp(next, setUp.id, { name: typed.trim() === '' ? undefined : typed.trim() }))
        }
      />
    ),
    gauge: (
      <ChoiceField
        label={label('gauge')}
        value={setUp.gaugeId}
        options={job.gauges.map((each) => ({ value: each.id, text: gaugeName(each, job) }))}
        onChoose={(value) => change((next) => chooseGauge(next, setUp.id, value, newId))}
      />
    ),
    standard: (
      <ChoiceField
        label={label('standard')}
        value={setUp.standardId}
        options={job.standards.map((each) => ({ value: each.id, text: standardName(each, job) }))}
        onChoose={(value) => change((next) => chooseStandard(next, setUp.id, value))}
      />
    ),
    boreThermometer: thermometer('boreThermometer'),
    referenceThermometer: thermometer('referenceThermometer'),
  }
}
