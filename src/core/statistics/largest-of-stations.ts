import { deviationOfEstimate, deviationOfLargeEstimate } from './deviation-of-estimate'
import { gaussLegendre, type Quadrature } from './gauss-legendre'
import { normalCdfTabulated, normalDensity } from './normal'
import { quantileOfDistribution } from './root'

/** A station's doubt in two parts, in one unit: shared with the other stations, and its own. */
export interface DoubtParts {
  readonly common: number
  readonly individual: number
}

const unit = gaussLegendre(16, -1, 1)
/** Beyond this many standard deviations a normal error is left out: m·1e-7 of the probability at most. */
const reach = 5.2

/**
 * The factor k_m such that, with every true value exactly at the limit, the chance that any of the m
 * stations reads past it by k_m·u is 5 %. One station at the limit errs in 5 % of cases by its own rule;
 * any of many errs far more often, and this factor takes that back.
 *
 * Solves E_{z,w}[ Π Φ((k·u_i − c_i·z)·w/s_i) ] = p with u_i² = c_i² + s_i², z standard normal (the shared
 * error) and w = √(χ²_ν/ν) (the individual part is estimated with ν degrees of freedom; the common part
 * counts as known). Own derivation: given z and w the stations err independently. As z rises the product falls
 * from 1 to 0, the more abruptly the larger the shared part; so only that fall is integrated over, and what
 * lies below it is Φ. Accurate to 1e-3, for any proportion of the two parts.
 */
export function largestOfStationsFactor(
  stations: readonly DoubtParts[],
  degreesOfFreedom: number,
  p = 0.95,
): number {
  if (stations.length === 0) throw new RangeError('largestOfStationsFactor: no stations')
  const { nodes: spread, weights } = spreadOf(degreesOfFreedom)
  const own = (s: DoubtParts) => Math.max(s.individual, s.common * 1e-6) || 1
  const ratios: Ratios = {
    common: Float64Array.from(stations, (s) => s.common / own(s)),
    total: Float64Array.from(stations, (s) => Math.hypot(s.common, own(s)) / own(s)),
  }
  const probability = (k: number) => {
    let sum = 0
    for (let l = 0; l < spread.length; l++) sum += (weights[l] ?? 0) * givenSpread(ratios, k, spread[l] ?? 1)
    return sum
  }
  return quantileOfDistribution(probability, p, 1.6, 3.2, 4e-4)
}

function spreadOf(degreesOfFreedom: number): Quadrature {
  if (degreesOfFreedom < 16) return deviationOfEstimate(degreesOfFreedom, degreesOfFreedom < 6 ? 48 : 18)
  return deviationOfLargeEstimate(
    degreesOfFreedom,
    degreesOfFreedom < 30 ? 7 : degreesOfFreedom < 100 ? 5 : 3,
  )
}

/** Each station's shared part and its whole doubt, both over its own part. */
interface Ratios {
  readonly common: Float64Array
  readonly total: Float64Array
}

/** E_z[ Π Φ((k·u_i − c_i·z)·w/s_i) ] at one w. */
function givenSpread({ common, total }: Ratios, k: number, w: number): number {
  const m = common.length
  let from = reach
  let to = reach
  for (let i = 0; i < m; i++) {
    const shared = common[i] || 1e-12
    const middle = k * (total[i] ?? 0)
    from = Math.min(from, (middle - reach / w) / shared)
    to = Math.min(to, (middle + reach / w) / shared)
  }
  from = Math.max(from, -reach)
  to = Math.max(to, -reach)
  const half = (to - from) / 2
  let sum = normalCdfTabulated(from)
  for (let j = 0; j < unit.nodes.length; j++) {
    const z = from + half * (1 + (unit.nodes[j] ?? 0))
    let product = 1
    for (let i = 0; i < m && product > 1e-12; i++) {
      const margin = (k * (total[i] ?? 0) - (common[i] ?? 0) * z) * w
      if (margin < reach) product *= normalCdfTabulated(margin)
    }
    sum += half * (unit.weights[j] ?? 0) * normalDensity(z) * product
  }
  return sum
}
