import { type BlockDecision, blockDecisionOf } from '../core/decision/block-decision'
import { type Decision, decisionOf } from '../core/decision/decision'
import type { BoreFinding, Findings, Place, StationFinding } from '../core/findings'
import type { Bore, Measured, Survey } from '../core/measured'
import { type Growth, growthOf } from '../core/outlook/growth'
import type { Wear } from '../core/outlook/wear'

/** What the owner's sentences are made from. */
export interface OwnerEvidence {
  readonly measured: Measured
  readonly findings: Findings
  readonly finding: BoreFinding
  readonly bore: Bore
  readonly survey: Survey
  readonly growth: Growth
  readonly decision: Decision
  /** For an engine of several bores. */
  readonly block: BlockDecision | undefined
  /** The wear that the sentences speak of. */
  readonly wear: Wear | undefined
}

/** Throws for a finding of another job: our own mistake. */
export function ownerEvidence(measured: Measured, findings: Findings, finding: BoreFinding): OwnerEvidence {
  const bore = measured.bores.find(({ id }) => id === finding.boreId)
  const survey = bore?.surveys.find(({ id }) => id === finding.surveyId)
  if (!bore || !survey) throw new Error(`ownerEvidence: no bore ${finding.boreId} with its survey in the job`)
  const growth = growthOf(measured, findings, finding)
  return {
    measured,
    findings,
    finding,
    bore,
    survey,
    growth,
    decision: decisionOf(measured, findings, finding),
    block: finding.role === 'of-this-engine' ? blockDecisionOf(measured, findings) : undefined,
    wear: wearTold(growth),
  }
}

/** Since new; where that is known no closer than the new sizes, from a new bore where there is one to look at. */
function wearTold({ wear: [first, ...others] }: Growth): Wear | undefined {
  if (first?.since !== 'new-band') return first
  return others.find(({ since }) => since === 'bore') ?? first
}

/** The station at a place. */
export function stationAt({ stations }: BoreFinding, place: Place | undefined): StationFinding | undefined {
  return stations.find(
    ({ depthMm, axisDegrees }) => depthMm === place?.depthMm && axisDegrees === place.axisDegrees,
  )
}
