import type { Place } from '../findings'
import type { DecisionFacts, FactName } from './decision-facts'
import type { Outcome } from './decision-rules'
import type { Evidence } from './evidence'
import { isAt, isReadOnce } from './grounds-fact'

/** What a decision rests on that is no proof. */
export type DecisionHint =
  | { readonly code: 'read-once'; readonly places: readonly Place[]; readonly all: boolean }
  | {
      readonly code:
        | 'provisional'
        | 'two-axes'
        | 'no-size-limit'
        | 'new-sizes-only'
        | 'one-survey'
        | 'rate-changed'
        | 'slope-uncertain'
        | 'no-outlook'
        | 'clearance-not-judged'
        | 'piston-by-grade'
        | 'piston-not-firm'
        | 'other-piston-too-close'
        | 'no-piston-listed'
        | 'wall-by-kind'
        | 'wall-not-known'
        | 'honing-allowance'
        | 'clean-up-by-trade'
        | 'oversize-too-close'
        | 'one-side-took-it'
    }

type PlainCode = Exclude<DecisionHint['code'], 'read-once'>

const ofTheWall: readonly Outcome[] = ['hone', 'bore-oversize', 're-plate', 'replace-or-sleeve']

/** What the decision rests on that is a hint or was read only once, that which weighs most first. */
export function hintsOf(
  evidence: Evidence,
  facts: DecisionFacts,
  outcome: Outcome,
  behind: readonly FactName[],
): DecisionHint[] {
  if (facts.readings !== 'sound') return []
  const codes: PlainCode[] = [
    ...ofRecord(evidence, facts),
    ...(outcome === 'run-on' ? ofOutlook(evidence, facts) : []),
    ...ofPistons(evidence, facts, outcome),
    ...(ofTheWall.includes(outcome) ? ofWall(evidence, facts, outcome) : []),
    ...(behind.includes('plating') && facts.plating === 'may-be-through'
      ? (['one-side-took-it'] as const)
      : []),
  ]
  return [...readOnce(evidence, facts, behind), ...codes.map((code) => ({ code }))]
}

/** The stations that the deciding figures come from, as far as each was read once. */
function readOnce(evidence: Evidence, facts: DecisionFacts, behind: readonly FactName[]): DecisionHint[] {
  const { finding, growth, pistons } = evidence
  const isRunOn = behind.length === 0
  const asks = (name: FactName) => isRunOn || behind.includes(name)
  const shape = (name: 'ovality' | 'taper') => {
    const found = finding[name][0]
    return asks(name) && facts[name] !== 'no-limit' && found?.known ? [found.larger, found.smaller] : []
  }
  const places = [
    // What may be cut, or how long it may run, hangs on the size whichever rule decides.
    ...(finding.verdict.known ? [finding.verdict.deciding] : []),
    ...shape('ovality'),
    ...shape('taper'),
    ...(asks('plating') && growth.wear[0] && facts.plating !== 'not-known' ? [growth.wear[0].largest] : []),
    ...(asks('clearance') ? [pistons.atHand?.least?.place, pistons.atHand?.most?.place] : []),
    ...(isRunOn && growth.outlook?.known ? [growth.outlook.place] : []),
  ].filter((place) => place !== undefined)
  const once = places
    .filter((place, index) => places.findIndex((other) => isAt(other, place)) === index)
    .filter((place) => isReadOnce(finding.stations, place))
    .map(({ depthMm, axisDegrees }) => ({ depthMm, axisDegrees }))
  if (once.length === 0) return []
  const all = finding.stations.every((s) => !s.counted || s.repeats === 1)
  return [{ code: 'read-once', places: once, all }]
}

function ofRecord({ finding }: Evidence, facts: DecisionFacts): PlainCode[] {
  const axes = new Set(finding.stations.map(({ axisDegrees }) => axisDegrees)).size
  return [
    ...(finding.provisional.length > 0 ? (['provisional'] as const) : []),
    ...(facts.size === 'no-limit' ? (['no-size-limit'] as const) : []),
    ...(finding.pair && finding.pair.kind !== 'wear' ? (['new-sizes-only'] as const) : []),
    ...(axes === 2 && facts.ovality === 'inside' ? (['two-axes'] as const) : []),
  ]
}

function ofOutlook({ growth: { outlook } }: Evidence, facts: DecisionFacts): PlainCode[] {
  if (!outlook?.known || facts.outlook === 'not-known') return ['no-outlook']
  return [
    ...(outlook.from === 'surveys' ? [] : (['one-survey'] as const)),
    ...(outlook.rateChanged ? (['rate-changed'] as const) : []),
    ...(outlook.slopeUncertain ? (['slope-uncertain'] as const) : []),
  ]
}

function ofPistons({ pistons }: Evidence, facts: DecisionFacts, outcome: Outcome): PlainCode[] {
  if (outcome !== 'run-on' && outcome !== 'next-piston') return []
  if (outcome === 'run-on' && facts.clearance === 'not-judged') return ['clearance-not-judged']
  const fit = outcome === 'next-piston' ? pistons.next : pistons.atHand
  return [
    ...(outcome === 'next-piston' && pistons.next?.verdict === 'too-close'
      ? (['other-piston-too-close'] as const)
      : []),
    ...(outcome === 'next-piston' &&
    (facts.otherPiston === 'none-listed' || facts.otherPiston === 'none-fits')
      ? (['no-piston-listed'] as const)
      : []),
    ...(fit?.sizeFrom === 'range' ? (['piston-by-grade'] as const) : []),
    ...(fit && fit.gaps.length > 0 ? (['piston-not-firm'] as const) : []),
  ]
}

function ofWall({ bore, boring }: Evidence, facts: DecisionFacts, outcome: Outcome): PlainCode[] {
  const isByManual = bore.wall?.mayBeBored !== undefined || bore.wall?.mayBeHoned !== undefined
  const bored = outcome === 'bore-oversize'
  return [
    ...(facts.wall === 'not-known' ? (['wall-not-known'] as const) : []),
    ...(facts.wall === 'other' && !isByManual ? (['wall-by-kind'] as const) : []),
    ...(outcome === 'hone' || (outcome === 'replace-or-sleeve' && facts.honing === 'no-room')
      ? (['honing-allowance'] as const)
      : []),
    ...(bored && boring.cleanUpIsHint ? (['clean-up-by-trade'] as const) : []),
    ...(bored && boring.tooClose ? (['oversize-too-close'] as const) : []),
  ]
}
