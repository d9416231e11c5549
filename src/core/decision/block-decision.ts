import type { Findings } from '../findings'
import type { Measured } from '../measured'
import { type Decision, decisionOf } from './decision'
import type { Outcome } from './decision-rules'

/** What to do with an engine of several bores as a whole. */
export interface BlockDecision {
  readonly outcome: Outcome
  /** The bores that ask for it. */
  readonly boreIds: readonly string[]
  /** It is done to every bore, since all go to one size. */
  readonly alike: boolean
  readonly oversizeMm?: number
  /** Running on: the soonest check of any bore. */
  readonly checkAtHours?: number
  /** What the other bores would ask for by themselves. */
  readonly others: readonly { readonly outcome: Outcome; readonly boreIds: readonly string[] }[]
  /** Bores that nothing can be said of yet. */
  readonly undecided: readonly string[]
}

/** The most far-reaching first: it holds the engine up, whatever the other bores would allow. */
const byReach: readonly Outcome[] = [
  'replace-or-sleeve',
  're-plate',
  'bore-oversize',
  'clean-and-measure-again',
  'measure-again-better',
  'hone',
  'next-piston',
  'run-on',
]

interface OfBore {
  readonly boreId: string
  readonly decision: Decision
}

/**
 * One decision for an engine of several bores: the most far-reaching of its bores' own. A bore that goes to an oversize
 * takes all others with it, unless the manual lets each have its own. None for an engine of one bore, or while no bore
 * is decided. Own rule, after common practice: all cylinders alike (no published source).
 */
export function blockDecisionOf(measured: Measured, findings: Findings): BlockDecision | undefined {
  const own = findings.bores.filter(({ role }) => role === 'of-this-engine')
  if (own.length < 2) return undefined
  return blockDecisionFrom(
    own.map((finding) => ({ boreId: finding.boreId, decision: decisionOf(measured, findings, finding) })),
    measured.spec.oversizesAlike !== false,
  )
}

/** The same from decisions that were made before. */
export function blockDecisionFrom(
  bores: readonly OfBore[],
  oversizesAlike: boolean,
): BlockDecision | undefined {
  const idsFor = (outcome: Outcome) =>
    bores.filter(({ decision }) => decision.known && decision.outcome === outcome).map(({ boreId }) => boreId)
  const asked = byReach
    .map((outcome) => ({ outcome, boreIds: idsFor(outcome) }))
    .filter(({ boreIds }) => boreIds.length > 0)
  const [first, ...others] = asked
  if (!first) return undefined
  const known = bores.flatMap(({ decision }) => (decision.known ? [decision] : []))
  const oversizes = known.flatMap(({ oversizeMm }) => oversizeMm ?? [])
  const checks = known.flatMap(({ checkAtHours }) => checkAtHours ?? [])
  return {
    ...first,
    alike: first.outcome === 'bore-oversize' && oversizesAlike,
    ...(first.outcome === 'bore-oversize' && oversizes.length > 0
      ? { oversizeMm: Math.max(...oversizes) }
      : {}),
    ...(first.outcome === 'run-on' && checks.length > 0 ? { checkAtHours: Math.min(...checks) } : {}),
    others,
    undecided: bores.filter(({ decision }) => !decision.known).map(({ boreId }) => boreId),
  }
}
