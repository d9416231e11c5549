import { named } from '../conditions-of'
import type { BoreFinding, Findings } from '../findings'
import type { Bore, Measured, SetUp, Survey } from '../measured'
import { type Growth, growthOf } from '../outlook/growth'
import { fitsOf } from '../piston/fits'
import { type OversizeChoice, oversizeChoice } from '../piston/oversize-choice'
import { type Pairing, pairingOf } from '../piston/pairing'
import { type RingGaps, ringGapsOf } from '../ring/ring-gaps'
import { type BoringOf, boringOf } from './oversize-fact'
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
  readonly boring: BoringOf
  readonly ringGaps: RingGaps
}

/** Everything that a decision about a bore of this engine by its latest survey rests on. Throws for a bore that the job has not. */
export function evidenceOf(measured: Measured, findings: Findings, finding: BoreFinding): Evidence {
  const bore = named(measured.bores, finding.boreId, 'bore')
  const survey = named(bore.surveys, finding.surveyId, 'survey')
  const { pairing, oversize } = engineOf(measured, findings)
  const pairedId = pairing.known
    ? pairing.pairs.find(({ boreId }) => boreId === bore.id)?.pistonId
    : undefined
  return {
    measured,
    findings,
    finding,
    bore,
    survey,
    setUp: named(measured.setUps, survey.setUpId, 'set-up'),
    growth: growthOf(measured, findings, finding),
    pistons: pistonChoice(fitsOf(measured, finding), pairedId),
    boring: boringOf(bore, finding, oversize),
    ringGaps: ringGapsOf(measured, finding),
  }
}

/** What is chosen for all bores together. */
interface Engine {
  readonly pairing: Pairing
  readonly oversize: OversizeChoice
}

const engines = new WeakMap<Findings, Engine>()

/** Worked out once for all bores of the same findings. */
function engineOf(measured: Measured, findings: Findings): Engine {
  const known = engines.get(findings)
  if (known) return known
  const engine = { pairing: pairingOf(measured, findings), oversize: oversizeChoice(measured, findings) }
  engines.set(findings, engine)
  return engine
}
