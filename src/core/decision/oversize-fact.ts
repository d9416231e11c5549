import type { BoreFinding } from '../findings'
import type { Bore } from '../measured'
import { boringBar, type OversizeChoice } from '../piston/oversize-choice'
import type { DecisionFacts } from './decision-facts'

/** What boring could do for a bore. */
export interface BoringOf {
  readonly fact: DecisionFacts['oversize']
  /** What it would be bored to, mm over the standard size: with all alike the size that the worst asks for. */
  readonly oversizeMm?: number
  /** That it cleans up is too close to call. */
  readonly tooClose: boolean
  /** What it takes to clean up is a hint of the trade. */
  readonly cleanUpIsHint: boolean
}

/** What boring could do for one bore, from the choice that was made for the whole engine. Source: as for `oversizeChoice`. */
export function boringOf(bore: Bore, { boreId }: BoreFinding, choice: OversizeChoice): BoringOf {
  const none = { tooClose: false, cleanUpIsHint: false }
  if (boringBar(bore.wall)) return { ...none, fact: 'not-allowed' }
  const own = choice.bores?.find((one) => one.boreId === boreId)
  const oversizeMm = own && ((choice.known ? choice.oversizeMm : undefined) ?? own.ownOversizeMm)
  if (oversizeMm !== undefined) {
    return {
      fact: 'cleans-up',
      oversizeMm,
      tooClose: own?.verdict === 'too-close',
      cleanUpIsHint: choice.known && choice.cleanUpIsHint,
    }
  }
  return { ...none, fact: own ? 'none-cleans-up' : 'none-given' }
}
