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

/** For a wall of many nodes while the eye moves: a quarter of the triangles, and no more than so many columns and rows. */
const coarse = { columns: 256, rows: 128 }

/**
 * The unit grid that the wall's shader displaces: a vertex for each node of the wall's grid and one more
 * column to close the seam. Triangles face away from the axis.
 */
export function wallGeometry(columns: number, rows: number): BufferGeometry {
  return geometryOf(columns, rows, { columns: 1, rows: 1 })
}

/** The same from every second node or fewer. */
export function coarseGeometry(columns: number, rows: number): BufferGeometry {
  const stride = (of: number, most: number) => Math.max(2, Math.ceil(of / most))
  return geometryOf(columns, rows, {
    columns: stride(columns, coarse.columns),
    rows: stride(rows, coarse.rows),
  })
}

/** The same with fewer vertices. */
export function glassGeometry(columns: number, rows: number): BufferGeometry {
  return geometryOf(columns, rows, glassStrides)
}

/** The same as the wall, of the cells with a proven corner only. */
export function provenGeometry(grid: WallGrid): BufferGeometry {
  const columns = grid.angles.length
  const { proven } = grid
  return geometryOf(columns, grid.depthsMm.length, { columns: 1, rows: 1 }, (row, column) => {
    const next = (column + 1) % columns
    const [upper, lower] = [row * columns, (row + 1) * columns]
    const corner = (node: number) => (proven[node] ?? 0) > 0
    return corner(upper + column) || corner(upper + next) || corner(lower + column) || corner(lower + next)
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
  const across = columnsUsed.length
  const node = new Float32Array(2 * across * rowsUsed.length)
  for (let at = 0; at < node.length / 2; at++) {
    node[2 * at] = columnsUsed[at % across] ?? 0
    node[2 * at + 1] = rowsUsed[Math.floor(at / across)] ?? 0
  }
  const geometry = new BufferGeometry()
  geometry.setAttribute('node', new BufferAttribute(node, 2))
  const corners = new Uint32Array(6 * (across - 1) * (rowsUsed.length - 1))
  let count = 0
  for (let strip = 0; strip < across - 1; strip += stripColumns) {
    const end = Math.min(across - 1, strip + stripColumns)
    for (let row = 0; row < rowsUsed.length - 1; row++) {
      for (let column = strip; column < end; column++) {
        if (!isWanted(row, column)) continue
        const upper = row * across + column
        const lower = upper + across
        corners[count++] = upper
        corners[count++] = upper + 1
        corners[count++] = lower
        corners[count++] = upper + 1
        corners[count++] = lower + 1
        corners[count++] = lower
      }
    }
  }
  geometry.setIndex(new BufferAttribute(corners.slice(0, count), 1))
  return geometry
}

/** 0, then every so many, and the last. */
function stepped(last: number, stride: number): readonly number[] {
  const steps = Math.ceil(last / stride)
  return Array.from({ length: steps + 1 }, (_, step) => Math.min(last, step * stride))
}
