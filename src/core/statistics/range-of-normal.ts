import { gaussLegendre } from './gauss-legendre'
import { studentisedRangeCdf } from './studentised-range'

/** Mean and standard deviation of the range of m normal values, in units of their standard deviation: d2 and d3. */
export interface RangeOfNormal {
  readonly mean: number
  readonly deviation: number
}

/** Beyond it lies less than 1e-12 of the ranges of a hundred values. */
const furthest = 12
const places = gaussLegendre(64, 0, furthest)
const remembered = new Map<number, RangeOfNormal>()

/**
 * Mean and standard deviation of the range of m values, m a whole number of 2 or more, to 1e-6 for up to 100 values.
 * From its distribution function F: ∫(1 − F(x))·dx and 2·∫x·(1 − F(x))·dx over x ≥ 0 (integration by parts).
 */
export function rangeOfNormal(m: number): RangeOfNormal {
  const known = remembered.get(m)
  if (known) return known
  let mean = 0
  let square = 0
  places.nodes.forEach((x, i) => {
    const beyond = (places.weights[i] ?? 0) * (1 - studentisedRangeCdf(x, m, Number.POSITIVE_INFINITY))
    mean += beyond
    square += 2 * x * beyond
  })
  const found = { mean, deviation: Math.sqrt(square - mean * mean) }
  remembered.set(m, found)
  return found
}

/**
 * d2*: what the mean of the ranges of `groups` groups of m values is divided by to estimate their variance without
 * bias once squared: √(d2² + d3²/groups), which becomes d2 for many groups. Source: Duncan, Quality Control and
 * Industrial Statistics (5th ed. 1986), appendix D3, from memory; the formula follows from E(R̄²).
 */
export function meanRangeDivisor(m: number, groups: number): number {
  const { mean, deviation } = rangeOfNormal(m)
  return Math.sqrt(mean * mean + (deviation * deviation) / groups)
}
