import type { DecisionFacts, FactName } from './decision-facts'

/** What to do with a bore. */
export const outcomes = [
  'run-on',
  'clean-and-measure-again',
  'measure-again-better',
  'next-piston',
  'hone',
  'bore-oversize',
  're-plate',
  'replace-or-sleeve',
] as const
export type Outcome = (typeof outcomes)[number]

/** Facts with the words that a rule takes of each. */
export type Condition = { readonly [Name in FactName]?: readonly DecisionFacts[Name][] }

/** A rule applies where each fact of `all` has one of its words, and of `any` at least one fact. */
export interface DecisionRule {
  readonly id: string
  readonly all: Condition
  readonly any?: Condition
  /** `undecided`: nothing can be said yet. */
  readonly outcome: Outcome | 'undecided'
}

const spoilt = ['ended', 'marked'] as const
const outOfLimits = {
  size: ['above'],
  ovality: ['above'],
  taper: ['above'],
  plating: ['may-be-through'],
} as const satisfies Condition
const openLimits = {
  size: ['too-close', 'mean-only'],
  ovality: ['too-close', 'open'],
  taper: ['too-close', 'open'],
} as const satisfies Condition
const noneOver = ['inside', 'too-close', 'open', 'no-limit'] as const

/**
 * The rules of the decision in their order: the first that applies decides. What ends a bore whatever its size comes
 * first, then what lies on the wall, whether the readings can be built on, the limits, whether all is read that was to
 * be, what is too close to call, the piston, the outlook; a bore that none of these stops runs on. Own order, after common practice: look before
 * measuring, and measure again before metal is cut (no published source).
 */
export const decisionRules: readonly DecisionRule[] = [
  { id: 'spoilt-plating', all: { surface: spoilt, wall: ['plated'] }, outcome: 're-plate' },
  {
    id: 'spoilt-for-good',
    all: { surface: ['ended'], oversize: ['none-given', 'not-allowed'] },
    outcome: 'replace-or-sleeve',
  },
  {
    id: 'marked-for-good',
    all: { surface: ['marked'], honing: ['not-allowed'], oversize: ['none-given', 'not-allowed'] },
    outcome: 'replace-or-sleeve',
  },
  { id: 'covered', all: { surface: ['covered'] }, outcome: 'clean-and-measure-again' },
  { id: 'no-readings', all: { readings: ['none'] }, outcome: 'undecided' },
  { id: 'unsteady', all: { readings: ['unsteady'] }, outcome: 'clean-and-measure-again' },
  { id: 'slip-or-setting', all: { readings: ['slip-asked', 'not-set'] }, outcome: 'measure-again-better' },
  {
    id: 'mark-to-hone-out',
    all: {
      surface: ['marked'],
      honing: ['room'],
      size: ['inside'],
      ovality: noneOver,
      taper: noneOver,
      plating: ['left', 'not-known'],
    },
    outcome: 'hone',
  },
  { id: 'spoilt-to-bore', all: { surface: spoilt, oversize: ['cleans-up'] }, outcome: 'bore-oversize' },
  { id: 'spoilt-wall', all: { surface: spoilt }, outcome: 'replace-or-sleeve' },
  {
    id: 'out-on-weak-grounds',
    all: { grounds: ['one-reading', 'assumed'] },
    any: outOfLimits,
    outcome: 'measure-again-better',
  },
  { id: 'out-plated', all: { wall: ['plated'] }, any: outOfLimits, outcome: 're-plate' },
  { id: 'out-to-bore', all: { oversize: ['cleans-up'] }, any: outOfLimits, outcome: 'bore-oversize' },
  { id: 'out', all: {}, any: outOfLimits, outcome: 'replace-or-sleeve' },
  { id: 'look-closer', all: { surface: ['look-closer'] }, outcome: 'clean-and-measure-again' },
  { id: 'under-new', all: { size: ['under-new'] }, outcome: 'clean-and-measure-again' },
  { id: 'not-all-read', all: { stations: ['some-unread', 'land-alone'] }, outcome: 'undecided' },
  { id: 'too-close', all: {}, any: openLimits, outcome: 'measure-again-better' },
  { id: 'below-to-hone', all: { size: ['below'], honing: ['room'] }, outcome: 'hone' },
  { id: 'below', all: { size: ['below'] }, outcome: 'clean-and-measure-again' },
  { id: 'other-grade', all: { size: ['other-grade'] }, outcome: 'next-piston' },
  {
    id: 'other-piston-fits',
    all: { clearance: ['too-loose', 'too-tight', 'too-close'], otherPiston: ['fits'] },
    outcome: 'next-piston',
  },
  {
    id: 'piston-too-close',
    all: { clearance: ['too-close'], otherPiston: ['too-close'] },
    outcome: 'next-piston',
  },
  { id: 'piston-not-told', all: { clearance: ['too-close'] }, outcome: 'measure-again-better' },
  {
    id: 'too-tight-to-hone',
    all: { clearance: ['too-tight'], otherPiston: ['none-fits', 'none-listed'], honing: ['room'] },
    outcome: 'hone',
  },
  {
    id: 'piston-to-find',
    all: { clearance: ['too-loose', 'too-tight'], otherPiston: ['too-close', 'none-listed'] },
    outcome: 'next-piston',
  },
  { id: 'too-tight', all: { clearance: ['too-tight'] }, outcome: 'next-piston' },
  { id: 'too-loose-plated', all: { clearance: ['too-loose'], wall: ['plated'] }, outcome: 're-plate' },
  {
    id: 'too-loose-to-bore',
    all: { clearance: ['too-loose'], oversize: ['cleans-up'] },
    outcome: 'bore-oversize',
  },
  { id: 'too-loose', all: { clearance: ['too-loose'] }, outcome: 'replace-or-sleeve' },
  { id: 'shrunk', all: { outlook: ['shrunk'] }, outcome: 'clean-and-measure-again' },
  { id: 'at-limit', all: { outlook: ['now'] }, outcome: 'measure-again-better' },
  { id: 'no-limits', all: { size: ['no-limit'], clearance: ['not-judged'] }, outcome: 'undecided' },
  { id: 'run-on', all: {}, outcome: 'run-on' },
]

