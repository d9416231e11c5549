import type { Conformity, DoubtEdges, LimitPair, Side } from '../findings'
import { quantileOfDistribution } from '../statistics/root'
import { studentCdf, studentQuantile } from '../statistics/student'

/** A value with its standard uncertainty (one unit) and degrees of freedom. */
export interface Doubtful {
  readonly value: number
  readonly standardUncertainty: number
  readonly degreesOfFreedom: number
}

/** Limits that a value is judged by; either may be absent. */
export interface Limits {
  readonly min?: number
  readonly max?: number
}

/** The probability that proves a verdict. */
export const proof = 0.95

/** A margin of less than this many u is none: no gauge could settle it. */
const nothing = 1e-6

/** The limits of a pair that are judged: with a wear limit, that limit alone. */
export function judgedLimits(pair: LimitPair): Limits {
  return {
    ...(pair.kind === 'wear' || pair.minMm === undefined ? {} : { min: pair.minMm }),
    ...(pair.maxMm === undefined ? {} : { max: pair.maxMm }),
  }
}

/** Probabilities that the true value is below the min, within, and above the max, given the reading. */
export function probabilities({ value, standardUncertainty: u, degreesOfFreedom }: Doubtful, limits: Limits) {
  const below = limits.min === undefined ? 0 : chance(limits.min - value, u, degreesOfFreedom)
  const above = limits.max === undefined ? 0 : chance(value - limits.max, u, degreesOfFreedom)
  return { below, inside: Math.max(0, 1 - below - above), above }
}

function chance(margin: number, u: number, degreesOfFreedom: number): number {
  if (u === 0) return margin > 0 ? 1 : 0
  return studentCdf(margin / u, degreesOfFreedom)
}

/**
 * One rule everywhere: with D ~ y + u·t_ν a value is inside when P(min ≤ D ≤ max) ≥ 0.95, above when
 * P(D > max) ≥ 0.95, below when P(D < min) ≥ 0.95, and otherwise too close to call.
 * Source: conformance probability, JCGM 106:2012 clause 7, at the 95 % of ISO 14253-1:2017.
 */
export function conformity(y: Doubtful, limits: Limits): Conformity {
  const p = probabilities(y, limits)
  const verdict =
    p.inside >= proof ? 'inside' : p.above >= proof ? 'above' : p.below >= proof ? 'below' : 'too-close'
  const lean: Side =
    p.inside >= p.above && p.inside >= p.below ? 'inside' : p.above >= p.below ? 'above' : 'below'
  const settled = verdict === 'too-close' ? settledBy(y, limits, lean) : undefined
  return {
    verdict,
    probabilityInside: p.inside,
    probabilityAbove: p.above,
    probabilityBelow: p.below,
    lean,
    leanProbability: lean === 'inside' ? p.inside : p[lean],
    ...(settled === undefined ? {} : { settledByExpandedMm: settled }),
  }
}

/**
 * The U (two-sided 95 %) at which the same value, with the same degrees of freedom, would be proven on
 * the side it leans to; undefined where it stands on a limit and no U would do.
 */
function settledBy(y: Doubtful, limits: Limits, lean: Side): number | undefined {
  const t = studentQuantile(proof, y.degreesOfFreedom)
  const toExpanded = studentQuantile(0.975, y.degreesOfFreedom)
  const fromMin = limits.min === undefined ? Number.POSITIVE_INFINITY : y.value - limits.min
  const fromMax = limits.max === undefined ? Number.POSITIVE_INFINITY : limits.max - y.value
  const margin = lean === 'above' ? -fromMax : lean === 'below' ? -fromMin : Math.min(fromMin, fromMax)
  if (!(margin > nothing * y.standardUncertainty)) return undefined
  if (lean !== 'inside' || !Number.isFinite(fromMin) || !Number.isFinite(fromMax)) {
    return (margin / t) * toExpanded
  }
  const outside = (sharpness: number) => {
    const p = probabilities({ ...y, standardUncertainty: 1 / sharpness }, limits)
    return p.inside
  }
  const sharpness = quantileOfDistribution(outside, proof, t / margin, (2 * t) / margin, (1e-6 * t) / margin)
  return toExpanded / sharpness
}

/**
 * The diameters at which the verdict of a station with this u and ν changes. A limit that is drawn but
 * not judged (the smallest new size beside a wear limit) has an outer edge and no doubt within.
 */
export function doubtEdges(y: Doubtful, pair: LimitPair): DoubtEdges {
  const u = y.standardUncertainty
  const t = studentQuantile(proof, y.degreesOfFreedom)
  const min = pair.minMm ?? Number.NEGATIVE_INFINITY
  const max = pair.maxMm ?? Number.POSITIVE_INFINITY
  const belowFirmMm = min - t * u
  const aboveFirmMm = max + t * u
  if (pair.kind === 'wear' || !Number.isFinite(min) || !Number.isFinite(max)) {
    return {
      belowFirmMm,
      insideFromMm: pair.kind === 'wear' ? belowFirmMm : min + t * u,
      insideToMm: max - t * u,
      aboveFirmMm,
    }
  }
  const margin = insideMargin(u, y.degreesOfFreedom, max - min)
  if (margin === undefined) {
    return {
      belowFirmMm,
      insideFromMm: Number.POSITIVE_INFINITY,
      insideToMm: Number.NEGATIVE_INFINITY,
      aboveFirmMm,
    }
  }
  return { belowFirmMm, insideFromMm: min + margin, insideToMm: max - margin, aboveFirmMm }
}

/**
 * How far within a band of this width a value must lie to be proven inside; undefined where no value can
 * be: when width/u is below 2·t_0.975,ν even the middle has less than 95 %.
 */
export function insideMargin(u: number, degreesOfFreedom: number, width: number): number | undefined {
  const t = studentQuantile(proof, degreesOfFreedom)
  if (u === 0) return 0
  if (!canProveInside(u, degreesOfFreedom, width)) return undefined
  const far = 1 - studentCdf((width - t * u) / u, degreesOfFreedom)
  if (far < 1e-9) return t * u
  let low = t * u
  let high = width / 2
  for (let step = 0; step < 40 && high - low > 1e-7 * u; step++) {
    const margin = (low + high) / 2
    const inside =
      studentCdf(margin / u, degreesOfFreedom) - studentCdf((margin - width) / u, degreesOfFreedom)
    if (inside < proof) low = margin
    else high = margin
  }
  return high
}

/** Whether any reading with this u could be proven inside a band of this width. */
export function canProveInside(u: number, degreesOfFreedom: number, width: number): boolean {
  return width >= 2 * studentQuantile(0.975, degreesOfFreedom) * u
}
