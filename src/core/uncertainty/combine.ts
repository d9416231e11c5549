import type { Contribution } from '../findings'
import { studentQuantile } from '../statistics/student'

/** A combined standard uncertainty with its effective degrees of freedom. */
export interface Combined {
  readonly standardUncertainty: number
  /** Welch–Satterthwaite, truncated to a whole number of 1 or more; may be infinite. */
  readonly degreesOfFreedom: number
}

/** A term a·D of a linear combination: the factor and the contributions of that diameter. */
export interface Term {
  readonly factor: number
  readonly contributions: readonly Contribution[]
}

/**
 * Standard uncertainty and effective degrees of freedom of y = Σ a_i·D_i, in the unit of the contributions.
 *
 * Contributions with one identity are one error and are added with their signs before squaring, which is
 * the law of propagation with full covariance (GUM, JCGM 100:2008, 5.2.2); so what two diameters share
 * drops out of their difference by itself. Degrees of freedom by Welch–Satterthwaite (GUM G.4.1),
 * truncated as in GUM H.1; sources that rest on one estimate are added first and counted once.
 */
export function combine(terms: readonly Term[]): Combined {
  const sources = new Map<string, { signed: number; nu: number; estimate: string }>()
  for (const { factor, contributions } of terms) {
    for (const part of contributions) {
      const known = sources.get(part.id)
      if (known) known.signed += factor * part.signedMm
      else
        sources.set(part.id, {
          signed: factor * part.signedMm,
          nu: part.degreesOfFreedom,
          estimate: part.estimate ?? part.id,
        })
    }
  }
  let variance = 0
  const estimates = new Map<string, { variance: number; nu: number }>()
  for (const { signed, nu, estimate } of sources.values()) {
    const own = signed * signed
    variance += own
    if (nu === Number.POSITIVE_INFINITY) continue
    const known = estimates.get(estimate)
    if (known) known.variance += own
    else estimates.set(estimate, { variance: own, nu })
  }
  let denominator = 0
  for (const { variance: part, nu } of estimates.values()) denominator += (part * part) / nu
  const effective = denominator > 0 ? (variance * variance) / denominator : Number.POSITIVE_INFINITY
  return { standardUncertainty: Math.sqrt(variance), degreesOfFreedom: truncate(effective) }
}

function truncate(nu: number): number {
  if (nu > 1e9) return Number.POSITIVE_INFINITY
  return Math.max(1, Math.floor(nu + 1e-9))
}

/** U: half of the two-sided 95 % interval, t_0.975,ν·u. Source: GUM (JCGM 100:2008) G.3.2. */
export function expanded(combined: Combined): number {
  return studentQuantile(0.975, combined.degreesOfFreedom) * combined.standardUncertainty
}

/** A source shared with other stations, as against the station's own and the repeats' errors. */
export function isCommon(part: Contribution): boolean {
  return part.scope !== 'station' && part.scope !== 'repeat'
}
