import { studentTail } from './student-tail'

/**
 * Probability that a standard normal variable is at most z. Absolute error below 1e-15.
 * Source: Student's t with infinitely many degrees of freedom.
 */
export function normalCdf(z: number): number {
  const tail = studentTail(Math.abs(z), Number.POSITIVE_INFINITY)
  return z < 0 ? tail : 1 - tail
}

/** Density of the standard normal distribution at z. */
export function normalDensity(z: number): number {
  return Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI)
}

const stepsPerUnit = 64
const tableEnd = 9
const tableSize = 2 * tableEnd * stepsPerUnit + 1
const tableCdf = new Float64Array(tableSize)
const tableDensity = new Float64Array(tableSize)
for (let i = 0; i < tableSize; i++) {
  const z = i / stepsPerUnit - tableEnd
  tableCdf[i] = normalCdf(z)
  tableDensity[i] = normalDensity(z)
}

/**
 * The same probability by cubic Hermite interpolation in a table with a step of 1/64, for integrals that
 * need it some ten thousand times. Absolute error below 3e-10 (h⁴/384 · max|φ‴|; own derivation, tested).
 */
export function normalCdfTabulated(z: number): number {
  if (z <= -tableEnd) return 0
  if (z >= tableEnd) return 1
  const position = (z + tableEnd) * stepsPerUnit
  const i = Math.floor(position)
  const t = position - i
  const a = tableCdf[i] ?? 0
  const b = tableCdf[i + 1] ?? 1
  const slopeA = (tableDensity[i] ?? 0) / stepsPerUnit
  const slopeB = (tableDensity[i + 1] ?? 0) / stepsPerUnit
  const rise = b - a
  return a + t * (slopeA + t * (3 * rise - 2 * slopeA - slopeB + t * (slopeA + slopeB - 2 * rise)))
}
