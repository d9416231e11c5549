import type { Quadrature } from './gauss-legendre'

/**
 * Gauss–Hermite nodes and weights for the mean of a function of a standard normal variable, lowest first; the
 * weights sum to 1. Exact for polynomials up to degree 2n − 1; nodes by Newton's method on the Hermite
 * polynomial of the normal density, accurate to 1e-14 up to 20 nodes. `n` is a whole number from 1 to 20.
 * Source: Abramowitz & Stegun, Handbook of Mathematical Functions, 25.4.46 (1964), with x scaled by √2.
 */
export function gaussHermite(n: number): Quadrature {
  if (!(Number.isInteger(n) && n >= 1 && n <= 20)) throw new RangeError(`gaussHermite: ${n} nodes`)
  const roots: number[] = []
  // The largest root is below √(4n + 2); each found root is divided out, so that the next lower one is met.
  let above = Math.sqrt(4 * n + 2)
  while (roots.length < n) {
    const root = rootBelow(above, n, roots)
    roots.unshift(root)
    above = root - 1e-3
  }
  const weights = roots.map((root) => 1 / (n * normalised(root, n - 1) ** 2))
  return { nodes: Float64Array.from(roots), weights: Float64Array.from(weights) }
}

function rootBelow(start: number, n: number, found: readonly number[]): number {
  let x = start
  for (let step = 0; step < 100; step++) {
    const logSlope = (Math.sqrt(n) * normalised(x, n - 1)) / normalised(x, n)
    const divided = found.reduce((sum, root) => sum - 1 / (x - root), logSlope)
    const change = 1 / divided
    if (!Number.isFinite(change)) return x
    x -= change
    if (Math.abs(change) < 1e-15 * (1 + Math.abs(x))) return x
  }
  return x
}

/** The Hermite polynomial of degree n, He_n(x)/√n!. */
function normalised(x: number, n: number): number {
  let value = 1
  let before = 0
  for (let k = 1; k <= n; k++) {
    const next = (x * value - Math.sqrt(k - 1) * before) / Math.sqrt(k)
    before = value
    value = next
  }
  return value
}
