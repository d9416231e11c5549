/**
 * A symmetric positive definite system whose rows begin late: [row · size + column] of the lower half, with the first
 * column of each row that is not 0.
 */
export interface BandedSystem {
  readonly size: number
  readonly lower: Float64Array
  readonly first: Int32Array
}

/**
 * Cholesky's factor in place, within the band of each row: a row costs as much as its band is long, squared. Throws
 * for what is not positive definite. Source: Jennings, A Compact Storage Scheme for the Solution of Symmetric Linear
 * Simultaneous Equations, Comput. J. 9 (1966).
 */
export function factorBanded({ size, lower, first }: BandedSystem): void {
  for (let row = 0; row < size; row++) {
    const begin = first[row] ?? 0
    for (let column = begin; column <= row; column++) {
      let rest = lower[row * size + column] ?? 0
      for (let k = Math.max(begin, first[column] ?? 0); k < column; k++) {
        rest -= (lower[row * size + k] ?? 0) * (lower[column * size + k] ?? 0)
      }
      if (column < row) lower[row * size + column] = rest / (lower[column * size + column] ?? 1)
      else if (rest > 0) lower[row * size + row] = Math.sqrt(rest)
      else throw new RangeError(`factorBanded: expected a positive definite system, got pivot ${rest}`)
    }
  }
}

/** Solves for one right-hand side, written over with the solution, by the factor of `factorBanded`. */
export function solveBanded({ size, lower, first }: BandedSystem, values: Float64Array): void {
  for (let row = 0; row < size; row++) {
    let rest = values[row] ?? 0
    for (let k = first[row] ?? 0; k < row; k++) rest -= (lower[row * size + k] ?? 0) * (values[k] ?? 0)
    values[row] = rest / (lower[row * size + row] ?? 1)
  }
  for (let row = size - 1; row >= 0; row--) {
    const solved = (values[row] ?? 0) / (lower[row * size + row] ?? 1)
    values[row] = solved
    for (let k = first[row] ?? 0; k < row; k++)
      values[k] = (values[k] ?? 0) - (lower[row * size + k] ?? 0) * solved
  }
}
