import { roles, wallKinds } from '../../core/measured'
import { setBore, setSurvey } from '../../job/commands'
import { chooseSurvey } from '../../session/session'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { writtenLength } from './marks'
import { NumberField } from './NumberField'
import { attempt, perform } from './perform'
import { Sentence } from './Sentence'
import { TypedField } from './TypedField'
import type { OnBench } from './use-job'
import { useRange } from './use-range'

/** Length, wall and ring travel of the bore and when it was measured, as a sentence whose parts are fields. */
export function BoreSentence({ bore, survey }: OnBench) {
  const said = words.bore
  const keep = (patch: Parameters<typeof setBore>[2], label: string = words.changes.bore) =>
    perform(label, (job) => setBore(job, bore.id, patch))
  const { wall, ringTravelMm: travel } = bore
  const plated = wall?.kind === 'plated-aluminium'
  const travelEnds = useRange<undefined>({
    name: `ring travel of bore ${bore.id}`,
    low: travel?.from,
    high: travel?.to,
    keep: (from, to) => {
      const isOpen = from === undefined || to === undefined
      const whole = { from: from ?? 0, to: to ?? bore.lengthMm ?? 1000 }
      // Cleared at one end it is not known at all; the first end typed brings a whole range with it.
      const ringTravelMm = isOpen && (travel || from === to) ? undefined : whole
      return attempt(words.changes.bore, (job) => setBore(job, bore.id, { ringTravelMm }))
    },
    written: writtenLength,
  })
  return (
    <p className="sentence">
      <Sentence
        template={said.who}
        fields={{
          name: (
            <TypedField
              label={said.labels.name}
              text={bore.name}
              placeholder={said.labels.name}
              numeric={false}
              commit={(typed) => keep({ name: typed.trim() })}
            />
          ),
          role: (
            <ChoiceField
              label={said.labels.role}
              value={bore.role}
              options={roles.map((role) => ({ value: role, text: said.roles[role] }))}
              onChoose={(value) => {
                const role = roles.find((known) => known === value)
                if (role) keep({ role })
              }}
            />
          ),
        }}
      />{' '}
      <Sentence
        template={plated ? said.plated : said.sentence}
        fields={{
          length: (
            <NumberField
              label={said.labels.length}
              length
              value={bore.lengthMm}
              none={said.lengthNotKnown}
              keep={(lengthMm) => keep({ lengthMm })}
            />
          ),
          wall: (
            <ChoiceField
              label={said.labels.wall}
              value={wall?.kind ?? ''}
              options={[
                { value: '', text: words.app.notRecorded },
                ...wallKinds.map((kind) => ({ value: kind, text: said.walls[kind] })),
              ]}
              onChoose={(value) => {
                const kind = wallKinds.find((known) => known === value)
                keep({ wall: kind ? { kind } : undefined }, words.changes.wall)
              }}
            />
          ),
          plating: (
            <NumberField
              label={said.labels.plating}
              micron
              value={wall?.platingUm}
              keep={(platingUm) => {
                if (!wall) return undefined
                const { platingUm: _, ...rest } = wall
                return keep(
                  { wall: platingUm === undefined ? rest : { ...rest, platingUm } },
                  words.changes.wall,
                )
              }}
            />
          ),
        }}
      />{' '}
      <Sentence
        template={said.travel}
        fields={{
          travelFrom: <NumberField label={said.labels.travelFrom} length {...travelEnds.low} />,
          travelTo: <NumberField label={said.labels.travelTo} length {...travelEnds.high} />,
        }}
      />{' '}
      <Measured bore={bore} survey={survey} />
    </p>
  )
}

/** The occasion: its date and the hours the engine had run. */
function Measured({ bore, survey }: Pick<OnBench, 'bore' | 'survey'>) {
  const said = words.setUp
  const keep = (patch: Parameters<typeof setSurvey>[3]) =>
    perform(words.changes.survey, (job) => setSurvey(job, bore.id, survey.id, patch))
  return (
    <Sentence
      template={bore.surveys.length > 1 ? said.surveyOfSeveral : said.survey}
      fields={{
        which: <WhichSurvey bore={bore} survey={survey} />,
        date: (
          <TypedField
            label={said.surveyLabels.date}
            text={survey.date ?? ''}
            placeholder={words.app.notRecorded}
            numeric={false}
            commit={(typed) => keep({ date: typed.trim() === '' ? undefined : typed.trim() })}
          />
        ),
        hours: (
          <NumberField
            label={said.surveyLabels.hours}
            value={survey.hoursRun}
            keep={(hoursRun) => keep({ hoursRun })}
          />
        ),
      }}
    />
  )
}

/** The survey that is shown; the verdict of the bore speaks of the latest. */
function WhichSurvey({ bore: { surveys }, survey }: Pick<OnBench, 'bore' | 'survey'>) {
  const said = words.setUp
  return (
    <ChoiceField
      label={said.surveyLabels.which}
      value={survey.id}
      options={surveys.map(({ id }, index) => ({
        value: id,
        text: said.surveyNumber(index + 1, surveys.length),
      }))}
      onChoose={chooseSurvey}
    />
  )
}
