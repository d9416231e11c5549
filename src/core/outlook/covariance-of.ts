import type { Contribution } from '../findings'
import { isCommon } from '../uncertainty/combine'

/**
 * Covariance of two diameters, mm²: the products of what they share, contributions of one identity being one
 * error (GUM, JCGM 100:2008, 5.2.2 and F.1.2.3). Of one list with itself the variance.
 */
export function covarianceOf(one: readonly Contribution[], other: readonly Contribution[]): number {
  let sum = 0
  for (const a of one) {
    // What is a station's own is shared with nothing but itself.
    if (one !== other && !isCommon(a)) continue
    for (const b of other) if (a.id === b.id) sum += a.signedMm * b.signedMm
  }
  return sum
}
