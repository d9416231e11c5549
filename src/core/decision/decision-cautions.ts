import type { DecisionFacts } from './decision-facts'
import type { Outcome } from './decision-rules'
import type { Evidence } from './evidence'

/** What to heed with a decision. */
export type DecisionCaution =
  | 'last-word'
  | 'stones-on-plating'
  | 'honing-keeps-form'
  | 'mark-depth'
  | 'glaze'
  | 'ring-gap-large'
  | 'ring-gap-small'
  | 'rings-with-piston'
  | 'torque-plate'
  | 'past-window-of-new'

/** What goes with an outcome wherever it is read; the last word is always with manual and machinist. */
export function cautionsOf(evidence: Evidence, facts: DecisionFacts, outcome: Outcome): DecisionCaution[] {
  const { finding, survey, pistons } = evidence
  const cuts = outcome === 'hone' || outcome === 'bore-oversize'
  const glazed = finding.surface.some(({ kind }) => kind === 'glaze' || kind === 'cross-hatch-worn-off')
  const runs = outcome === 'run-on' || outcome === 'next-piston'
  return [
    'last-word',
    ...(facts.wall === 'plated' && outcome !== 're-plate' ? (['stones-on-plating'] as const) : []),
    ...(outcome === 'hone' ? (['honing-keeps-form'] as const) : []),
    ...(outcome === 'hone' && facts.surface === 'marked' ? (['mark-depth'] as const) : []),
    ...(runs && glazed ? (['glaze'] as const) : []),
    ...(facts.ringGap === 'above' ? (['ring-gap-large'] as const) : []),
    ...(facts.ringGap === 'below' ? (['ring-gap-small'] as const) : []),
    ...(outcome === 'next-piston' ? (['rings-with-piston'] as const) : []),
    ...(outcome === 'next-piston' && pistons.next?.asNew && pistons.next.asNew.verdict !== 'inside'
      ? (['past-window-of-new'] as const)
      : []),
    ...(cuts && survey.clamping !== undefined && survey.clamping !== 'bare'
      ? (['torque-plate'] as const)
      : []),
  ]
}
