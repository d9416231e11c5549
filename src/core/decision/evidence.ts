import { named } from '../conditions-of'
import type { BoreFinding, Findings } from '../findings'
import type { Bore, Measured, SetUp, Survey } from '../measured'
import { type Growth, growthOf } from '../outlook/growth'
import { fitsOf } from '../piston/fits'
import { type PistonChoice, pistonChoice } from './piston-choice'

/** What the facts of a bore are gathered from. */
export interface Evidence {
  readonly measured: Measured
  readonly findings: Findings
  readonly finding: BoreFinding
  readonly bore: Bore
  readonly survey: Survey
  readonly setUp: SetUp
  readonly growth: Growth
  readonly pistons: PistonChoice
}

/** Everything that a decision about a bore of this engine by its latest survey rests on. Throws for a bore that the job has not. */
export function evidenceOf(measured: Measured, findings: Findings, finding: BoreFinding): Evidence {
  const bore = named(measured.bores, finding.boreId, 'bore')
  const survey = named(bore.surveys, finding.surveyId, 'survey')
  return {
    measured,
    findings,
    finding,
    bore,
    survey,
    setUp: named(measured.setUps, survey.setUpId, 'set-up'),
    growth: growthOf(measured, findings, finding),
    pistons: pistonChoice(fitsOf(measured, finding)),
  }
}
