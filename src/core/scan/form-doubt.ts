import { depthBasis } from './depth-basis'
import { smoothHarmonics } from './form-model'
import type { RadialScan } from './radial-scan'
import { misfitShare } from './standing-out'

/** A form of nearly as many coefficients as values leaves next to nothing to judge by. */
const mostShare = 0.9

/**
 * How much of what a scan holds the smooth form takes for itself: p/n for p coefficients from n values, 0 to 0.9.
 */
export function formShare({ depthsMm, radiiUm }: RadialScan): number {
  let measured = 0
  for (const radius of radiiUm) if (!Number.isNaN(radius)) measured++
  const coefficients = (2 * smoothHarmonics + 1) * depthBasis(depthsMm).size
  return Math.min(mostShare, coefficients / Math.max(1, measured))
}

/**
 * Standard uncertainty of the smooth form under a mark, as a share of the standard deviation of a value: √(p/n), which
 * is what a least-squares form is doubtful by on average over its places (mean leverage), and what it may miss beside
 * that. Own derivation.
 */
export function formDoubtShare(scan: RadialScan): number {
  return Math.hypot(misfitShare, Math.sqrt(formShare(scan)))
}
