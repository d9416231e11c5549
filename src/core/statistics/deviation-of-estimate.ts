import { gaussHermite } from './gauss-hermite'
import { gaussLegendre, type Quadrature } from './gauss-legendre'

const remembered = new Map<string, Quadrature>()

/**
 * Nodes and weights for an expectation over w = √(χ²_ν/ν), the ratio of an estimated standard deviation
 * to the true one. The weights sum to 1. For ν = ∞ there is one node, 1.
 *
 * Own derivation: the density of w is proportional to w^(ν−1)·exp(−ν·w²/2); its constant need not be
 * known, since the weights are divided by their sum. The integral is taken over v = √w, which crowds the
 * nodes where few degrees of freedom need them, and ends where the density has fallen by e⁻²¹ from its
 * top. Accurate to 1e-9 for integrands as smooth as the density itself; one that rises steeply within it (the
 * distribution of a range of many values) needs more `points` than one that does not.
 */
export function deviationOfEstimate(degreesOfFreedom: number, points: number): Quadrature {
  const key = `${degreesOfFreedom} ${points}`
  const known = remembered.get(key)
  if (known) return known
  const made = make(degreesOfFreedom, points)
  remembered.set(key, made)
  return made
}

function make(nu: number, points: number): Quadrature {
  if (!(nu > 0)) throw new RangeError(`deviationOfEstimate: degrees of freedom ${nu}`)
  if (nu > 1e7) return { nodes: Float64Array.of(1), weights: Float64Array.of(1) }
  const logDensity = (v: number) => (2 * nu - 1) * Math.log(v) - (nu * v ** 4) / 2
  const top = ((2 * nu - 1) / (2 * nu)) ** 0.25
  const floor = logDensity(top) - 21
  const step = 0.1 / Math.sqrt(nu)
  let to = top
  while (logDensity(to) > floor) to += step
  let from = top
  while (from > step && logDensity(from) > floor) from -= step
  if (from <= step) from = 0
  const { nodes, weights } = gaussLegendre(points, from, to)
  let sum = 0
  for (let i = 0; i < nodes.length; i++) {
    const v = nodes[i] ?? 1
    const weight = (weights[i] ?? 0) * Math.exp(logDensity(v) - logDensity(top))
    nodes[i] = v * v
    weights[i] = weight
    sum += weight
  }
  for (let i = 0; i < weights.length; i++) weights[i] = (weights[i] ?? 0) / sum
  return { nodes, weights }
}

/**
 * The same expectation with far fewer nodes, for many degrees of freedom: (χ²_ν/ν)^⅓ is nearly normal with
 * mean 1 − 2/(9ν) and variance 2/(9ν), and the ratio of its density to the normal one goes into the weights,
 * which sum to 1. For the distribution of the largest of up to 100 values 7 points from ν = 16, 5 from ν = 30
 * and 3 from ν = 100 give the quantile of 95 % within 8e-4 (tested).
 * Source: Wilson & Hilferty, Proc. Natl. Acad. Sci. 17 (1931) 684–688, the cube root; the rest own derivation.
 */
export function deviationOfLargeEstimate(degreesOfFreedom: number, points: number): Quadrature {
  const key = `normal ${degreesOfFreedom} ${points}`
  const known = remembered.get(key)
  if (known) return known
  const made = makeNearlyNormal(degreesOfFreedom, points)
  remembered.set(key, made)
  return made
}

function makeNearlyNormal(nu: number, points: number): Quadrature {
  if (!(nu >= 16)) throw new RangeError(`deviationOfLargeEstimate: degrees of freedom ${nu}`)
  if (nu > 1e7) return { nodes: Float64Array.of(1), weights: Float64Array.of(1) }
  const mean = 1 - 2 / (9 * nu)
  const deviation = Math.sqrt(2 / (9 * nu))
  const logDensity = (x: number) => (1.5 * nu - 1) * Math.log(x) - (nu * x ** 3) / 2
  const normal = gaussHermite(points)
  const roots = normal.nodes.map((z) => mean + deviation * z)
  const weights = normal.weights.map((weight, i) => {
    const z = normal.nodes[i] ?? 0
    return weight * Math.exp(logDensity(roots[i] ?? 1) - logDensity(mean) + (z * z) / 2)
  })
  const sum = weights.reduce((total, weight) => total + weight, 0)
  return { nodes: roots.map((x) => x ** 1.5), weights: weights.map((weight) => weight / sum) }
}