/** The first rule that applies to the facts. Pure; the last rule applies to all, so there is always one. */
export function ruleFor(facts: DecisionFacts): DecisionRule {
  const rule = decisionRules.find(({ all, any }) => allHold(facts, all) && (!any || anyHolds(facts, any)))
  if (!rule) throw new Error('ruleFor: no rule applies')
  return rule
}

/** Those facts of a rule's conditions that hold, in the order of the conditions. */
export function factsBehind(facts: DecisionFacts, { all, any = {} }: DecisionRule): FactName[] {
  const names = [...namesOf(any), ...namesOf(all)].filter(
    (name) => holds(facts, all, name) || holds(facts, any, name),
  )
  return [...new Set(names)]
}

function allHold(facts: DecisionFacts, condition: Condition): boolean {
  return namesOf(condition).every((name) => holds(facts, condition, name))
}

function anyHolds(facts: DecisionFacts, condition: Condition): boolean {
  return namesOf(condition).some((name) => holds(facts, condition, name))
}

function holds(facts: DecisionFacts, condition: Condition, name: FactName): boolean {
  const words: readonly string[] | undefined = condition[name]
  return words?.includes(facts[name]) ?? false
}

function namesOf(condition: Condition): FactName[] {
  return factNames.filter((name) => condition[name] !== undefined)
}

/** All facts, those that weigh most first. */
export const factNames = [
  'surface',
  'readings',
  'stations',
  'size',
  'ovality',
  'taper',
  'plating',
  'clearance',
  'otherPiston',
  'outlook',
  'ringGap',
  'wall',
  'honing',
  'oversize',
  'grounds',
] as const satisfies readonly FactName[]
