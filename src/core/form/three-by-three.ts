/** Three numbers. */
export type Vector = readonly [number, number, number]
/** Three rows of three. */
export type Matrix = readonly [Vector, Vector, Vector]

/** The scalar product. */
export function dot(one: Vector, other: Vector): number {
  return one[0] * other[0] + one[1] * other[1] + one[2] * other[2]
}

function cross(one: Vector, other: Vector): Vector {
  return [
    one[1] * other[2] - one[2] * other[1],
    one[2] * other[0] - one[0] * other[2],
    one[0] * other[1] - one[1] * other[0],
  ]
}

/** XᵀX of the rows of X. */
export function normalMatrix(rows: readonly Vector[]): Matrix {
  const total = (i: 0 | 1 | 2, j: 0 | 1 | 2) => rows.reduce((sum, row) => sum + row[i] * row[j], 0)
  return [
    [total(0, 0), total(0, 1), total(0, 2)],
    [total(0, 1), total(1, 1), total(1, 2)],
    [total(0, 2), total(1, 2), total(2, 2)],
  ]
}

/** The inverse of a regular symmetric matrix, by its cofactors. */
export function inverseOf([first, second, third]: Matrix): Matrix {
  const scale = 1 / dot(first, cross(second, third))
  const times = (v: Vector): Vector => [v[0] * scale, v[1] * scale, v[2] * scale]
  return [times(cross(second, third)), times(cross(third, first)), times(cross(first, second))]
}
