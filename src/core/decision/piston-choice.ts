import type { Fit } from '../piston/fits'
import type { DecisionFacts } from './decision-facts'

/** The piston that the decision speaks of, and the best of the others. */
export interface PistonChoice {
  readonly atHand?: Fit
  /** The one to take next. */
  readonly next?: Fit
  /** All others that have a standing, the best first. */
  readonly others: readonly Fit[]
  readonly all: readonly Fit[]
  readonly clearance: DecisionFacts['clearance']
  readonly otherPiston: DecisionFacts['otherPiston']
}

const best = ['inside', 'too-close', 'too-loose', 'too-tight'] as const

/**
 * The piston at hand is the one that ran in the bore, else the best of those that lie here. The next is the one that
 * the pairing of the whole engine gives the bore (`pairedId`), else, of the others with the best standing, the largest: it keeps
 * the least clearance and is not looser than it must be (common practice, no published source).
 */
export function pistonChoice(fits: readonly Fit[], pairedId?: string): PistonChoice {
  const rank = ({ verdict }: Fit) => (verdict === undefined ? best.length : best.indexOf(verdict))
  const here = fits.filter(({ ranHere, state }) => ranHere || state === 'at-hand')
  const atHand = here.find(({ ranHere }) => ranHere) ?? [...here].sort((a, b) => rank(a) - rank(b))[0]
  const others = fits
    .filter((fit) => fit !== atHand && fit.verdict !== undefined && !fit.ranHere)
    .sort((a, b) => rank(a) - rank(b) || (b.sizeMm ?? 0) - (a.sizeMm ?? 0))
  const [first] = others
  const next = others.find(({ pistonId }) => pistonId === pairedId) ?? first
  return {
    ...(atHand ? { atHand } : {}),
    ...(next ? { next } : {}),
    others,
    all: fits,
    clearance: atHand?.verdict ?? 'not-judged',
    otherPiston: otherPistonOf(first),
  }
}

function otherPistonOf(next: Fit | undefined): DecisionFacts['otherPiston'] {
  if (!next) return 'none-listed'
  if (next.verdict === 'inside') return 'fits'
  return next.verdict === 'too-close' ? 'too-close' : 'none-fits'
}
