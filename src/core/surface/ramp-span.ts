import type { LimitPair } from '../findings'
import { extremesOf } from './extremes'

/** The deviations at which the ramp ends, µm from the middle. */
export interface RampSpan {
  readonly lowUm: number
  readonly highUm: number
}

/**
 * Where the ramp ends: at the limits drawn; with one limit alone at its mirror image about the middle; with
 * none at the furthest deviation, either way. Never empty. Own rule.
 */
export function rampSpan(
  middleMm: number,
  pair: LimitPair | undefined,
  deviationsUm: Float32Array,
): RampSpan {
  const low = pair?.minMm === undefined ? undefined : (pair.minMm - middleMm) * 1000
  const high = pair?.maxMm === undefined ? undefined : (pair.maxMm - middleMm) * 1000
  if (low !== undefined && high !== undefined && high > low) return { lowUm: low, highUm: high }
  const limit = Math.abs(high ?? low ?? 0)
  if (limit > 0) return { lowUm: -limit, highUm: limit }
  const [least, greatest] = extremesOf(deviationsUm)
  const reach = Math.max(1, -least, greatest)
  return { lowUm: -reach, highUm: reach }
}
