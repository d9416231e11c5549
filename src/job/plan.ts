import { conditionsOf } from '../core/conditions-of'
import { roughSizeMm } from '../core/diameter/entry'
import type { Bore, Survey } from '../core/measured'
import { type MeasuringPlan, measuringPlan, type PlanRequest } from '../core/plan/measuring-plan'
import type { PlanQuestion } from '../core/plan/plan-axes'
import { type RepeatsAnswer, repeatsFor } from '../core/plan/repeats-for'
import { repeatabilityOf } from '../core/uncertainty/station-contributions'
import { setAxes, setLevels } from './commands'
import type { Job } from './schema'
import { findingOf, surveyOf } from './selectors'

/** The survey that a plan is for. */
export interface SurveyPlanned {
  readonly boreId: string
  readonly surveyId: string
}

/**
 * The levels and axes proposed for a survey and a question. What is read already stays in it, with the axes that
 * the manual names; for wear also the levels and axes of the last survey before that has readings.
 */
export function planOf(job: Job, planned: SurveyPlanned, question: PlanQuestion): MeasuringPlan {
  const { bore, survey } = placeOf(job, planned)
  const { gauge, setUp } = conditionsOf(job, bore, survey)
  const pair = findingOf(job, bore.id, survey.id)?.pair
  const before = question === 'wear' ? surveyBefore(bore, survey) : undefined
  const named = job.spec.ovalityAxesDegrees
  const request: PlanRequest = {
    bore,
    gauge,
    question,
    diameterMm: pair?.maxMm ?? pair?.minMm ?? roughSizeMm(setUp),
    standing: [
      ...levelsRead(survey).map((depthMm) => ({ depthMm, code: 'read' }) as const),
      ...levelsRead(before).map((depthMm) => ({ depthMm, code: 'read-before' }) as const),
    ],
    givenAxesDegrees: [
      ...new Set([...(named ? [named.x, named.y] : []), ...axesRead(survey), ...axesRead(before)]),
    ],
  }
  return measuringPlan(request)
}

/**
 * The job with a plan's levels and axes for a survey's. Levels and axes that hold readings stay, others that are
 * not in the plan go; the same job where nothing changes. A plan that is not known changes nothing.
 */
export function takePlan(job: Job, planned: SurveyPlanned, plan: MeasuringPlan): Job {
  if (!plan.known) return job
  const { bore, survey } = placeOf(job, planned)
  const levelsMm = [...plan.levels.map(({ depthMm }) => depthMm), ...levelsRead(survey)]
  const axesDegrees = [...plan.axesDegrees, ...axesRead(survey)]
  const withLevels = setLevels(job, bore.id, survey.id, levelsMm)
  return setAxes(withLevels, bore.id, survey.id, axesDegrees)
}

/** How many readings at each station of a plan reach a wanted U (95 %, mm); see `repeatsFor`. */
export function repeatsOf(
  job: Job,
  planned: SurveyPlanned,
  plan: Extract<MeasuringPlan, { known: true }>,
  wantedMm: number,
): RepeatsAnswer {
  const { bore, survey } = placeOf(job, planned)
  const conditions = conditionsOf(job, bore, survey)
  const finding = findingOf(job, bore.id, survey.id)
  const counted = finding?.stations.filter((station) => station.counted) ?? []
  return repeatsFor({
    question: plan.question,
    conditions,
    diameterMm: finding?.pair?.maxMm ?? finding?.pair?.minMm ?? roughSizeMm(conditions.setUp),
    repeatability: repeatabilityOf(
      conditions.gauge,
      survey.id,
      counted.map(({ sizesMm }) => sizesMm.map((mm) => mm * 1000)),
    ),
    axes: plan.axes.axesDegrees.length,
    wantedMm,
  })
}

function placeOf(job: Job, { boreId, surveyId }: SurveyPlanned): { bore: Bore; survey: Survey } {
  const bore = job.bores.find(({ id }) => id === boreId)
  const survey = bore && surveyOf(bore, surveyId)
  if (!bore || !survey) throw new Error(`No bore with the id "${boreId}"`)
  return { bore, survey }
}

function surveyBefore(bore: Bore, survey: Survey): Survey | undefined {
  const before = bore.surveys.slice(0, bore.surveys.indexOf(survey))
  return before.findLast(({ readings }) => readings.length > 0)
}

function levelsRead(survey: Survey | undefined): number[] {
  return [...new Set(survey?.readings.map(({ depthMm }) => depthMm))]
}

function axesRead(survey: Survey | undefined): number[] {
  return [...new Set(survey?.readings.map(({ axisDegrees }) => axisDegrees))]
}
