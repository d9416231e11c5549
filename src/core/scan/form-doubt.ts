import { depthBasis } from './depth-basis'
import { smoothHarmonics } from './form-model'
import type { RadialScan } from './radial-scan'
import { misfitShare } from './standing-out'

/**
 * Standard uncertainty of the smooth form under a mark, as a share of the standard deviation of a value: √(p/n) for p
 * coefficients from n values, which is what a least-squares form is doubtful by on average over its places (mean
 * leverage), and what it may miss beside that. Own derivation.
 */
export function formDoubtShare({ depthsMm, radiiUm }: RadialScan): number {
  let measured = 0
  for (const radius of radiiUm) if (!Number.isNaN(radius)) measured++
  const coefficients = (2 * smoothHarmonics + 1) * depthBasis(depthsMm).size
  return Math.hypot(misfitShare, Math.sqrt(Math.min(1, coefficients / Math.max(1, measured))))
}
