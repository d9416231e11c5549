import { deviationOfEstimate } from './deviation-of-estimate'
import { gaussLegendre } from './gauss-legendre'
import { normalCdfTabulated, normalDensity } from './normal'
import { quantileOfDistribution } from './root'

/** A station's doubt in two parts, in one unit: shared with the other stations, and its own. */
export interface DoubtParts {
  readonly common: number
  readonly individual: number
}

const shared = gaussLegendre(36, -5, 5)
const sharedDensity = shared.nodes.map((z, i) => normalDensity(z) * (shared.weights[i] ?? 0))

/**
 * The factor k_m such that, with every true value exactly at the limit, the chance that any of the m
 * stations reads past it by k_m·u is 5 %. One station at the limit errs in 5 % of cases by its own rule;
 * any of many errs far more often, and this factor takes that back.
 *
 * Solves E_{z,w}[ Π Φ((k·u_i − c_i·z)·w/s_i) ] = p with u_i² = c_i² + s_i², z standard normal (the shared
 * error) and w = √(χ²_ν/ν) (the individual part is estimated with ν degrees of freedom; the common part
 * counts as known). Own derivation: given z and w the stations err independently. Accurate to 1e-3.
 */
export function largestOfStationsFactor(
  stations: readonly DoubtParts[],
  degreesOfFreedom: number,
  p = 0.95,
): number {
  if (stations.length === 0) throw new RangeError('largestOfStationsFactor: no stations')
  const { nodes: spread, weights: spreadWeights } = deviationOfEstimate(degreesOfFreedom)
  const m = stations.length
  const common = Float64Array.from(stations, (s) => s.common / (s.individual || 1e-12))
  const total = Float64Array.from(
    stations,
    (s) => Math.hypot(s.common, s.individual) / (s.individual || 1e-12),
  )
  const probability = (k: number) => {
    let sum = 0
    for (let j = 0; j < shared.nodes.length; j++) {
      const z = shared.nodes[j] ?? 0
      let given = 0
      for (let l = 0; l < spread.length; l++) {
        const w = spread[l] ?? 1
        let product = 1
        for (let i = 0; i < m; i++) {
          const margin = (k * (total[i] ?? 0) - (common[i] ?? 0) * z) * w
          if (margin < 6) product *= normalCdfTabulated(margin)
        }
        given += (spreadWeights[l] ?? 0) * product
      }
      sum += (sharedDensity[j] ?? 0) * given
    }
    return sum
  }
  return quantileOfDistribution(probability, p, 1.5, 4, 1e-4)
}
