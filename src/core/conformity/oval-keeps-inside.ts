import type { LimitPair, StationFinding } from '../findings'
import { ovalBoundMm } from '../form/oval-bound'
import { conformity, judgedLimits } from './conformity'

/** How far two depths may lie apart and still be one level, mm. */
const sameLevelMm = 1

/**
 * Whether means of levels, as three contacts read them, speak for the whole wall: at each level two-contact
 * readings of the same occasion bound the oval, and mean ± half of that bound is inside the limits by the
 * rule that every station is judged by. Levels within 1 mm are one level. Own derivation.
 */
export function ovalKeepsInside(
  means: readonly StationFinding[],
  twoContacts: readonly StationFinding[],
  pair: LimitPair,
): boolean {
  const { min, max } = judgedLimits(pair)
  const counted = means.filter((s) => s.counted)
  return (
    counted.length > 0 &&
    counted.every((mean) => {
      const level = twoContacts.filter((s) => s.counted && Math.abs(s.depthMm - mean.depthMm) <= sameLevelMm)
      const bound = ovalBoundMm(level)
      if (bound === undefined) return false
      const isInside = (offMm: number, limits: { min?: number; max?: number }) =>
        conformity(
          {
            value: mean.diameterMm + offMm,
            standardUncertainty: mean.standardUncertaintyMm,
            degreesOfFreedom: mean.degreesOfFreedom,
          },
          limits,
        ).verdict === 'inside'
      return (
        (max === undefined || isInside(bound / 2, { max })) &&
        (min === undefined || isInside(-bound / 2, { min }))
      )
    })
  )
}
