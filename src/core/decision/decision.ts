import type { BoreFinding, Findings, Place } from '../findings'
import { place } from '../form/range-finding'
import type { Measured } from '../measured'
import { cautionsOf, type DecisionCaution } from './decision-cautions'
import type { DecisionFacts, FactName } from './decision-facts'
import { type DecisionHint, hintsOf } from './decision-hints'
import { factNames, factsBehind, type Outcome, ruleFor } from './decision-rules'
import { type Evidence, evidenceOf } from './evidence'
import { factsOf, roomToHoneMm } from './facts-of'
import { type MeasureAgain, measureAgainOf } from './measure-again'
import { type Change, changesOf } from './what-would-change'

/** A fact that speaks for the outcome, with where its figures stand among the findings. */
export interface DecisionReason {
  readonly fact: FactName
  /** The word of the fact. */
  readonly is: DecisionFacts[FactName]
  /** It is a condition of the rule; else it stands beside it. */
  readonly decides: boolean
  /** Row of the findings that holds its figures. */
  readonly row?: string
  readonly place?: Place
}

/** What to do with a bore, and why. */
export interface KnownDecision {
  readonly known: true
  readonly outcome: Outcome
  /** The rule of the table that decided. */
  readonly rule: string
  readonly facts: DecisionFacts
  /** Those that weigh most first. */
  readonly reasons: readonly DecisionReason[]
  readonly changes: readonly Change[]
  readonly hints: readonly DecisionHint[]
  readonly cautions: readonly DecisionCaution[]
  /** Hours run by which to measure again, where that follows. */
  readonly checkAtHours?: number
  /** The day of it, as in 2026-03-09. */
  readonly checkOn?: string
  /** What to measure again, and how it must be better. */
  readonly measure?: MeasureAgain
  readonly nextPistonId?: string
  readonly oversizeMm?: number
  /** How much may be honed off, mm on the diameter. */
  readonly honeAtMostMm?: number
}

/** Why there is no decision. */
export type UndecidedReason =
  | 'for-comparison'
  | 'earlier-survey'
  | 'no-readings'
  | 'some-unread'
  | 'land-alone'
  | 'no-limits'

export type Decision = KnownDecision | { readonly known: false; readonly why: UndecidedReason }

/**
 * What to do with a bore of this engine by its latest survey: the first rule of `decisionRules` that its facts meet,
 * with the reasons, what would change it and what it rests on. Not a part of `inspect`: worked out where it is shown.
 * It never says that a bore is safe: the manual and a qualified machinist have the last word. Own rules, after common
 * practice (no published source); the verdicts behind them as in `conformity` and `boreVerdict`.
 */
export function decisionOf(measured: Measured, findings: Findings, finding: BoreFinding): Decision {
  return decisionFrom(evidenceOf(measured, findings, finding))
}

/** The decision from evidence that was gathered before; its facts may be others than it proves, to see what then. */
export function decisionFrom(evidence: Evidence, facts: DecisionFacts = factsOf(evidence)): Decision {
  const { finding, findings } = evidence
  if (finding.role !== 'of-this-engine') return { known: false, why: 'for-comparison' }
  if (!findings.bores.includes(finding)) return { known: false, why: 'earlier-survey' }
  const rule = ruleFor(facts)
  if (rule.outcome === 'undecided') {
    return { known: false, why: undecidedReason(facts) }
  }
  const { outcome } = rule
  const behind = factsBehind(facts, rule)
  return {
    known: true,
    outcome,
    rule: rule.id,
    facts,
    reasons: reasonsOf(evidence, facts, behind),
    changes: changesOf(facts, outcome),
    hints: hintsOf(evidence, facts, outcome, behind),
    cautions: cautionsOf(evidence, facts, outcome),
    ...detailsOf(evidence, facts, outcome, behind),
  }
}

function undecidedReason({ readings, stations }: DecisionFacts): UndecidedReason {
  if (readings === 'none') return 'no-readings'
  return stations === 'all-read' ? 'no-limits' : stations
}

