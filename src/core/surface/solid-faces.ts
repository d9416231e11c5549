/** A face between a full cell and an empty one, or the outside. */
export interface CellFace {
  /** [row · columns + column] of the full cell. */
  readonly cell: number
  /** It looks toward the axis from the innermost layer. */
  readonly isWall: boolean
  /** [(row · columns + column) · shells + shell] of its corners, counter-clockwise seen from outside. */
  readonly corners: readonly [number, number, number, number]
}

/** Lines of a body of cells: columns close round the axis, rows go down, shells go outward. */
export interface CellLines {
  readonly columns: number
  readonly rows: number
  readonly shells: number
}

/**
 * The faces of a body made of cells between columns, rows and shells, full where `full` is 1, by
 * [(row · columns + column) · (shells − 1) + layer]: those of full cells whose neighbour is empty or outside. So
 * every edge has an even number of faces; two, where no two cells touch at an edge alone. Own derivation.
 */
export function cellFaces(full: Uint8Array, { columns, rows, shells }: CellLines): CellFace[] {
  const layers = shells - 1
  const isFull = (row: number, column: number, layer: number) =>
    row >= 0 &&
    row < rows - 1 &&
    layer >= 0 &&
    layer < layers &&
    full[(row * columns + ((column + columns) % columns)) * layers + layer] === 1
  const vertex = (row: number, column: number, shell: number) =>
    (row * columns + (column % columns)) * shells + shell
  const faces: CellFace[] = []
  for (let row = 0; row + 1 < rows; row++) {
    for (let column = 0; column < columns; column++) {
      for (let layer = 0; layer < layers; layer++) {
        if (!isFull(row, column, layer)) continue
        for (const side of sides) {
          const [down, on, out] = side.toward
          if (isFull(row + down, column + on, layer + out)) continue
          const [a, b, c, d] = side.corners
          const at = ([r, k, s]: Step) => vertex(row + r, column + k, layer + s)
          faces.push({
            cell: row * columns + column,
            isWall: out < 0 && layer === 0,
            corners: [at(a), at(b), at(c), at(d)],
          })
        }
      }
    }
  }
  return faces
}

/** Rows down, columns on, shells out. */
type Step = readonly [number, number, number]

/**
 * The six sides of a cell. Seen from outside, with the deck up, columns go on to the left, since angles run
 * clockwise seen from the deck and 90° is −x.
 */
const sides: readonly { readonly toward: Step; readonly corners: readonly [Step, Step, Step, Step] }[] = [
  {
    toward: [0, 0, 1],
    corners: [
      [0, 0, 1],
      [0, 1, 1],
      [1, 1, 1],
      [1, 0, 1],
    ],
  },
  {
    toward: [0, 0, -1],
    corners: [
      [0, 0, 0],
      [1, 0, 0],
      [1, 1, 0],
      [0, 1, 0],
    ],
  },
  {
    toward: [-1, 0, 0],
    corners: [
      [0, 0, 0],
      [0, 1, 0],
      [0, 1, 1],
      [0, 0, 1],
    ],
  },
  {
    toward: [1, 0, 0],
    corners: [
      [1, 0, 0],
      [1, 0, 1],
      [1, 1, 1],
      [1, 1, 0],
    ],
  },
  {
    toward: [0, 1, 0],
    corners: [
      [0, 1, 0],
      [1, 1, 0],
      [1, 1, 1],
      [0, 1, 1],
    ],
  },
  {
    toward: [0, -1, 0],
    corners: [
      [0, 0, 0],
      [0, 0, 1],
      [1, 0, 1],
      [1, 0, 0],
    ],
  },
]
