import { type ScanRange, scanRange } from './range-of-many'

/** What a gauge with two contacts would find at a level, as far as both stand on metal. */
export interface TwoContact {
  /** Axes in [0, 180), degrees, and the sum of the two radii on each, µm. */
  readonly axesDegrees: readonly number[]
  readonly sumsUm: readonly number[]
  readonly largest: { readonly axisDegrees: number; readonly sumUm: number }
  readonly smallest: { readonly axisDegrees: number; readonly sumUm: number }
  /** Largest less smallest of them. */
  readonly outOfRound: ScanRange
}

/** Angles as near as this are one, degrees. */
const same = 1e-6

/**
 * Two-contact equivalents of a level: D(θ) = r(θ) + r(θ + 180°), which eccentricity leaves alone, in the same counting
 * as the radii. The radius opposite is taken between its two neighbours along a straight line where none was read at
 * that angle; an axis of which one end is missing is left out. Undefined where no axis is left. `u` is the standard
 * uncertainty of a radius, so √2·u that of a sum. Source: ISO 4292:1985, two-contact measurement.
 */
export function twoContact(
  anglesDegrees: readonly number[],
  radii: Float64Array,
  u: number,
  degreesOfFreedom: number,
): TwoContact | undefined {
  const axesDegrees: number[] = []
  const sumsUm: number[] = []
  let largest: { axisDegrees: number; sumUm: number } | undefined
  let smallest: { axisDegrees: number; sumUm: number } | undefined
  // Angles rise, so what stands opposite moves on with them.
  let after = 0
  for (const [i, axisDegrees] of anglesDegrees.entries()) {
    if (axisDegrees >= 180) break
    while (after < anglesDegrees.length && (anglesDegrees[after] ?? 0) < axisDegrees + 180 - same) after++
    const sumUm = (radii[i] ?? Number.NaN) + radiusAt(anglesDegrees, radii, axisDegrees + 180, after)
    if (Number.isNaN(sumUm)) continue
    axesDegrees.push(axisDegrees)
    sumsUm.push(sumUm)
    if (!largest || sumUm > largest.sumUm) largest = { axisDegrees, sumUm }
    if (!smallest || sumUm < smallest.sumUm) smallest = { axisDegrees, sumUm }
  }
  if (!largest || !smallest) return undefined
  const w = largest.sumUm - smallest.sumUm
  return {
    axesDegrees,
    sumsUm,
    largest,
    smallest,
    outOfRound: scanRange(w, sumsUm.length, Math.SQRT2 * u, degreesOfFreedom),
  }
}

/**
 * The radius at an angle, `after` being the first place at it or beyond: read there, or between the two neighbours;
 * NaN where one of them is missing.
 */
export function radiusAt(
  anglesDegrees: readonly number[],
  radii: Float64Array,
  angle: number,
  after: number,
): number {
  const count = anglesDegrees.length
  const next = after % count
  const to = (anglesDegrees[next] ?? 0) + (after === count ? 360 : 0)
  if (Math.abs(to - angle) <= same) return radii[next] ?? Number.NaN
  const before = (after + count - 1) % count
  const from = (anglesDegrees[before] ?? 0) - (after === 0 ? 360 : 0)
  const share = (angle - from) / (to - from)
  return (radii[before] ?? Number.NaN) * (1 - share) + (radii[next] ?? Number.NaN) * share
}
