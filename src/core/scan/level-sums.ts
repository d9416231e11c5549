import type { TurnTable } from './turn-table'

/**
 * What one level brings to a least-squares fit of harmonics: the normal matrix and right-hand side for the functions
 * 1, cos θ, sin θ, cos 2θ, sin 2θ … in this order, 2·harmonics + 1 of them, the matrix whole and row by row.
 */
export interface LevelSums {
  readonly matrix: Float64Array
  readonly right: Float64Array
  /** Room to work in: sums of cosines and of sines, and values with their weights. */
  readonly cosineSums: Float64Array
  readonly sineSums: Float64Array
  readonly weighted: Float64Array
}

/**
 * The weighted sums of a level, values from `start` in a scan's row, places without a weight left out. The table must
 * go up to twice the harmonics: a product of two of them is the half sum of two others, so that the matrix needs 4 sums
 * for each harmonic. Own derivation from the addition theorems.
 */
export function levelSums(
  values: Float64Array,
  weights: Float64Array,
  start: number,
  table: TurnTable,
  harmonics: number,
  into: LevelSums,
): void {
  const { angles, cosines, sines } = table
  const { cosineSums, sineSums, weighted } = into
  for (let i = 0; i < angles; i++) {
    const weight = weights[start + i] ?? 0
    weighted[i] = weight > 0 ? weight * (values[start + i] ?? 0) : 0
  }
  for (let m = 0; m <= harmonics; m++) {
    let c = 0
    let s = 0
    let valueC = 0
    let valueS = 0
    for (let i = 0, at = m * angles; i < angles; i++, at++) {
      const weight = weights[start + i] ?? 0
      const value = weighted[i] ?? 0
      const cosine = cosines[at] ?? 0
      const sine = sines[at] ?? 0
      c += weight * cosine
      s += weight * sine
      valueC += value * cosine
      valueS += value * sine
    }
    cosineSums[m] = c
    sineSums[m] = s
    if (m > 0) into.right[2 * m - 1] = valueC
    into.right[2 * m] = m > 0 ? valueS : valueC
  }
  for (let m = harmonics + 1; m <= 2 * harmonics; m++) {
    let c = 0
    let s = 0
    for (let i = 0, at = m * angles; i < angles; i++, at++) {
      const weight = weights[start + i] ?? 0
      c += weight * (cosines[at] ?? 0)
      s += weight * (sines[at] ?? 0)
    }
    cosineSums[m] = c
    sineSums[m] = s
  }
  fillMatrix(cosineSums, sineSums, harmonics, into.matrix)
}

/** Room for the sums of a level. */
export function roomForSums(harmonics: number, angles: number): LevelSums {
  const size = 2 * harmonics + 1
  return {
    matrix: new Float64Array(size * size),
    right: new Float64Array(size),
    cosineSums: new Float64Array(size),
    sineSums: new Float64Array(size),
    weighted: new Float64Array(angles),
  }
}

function fillMatrix(c: Float64Array, s: Float64Array, harmonics: number, matrix: Float64Array): void {
  const size = 2 * harmonics + 1
  const put = (row: number, column: number, value: number) => {
    matrix[row * size + column] = value
    matrix[column * size + row] = value
  }
  put(0, 0, c[0] ?? 0)
  for (let m = 1; m <= harmonics; m++) {
    put(2 * m - 1, 0, c[m] ?? 0)
    put(2 * m, 0, s[m] ?? 0)
    for (let n = m; n <= harmonics; n++) {
      const cosineSum = c[m + n] ?? 0
      const cosineDifference = c[n - m] ?? 0
      const sineSum = s[m + n] ?? 0
      const sineDifference = s[n - m] ?? 0
      put(2 * n - 1, 2 * m - 1, (cosineDifference + cosineSum) / 2)
      put(2 * n, 2 * m, (cosineDifference - cosineSum) / 2)
      put(2 * n, 2 * m - 1, (sineSum + sineDifference) / 2)
      put(2 * n - 1, 2 * m, (sineSum - sineDifference) / 2)
    }
  }
}
