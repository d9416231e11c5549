import type { Contribution } from '../findings'

/** What is known of an error besides its standard uncertainty. */
export type Distribution = 'normal' | 'rectangular'

/**
 * The distribution of a source of error. Rectangular: what is only known to lie between two ends (expansions,
 * whatever was not recorded, drift, a step that was read). Normal: all else, which with finite degrees of
 * freedom becomes Student's t (JCGM 101:2008, 6.4.2, 6.4.7 and 6.4.9).
 */
export function distributionOf({ kind, assumed, degreesOfFreedom }: Contribution): Distribution {
  switch (kind) {
    case 'wall-expansion':
    case 'standard-expansion':
    case 'standard-error':
    case 'drift-preset':
    case 'drift-measured':
    case 'piston-expansion':
    case 'piston-range':
      return 'rectangular'
    case 'reference-temperature':
    case 'temperature-difference':
      return assumed ? 'rectangular' : 'normal'
    case 'repeatability':
    case 'zero-reading':
      return Number.isFinite(degreesOfFreedom) ? 'normal' : 'rectangular'
    default:
      return 'normal'
  }
}