/** Facts that say something by a word of theirs, where no rule asked for them. */
const telling: { readonly [Name in FactName]?: readonly DecisionFacts[Name][] } = {
  surface: ['ended', 'marked', 'covered', 'look-closer', 'cross-hatch'],
  size: ['inside', 'above', 'below', 'other-grade', 'under-new', 'too-close', 'mean-only'],
  ovality: ['inside', 'above', 'too-close', 'open'],
  taper: ['inside', 'above', 'too-close', 'open'],
  plating: ['may-be-through'],
  clearance: ['inside', 'too-loose', 'too-tight', 'too-close'],
  otherPiston: ['fits'],
  outlook: ['ahead', 'now', 'shrunk'],
  ringGap: ['above', 'below', 'too-close', 'inside'],
}

/** Words that are no reason, though a rule may ask for them. */
const silent: readonly string[] = [
  'no-limit',
  'not-known',
  'not-judged',
  'nothing-against',
  'left',
  'repeated',
]

function reasonsOf(evidence: Evidence, facts: DecisionFacts, behind: readonly FactName[]): DecisionReason[] {
  const words = (name: FactName): readonly string[] => telling[name] ?? []
  const deciding = factNames.filter((name) => behind.includes(name) && !silent.includes(facts[name]))
  const beside = factNames.filter((name) => !behind.includes(name) && words(name).includes(facts[name]))
  return [...deciding, ...beside].map((fact) => ({
    fact,
    is: facts[fact],
    decides: behind.includes(fact),
    ...whereOf(evidence, fact),
  }))
}

/** The row and the place of a fact's figures. */
function whereOf(evidence: Evidence, fact: FactName): Pick<DecisionReason, 'row' | 'place'> {
  const { finding, growth, pistons } = evidence
  const of = (row: string, at: Place | undefined) => ({ row, ...(at ? { place: place(at) } : {}) })
  switch (fact) {
    case 'size':
    case 'grounds':
      return of('largest', finding.verdict.known ? finding.verdict.deciding : finding.largest)
    case 'ovality':
    case 'taper': {
      const shape = finding[fact][0]
      return of(fact, shape?.known ? shape.larger : undefined)
    }
    case 'plating':
      return of('wear:0', growth.wear[0]?.largest)
    case 'outlook':
      return of('outlook', growth.outlook?.known ? growth.outlook.place : undefined)
    case 'clearance':
    case 'otherPiston': {
      const fit = fact === 'clearance' ? pistons.atHand : pistons.others[0]
      return fit ? of(`clearance:${fit.pistonId}`, fit.most?.place) : {}
    }
    case 'ringGap':
      return { row: 'ring-gap' }
    case 'surface':
    case 'readings':
    case 'stations':
    case 'wall':
    case 'honing':
    case 'oversize':
      return {}
  }
}

function detailsOf(
  evidence: Evidence,
  facts: DecisionFacts,
  outcome: Outcome,
  behind: readonly FactName[],
): Partial<
  Pick<KnownDecision, 'checkAtHours' | 'checkOn' | 'measure' | 'nextPistonId' | 'oversizeMm' | 'honeAtMostMm'>
> {
  const { growth, pistons, boring } = evidence
  switch (outcome) {
    case 'run-on': {
      const { hours, date } = growth.nextCheck ?? {}
      return {
        ...(hours === undefined ? {} : { checkAtHours: hours }),
        ...(date === undefined ? {} : { checkOn: date }),
      }
    }
    case 'next-piston':
      return pistons.next && facts.otherPiston !== 'none-fits' ? { nextPistonId: pistons.next.pistonId } : {}
    case 'hone': {
      const honeAtMostMm = roomToHoneMm(evidence)
      return honeAtMostMm === undefined ? {} : { honeAtMostMm }
    }
    case 'measure-again-better':
    case 'clean-and-measure-again':
      return { measure: measureAgainOf(evidence, facts, behind) }
    case 'bore-oversize':
      return boring.oversizeMm === undefined ? {} : { oversizeMm: boring.oversizeMm }
    case 're-plate':
    case 'replace-or-sleeve':
      return {}
  }
}
