import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Survey } from '../../../src/core/measured'
import { planQuestions } from '../../../src/core/plan/plan-axes'
import { checkJob } from '../../../src/job/check-job'
import { setBore, setLevels } from '../../../src/job/commands'
import { planOf, repeatsOf, takePlan } from '../../../src/job/plan'
import type { Job } from '../../../src/job/schema'
import { scenario } from '../scenarios/scenario'

const twoStroke = scenario('A-two-stroke-single.json')
const liner = scenario('C-wet-liner-diesel.json')

function latest(job: Job) {
  const [bore] = job.bores
  const survey = bore?.surveys.at(-1)
  if (!bore || !survey) throw new Error('no survey')
  return { bore, survey, place: { boreId: bore.id, surveyId: survey.id } }
}

/** The latest survey of the first bore with other readings. */
function withReadings(job: Job, keep: (reading: Survey['readings'][number], index: number) => boolean): Job {
  const { bore, survey } = latest(job)
  const cleared = { ...survey, readings: survey.readings.filter(keep) }
  const surveys = bore.surveys.with(-1, cleared)
  return { ...job, bores: job.bores.with(0, { ...bore, surveys }) }
}

const unread = withReadings(twoStroke, () => false)

describe('taking a plan', () => {
  it('gives a survey without readings exactly the levels and axes of the plan', () => {
    const { place } = latest(unread)
    const plan = planOf(unread, place, 'out-of-round')
    const taken = takePlan(unread, place, plan)
    const { survey } = latest(taken)
    expect(plan.known ? plan.levels.map(({ depthMm }) => depthMm) : []).toEqual(survey.levelsMm)
    expect(survey.axesDegrees).toEqual([0, 60, 120])
    expect(takePlan(taken, place, planOf(taken, place, 'out-of-round'))).toBe(taken)
  })

  it('takes out a level that nobody could read, and changes no reading', () => {
    const { place, survey } = latest(twoStroke)
    const taken = latest(takePlan(twoStroke, place, planOf(twoStroke, place, 'size'))).survey
    expect(survey.levelsMm).toContain(48)
    expect(taken.levelsMm).not.toContain(48)
    expect(taken.readings).toEqual(survey.readings)
  })

  it('never takes out a level or an axis that holds readings, and leaves a job that is in order (seed 61)', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(twoStroke, liner),
        fc.constantFrom(...planQuestions),
        fc.infiniteStream(fc.boolean()),
        (job, question, kept) => {
          const before = withReadings(job, () => kept.next().value === true)
          const { place, survey } = latest(before)
          const after = takePlan(before, place, planOf(before, place, question))
          const taken = latest(after).survey
          expect(taken.readings).toEqual(survey.readings)
          for (const { depthMm, axisDegrees } of survey.readings) {
            expect(taken.levelsMm).toContain(depthMm)
            expect(taken.axesDegrees).toContain(axisDegrees)
          }
          expect(checkJob(after).ok).toBe(true)
        },
      ),
      { seed: 61, numRuns: 100 },
    )
  })

  it('changes nothing where there is no plan', () => {
    const { bore, place } = latest(unread)
    const endless = setBore(unread, bore.id, { lengthMm: undefined })
    const plan = planOf(endless, place, 'size')
    expect(plan).toEqual({ known: false, why: 'no-length' })
    expect(takePlan(endless, place, plan)).toBe(endless)
  })
})

describe('a plan for wear', () => {
  it('goes back to the levels and axes of the survey before', () => {
    const { bore, place } = latest(liner)
    const before = bore.surveys.at(-2)
    const cleared = setLevels(
      withReadings(liner, () => false),
      place.boreId,
      place.surveyId,
      [],
    )
    const plan = planOf(cleared, place, 'wear')
    const levels = plan.known ? plan.levels : []
    for (const depthMm of before?.levelsMm ?? []) {
      expect(levels.find((level) => level.depthMm === depthMm)?.reasons[0]).toEqual({ code: 'read-before' })
    }
  })
})

describe('the readings for a wanted doubt', () => {
  it('rest on what the survey itself has scattered', () => {
    const { place } = latest(twoStroke)
    const plan = planOf(twoStroke, place, 'along-depth')
    if (!plan.known) throw new Error(plan.why)
    const fromReadings = repeatsOf(twoStroke, place, plan, 1)
    const fromGauge = repeatsOf(unread, place, plan, 1)
    // Demo repeats scatter by less than the typical 1.5 µm.
    expect(fromReadings.onceMm).toBeLessThan(fromGauge.onceMm)
  })
})
