/** Lower triangular L with L·Lᵀ = K, row by row: [row · size + column]. */
export interface CholeskyFactor {
  readonly size: number
  readonly lower: Float64Array
}

/** A pivot below this share of the largest entry is rounding: its place follows from those before it. */
const roundingShare = 1e-12

/**
 * Cholesky's factor of a symmetric positive definite matrix, row by row. What is not positive definite throws.
 * With `semidefinite`, a pivot that is nothing but rounding leaves an empty column: drawn from such a factor, a
 * place that lies on another takes the same value. Accuracy: rounding. Source: Golub and Van Loan, Matrix
 * Computations, 4.2 (from memory).
 */
export function choleskyFactor(matrix: Float64Array, size: number, semidefinite = false): CholeskyFactor {
  if (matrix.length !== size * size) {
    throw new RangeError(`choleskyFactor: expected ${size} × ${size} entries, got ${matrix.length}`)
  }
  const lower = new Float64Array(size * size)
  const least = roundingShare * largestOnDiagonal(matrix, size)
  for (let column = 0; column < size; column++) {
    const pivot = at(matrix, column * size + column) - dot(lower, column, column, column, size)
    if (!(pivot > least)) {
      if (semidefinite && pivot >= -least * size) continue
      throw new RangeError(`choleskyFactor: expected a positive definite matrix, got pivot ${pivot}`)
    }
    const root = Math.sqrt(pivot)
    lower[column * size + column] = root
    for (let row = column + 1; row < size; row++) {
      const rest = at(matrix, row * size + column) - dot(lower, row, column, column, size)
      lower[row * size + column] = rest / root
    }
  }
  return { size, lower }
}

/** x with L·Lᵀ·x = values, for a factor without empty columns. Throws where the sizes differ. */
export function solvedBy({ size, lower }: CholeskyFactor, values: ArrayLike<number>): Float64Array {
  if (values.length !== size) throw new RangeError(`solvedBy: expected ${size} values, got ${values.length}`)
  const x = Float64Array.from(values)
  for (let row = 0; row < size; row++) {
    let rest = at(x, row)
    for (let k = 0; k < row; k++) rest -= at(lower, row * size + k) * at(x, k)
    x[row] = rest / at(lower, row * size + row)
  }
  for (let row = size - 1; row >= 0; row--) {
    let rest = at(x, row)
    for (let k = row + 1; k < size; k++) rest -= at(lower, k * size + row) * at(x, k)
    x[row] = rest / at(lower, row * size + row)
  }
  return x
}

/** Sum over the first `count` columns of the products of two rows. */
function dot(lower: Float64Array, one: number, other: number, count: number, size: number): number {
  let sum = 0
  for (let k = 0; k < count; k++) sum += at(lower, one * size + k) * at(lower, other * size + k)
  return sum
}

function largestOnDiagonal(matrix: Float64Array, size: number): number {
  let largest = 0
  for (let i = 0; i < size; i++) largest = Math.max(largest, at(matrix, i * size + i))
  return largest
}

function at(values: Float64Array, index: number): number {
  const value = values[index]
  if (value === undefined) throw new RangeError(`cholesky: no entry ${index} among ${values.length}`)
  return value
}
