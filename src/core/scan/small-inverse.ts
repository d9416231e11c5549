/**
 * The inverse of a small square matrix, row by row, by elimination with the largest pivot of each column; undefined
 * where a pivot is nothing but rounding.
 */
export function smallInverse(matrix: Float64Array, size: number): Float64Array | undefined {
  const work = Float64Array.from(matrix)
  const inverse = new Float64Array(size * size)
  for (let i = 0; i < size; i++) inverse[i * (size + 1)] = 1
  for (let column = 0; column < size; column++) {
    const pivotRow = largestBelow(work, column, size)
    const pivot = work[pivotRow * size + column] ?? 0
    if (!(Math.abs(pivot) > 1e-13)) return undefined
    for (const part of [work, inverse]) {
      for (let k = 0; k < size; k++) {
        const kept = part[column * size + k] ?? 0
        part[column * size + k] = (part[pivotRow * size + k] ?? 0) / pivot
        if (pivotRow !== column) part[pivotRow * size + k] = kept
      }
    }
    for (let row = 0; row < size; row++) {
      const factor = work[row * size + column] ?? 0
      if (row === column || factor === 0) continue
      for (const part of [work, inverse]) {
        for (let k = 0; k < size; k++) {
          part[row * size + k] = (part[row * size + k] ?? 0) - factor * (part[column * size + k] ?? 0)
        }
      }
    }
  }
  return inverse
}

function largestBelow(work: Float64Array, column: number, size: number): number {
  let best = column
  for (let row = column + 1; row < size; row++) {
    if (Math.abs(work[row * size + column] ?? 0) > Math.abs(work[best * size + column] ?? 0)) best = row
  }
  return best
}
