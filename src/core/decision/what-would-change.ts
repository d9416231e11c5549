import type { DecisionFacts, FactName } from './decision-facts'
import { type Outcome, ruleFor } from './decision-rules'

/** A fact that could turn out otherwise, and what the decision would then be. */
export interface Change {
  readonly fact: FactName
  readonly to: DecisionFacts[FactName]
  readonly outcome: Outcome
}

type Turn = { readonly [Name in FactName]?: Readonly<Record<string, readonly DecisionFacts[Name][]>> }

/** What each fact that is open, or that somebody can do something about, may turn into. */
const turns: Turn = {
  readings: { unsteady: ['sound'], 'slip-asked': ['sound'], 'not-set': ['sound'] },
  surface: {
    covered: ['nothing-against', 'marked'],
    'look-closer': ['nothing-against', 'marked'],
    marked: ['nothing-against'],
    'nothing-against': ['marked'],
    'cross-hatch': ['marked'],
  },
  size: {
    'too-close': ['inside', 'above'],
    'mean-only': ['inside', 'above'],
    'under-new': ['inside'],
    inside: ['above'],
    above: ['inside'],
  },
  ovality: {
    'too-close': ['inside', 'above'],
    open: ['inside', 'above'],
    above: ['inside'],
  },
  taper: { 'too-close': ['inside', 'above'], open: ['inside', 'above'], above: ['inside'] },
  plating: { 'may-be-through': ['left'] },
  grounds: { 'one-reading': ['repeated'], assumed: ['repeated'] },
  clearance: {
    'too-close': ['inside', 'too-loose'],
    'too-loose': ['inside'],
    'too-tight': ['inside'],
    'not-judged': ['too-loose'],
  },
  otherPiston: { 'none-listed': ['fits'], 'none-fits': ['fits'], 'too-close': ['fits'] },
  honing: { 'no-room': ['room'], room: ['no-room'] },
  oversize: {
    'none-given': ['cleans-up'],
    'none-cleans-up': ['cleans-up'],
    'cleans-up': ['none-cleans-up'],
  },
}

/** No more than this many are told. */
const mostTold = 4

/**
 * What would change a decision: each fact alone that is open or can be seen to turned into what it may turn out to
 * be, and the table asked again. Only turns that lead to another outcome; those of the open facts first.
 */
export function changesOf(facts: DecisionFacts, outcome: Outcome): Change[] {
  const open = namesOfTurns.filter((name) => isOpen(facts, name))
  const others = namesOfTurns.filter((name) => !isOpen(facts, name))
  const changes = [...open, ...others].flatMap((name) =>
    turnsOf(facts, name).flatMap((to): Change[] => {
      const then = ruleFor({ ...facts, [name]: to }).outcome
      return then === outcome || then === 'undecided' ? [] : [{ fact: name, to, outcome: then }]
    }),
  )
  return changes.slice(0, mostTold)
}

const namesOfTurns = [
  'readings',
  'surface',
  'grounds',
  'size',
  'ovality',
  'taper',
  'plating',
  'clearance',
  'otherPiston',
  'honing',
  'oversize',
] as const satisfies readonly FactName[]

const openWords: readonly string[] = [
  'too-close',
  'open',
  'mean-only',
  'unsteady',
  'slip-asked',
  'not-set',
  'covered',
  'look-closer',
  'under-new',
  'one-reading',
  'assumed',
]

function isOpen(facts: DecisionFacts, name: FactName): boolean {
  return openWords.includes(facts[name])
}

function turnsOf(facts: DecisionFacts, name: FactName): readonly DecisionFacts[FactName][] {
  const of: Readonly<Record<string, readonly DecisionFacts[FactName][]>> = turns[name] ?? {}
  return of[facts[name]] ?? []
}
