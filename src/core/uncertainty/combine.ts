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
  const sources: Source[] = []
  const places = new Map<string, number>()
  for (const { factor, contributions } of terms) {
    // Stations of one set-up list what they share in one order: the next source is nearly always the one in turn.
    let turn = 0
    for (const part of contributions) {
      if (sources[turn]?.part.id !== part.id) turn = places.get(part.id) ?? sources.length
      const known = sources[turn]
      if (known) known.signed += factor * part.signedMm
      else {
        places.set(part.id, turn)
        sources.push({ part, signed: factor * part.signedMm })
      }
      turn += 1
    }
  }
  let variance = 0
  const estimates: Estimate[] = []
  for (const { part, signed } of sources) {
    variance += signed * signed
    estimated(estimates, part, signed * signed)
  }
  let denominator = 0
  for (const { variance: part, nu } of estimates) denominator += (part * part) / nu
  const effective = denominator > 0 ? (variance * variance) / denominator : Number.POSITIVE_INFINITY
  return { standardUncertainty: Math.sqrt(variance), degreesOfFreedom: truncate(effective) }
}

interface Source {
  readonly part: Contribution
  signed: number
}

interface Estimate {
  readonly name: string
  readonly nu: number
  variance: number
}

/** Adds to what rests on the estimate of a source, where that has finite degrees of freedom. */
function estimated(estimates: Estimate[], part: Contribution, variance: number): void {
  if (part.degreesOfFreedom === Number.POSITIVE_INFINITY) return
  const name = part.estimate ?? part.id
  for (const one of estimates) {
    if (one.name !== name) continue
    one.variance += variance
    return
  }
  estimates.push({ name, nu: part.degreesOfFreedom, variance })
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
