import { BufferAttribute, BufferGeometry } from 'three'
import type { WallGrid } from '../core/surface/wall-grid'

/** Columns gone down at a time: few enough that the row above is still at hand in the vertex cache. */
const stripColumns = 6

/** Which nodes become vertices: every so many columns and rows, the last of each always. */
interface Strides {
  readonly columns: number
  readonly rows: number
}

/** For the glass wall, which carries no colour: its silhouette is all that could tell the difference. */
const glassStrides: Strides = { columns: 2, rows: 4 }

/**
 * The unit grid that the wall's shader displaces: a vertex for each node of the wall's grid and one more
 * column to close the seam. Triangles face away from the axis.
 */
export function wallGeometry(columns: number, rows: number): BufferGeometry {
  return geometryOf(columns, rows, { columns: 1, rows: 1 })
}

/** The same with fewer vertices. */
export function glassGeometry(columns: number, rows: number): BufferGeometry {
  return geometryOf(columns, rows, glassStrides)
}

/** The same as the wall, of the cells with a proven corner only. */
export function provenGeometry(grid: WallGrid): BufferGeometry {
  const columns = grid.angles.length
  return geometryOf(columns, grid.depthsMm.length, { columns: 1, rows: 1 }, (row, column) => {
    const next = (column + 1) % columns
    const [upper, lower] = [row * columns, (row + 1) * columns]
    return [upper + column, upper + next, lower + column, lower + next].some((node) => grid.proven[node])
  })
}

function geometryOf(
  columns: number,
  rows: number,
  strides: Strides,
  isWanted: (row: number, column: number) => boolean = () => true,
): BufferGeometry {
  const columnsUsed = stepped(columns, strides.columns)
  const rowsUsed = stepped(rows - 1, strides.rows)
  const geometry = new BufferGeometry()
  const node = Float32Array.from(rowsUsed.flatMap((row) => columnsUsed.flatMap((column) => [column, row])))
  geometry.setAttribute('node', new BufferAttribute(node, 2))
  const index: number[] = []
  for (const [row, column] of cellsInStrips(columnsUsed.length - 1, rowsUsed.length - 1)) {
    if (!isWanted(row, column)) continue
    const upper = row * columnsUsed.length + column
    const lower = upper + columnsUsed.length
    index.push(upper, upper + 1, lower, upper + 1, lower + 1, lower)
  }
  geometry.setIndex(new BufferAttribute(new Uint32Array(index), 1))
  return geometry
}

/** 0, then every so many, and the last. */
function stepped(last: number, stride: number): readonly number[] {
  const steps = Math.ceil(last / stride)
  return Array.from({ length: steps + 1 }, (_, step) => Math.min(last, step * stride))
}

function* cellsInStrips(columns: number, rows: number): Generator<readonly [row: number, column: number]> {
  for (let strip = 0; strip < columns; strip += stripColumns) {
    for (let row = 0; row < rows; row++) {
      for (let column = strip; column < Math.min(columns, strip + stripColumns); column++) yield [row, column]
    }
  }
}
