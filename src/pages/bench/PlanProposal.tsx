import './plan-proposal.css'
import { useEffect, useRef, useState } from 'react'
import { type PlanQuestion, planQuestions } from '../../core/plan/plan-axes'
import { describeJob } from '../../job/commands'
import { planOf, repeatsOf, takePlan } from '../../job/plan'
import { bandTexts, type KnownPlan, planAxesText, planNotes, planRows, repeatsTexts } from '../../words/plan'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { NumberField } from './NumberField'
import { perform } from './perform'
import { planRepeats } from './plan-repeats'
import { Sentence } from './Sentence'
import type { OnBench } from './use-job'

/** Which levels and axes to measure for a question, why, and how often for a wanted doubt. */
export function PlanProposal(bench: OnBench) {
  const [isOpen, setOpen] = useState(false)
  return (
    <details className="plan-proposal" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.plan.title}</summary>
      {isOpen ? <Proposal bench={bench} /> : null}
    </details>
  )
}

function Proposal({ bench }: { readonly bench: OnBench }) {
  const { job, bore, survey, gauge } = bench
  const [question, setQuestion] = useState<PlanQuestion>('size')
  const lead = useRef<HTMLParagraphElement>(null)
  // What opens below the end of its column is brought into view.
  useEffect(() => lead.current?.closest('details')?.scrollIntoView({ block: 'nearest' }), [])
  const said = words.plan
  const place = { boreId: bore.id, surveyId: survey.id }
  const plan = planOf(job, place, question)
  const choose = (value: string) => setQuestion(planQuestions.find((each) => each === value) ?? question)
  const options = planQuestions.map((value) => ({ value, text: said.questions[value] }))
  return (
    <>
      <p ref={lead} className="sentence">
        <Sentence
          template={said.lead}
          fields={{
            question: (
              <ChoiceField label={said.question} value={question} options={options} onChoose={choose} />
            ),
          }}
        />
      </p>
      {plan.known ? (
        <>
          <p>{planAxesText(plan)}</p>
          <PlanTable plan={plan} />
          {planNotes(plan).map((note) => (
            <p key={note}>{note}</p>
          ))}
          <TakePlan bench={bench} plan={plan} />
          <Repeats bench={bench} plan={plan} />
          <details className="plan-measurable">
            <summary>{said.measurable}</summary>
            <ul>
              {bandTexts(plan, gauge.kind).map((text) => (
                <li key={text}>{text}</li>
              ))}
            </ul>
          </details>
        </>
      ) : (
        <p>{said.unknown[plan.why]}</p>
      )}
    </>
  )
}

function PlanTable({ plan }: { readonly plan: KnownPlan }) {
  const { heads } = words.plan
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">{heads.depth}</th>
          <th scope="col">{heads.axes}</th>
          <th scope="col">{heads.why}</th>
        </tr>
      </thead>
      <tbody>
        {planRows(plan).map((row) => (
          <tr key={row.depthMm}>
            <th scope="row">{row.depth}</th>
            <td>{row.axes}</td>
            <td>{row.why}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

interface PlanProps {
  readonly bench: OnBench
  readonly plan: KnownPlan
}

function TakePlan({ bench: { job, bore, survey }, plan }: PlanProps) {
  const said = words.plan
  const place = { boreId: bore.id, surveyId: survey.id }
  if (takePlan(job, place, plan) === job) return <p className="aside">{said.taken}</p>
  return (
    <p>
      <button
        type="button"
        className="button"
        onClick={() => perform(said.change, (before) => takePlan(before, place, plan))}
      >
        {said.take}
      </button>{' '}
      {survey.readings.length > 0 ? <span className="aside">{said.takenKeeps}</span> : null}
    </p>
  )
}

/** How many readings at each station bring the doubt down to a wanted one. */
function Repeats({ bench: { job, bore, survey }, plan }: PlanProps) {
  const wantedUm = job.wantedDoubtUm
  const said = words.plan.repeats
  const keep = (value: number | undefined) => {
    if (value !== undefined && !(value > 0)) return said.notAbove
    return perform(words.changes.wantedDoubt, (before) => describeJob(before, { wantedDoubtUm: value }))
  }
  const place = { boreId: bore.id, surveyId: survey.id }
  const answer = wantedUm === undefined ? undefined : repeatsOf(job, place, plan, wantedUm / 1000)
  return (
    <>
      <p className="sentence">
        <Sentence
          template={said.sentence}
          fields={{
            quantity: said.quantities[plan.question],
            wanted: <NumberField label={said.label} micron value={wantedUm} none="" keep={keep} />,
          }}
        />
      </p>
      <div aria-live="polite">
        {answer ? [...repeatsTexts(answer), said.slope].map((text) => <p key={text}>{text}</p>) : null}
      </div>
      {answer?.reached ? (
        <button type="button" className="button" onClick={() => planRepeats(answer.repeats)}>
          {said.ask(answer.repeats)}
        </button>
      ) : null}
    </>
  )
}
