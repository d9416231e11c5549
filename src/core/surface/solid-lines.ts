import type { Port } from '../measured'
import { portWidthDegrees } from '../ports/port-at'
import type { WallGrid } from './wall-grid'

/** A port's edge nearer than this to a line that is there already shares it. */
const oneColumn = 1e-4
const oneRowMm = 0.01

const radians = Math.PI / 180

/**
 * Angles of a model's columns, rad in [0, 2π), increasing: those of the grid, both edges of each port, and both
 * edges of a groove about 0° of this half-width. An edge within 0.0001 rad of another column shares it.
 */
export function portColumns(grid: WallGrid, ports: readonly Port[], grooveHalfWidth: number): Float64Array {
  const turn = 2 * Math.PI
  const into = (angle: number) => ((angle % turn) + turn) % turn
  const edges = ports
    .filter((port) => portWidthDegrees(port) < 360)
    .flatMap((port) => [port.fromDegrees * radians, port.toDegrees * radians])
  const columns = [...grid.angles]
  for (const edge of [grooveHalfWidth, -grooveHalfWidth, ...edges].map(into)) {
    const apart = (column: number) => Math.min(Math.abs(column - edge), turn - Math.abs(column - edge))
    if (columns.every((column) => apart(column) > oneColumn)) columns.push(edge)
  }
  return Float64Array.from(columns).sort()
}

/**
 * Depths of a model's rows, mm, increasing: those of the grid, both edges of each port within the bore, and the
 * end of a groove. An edge within 0.01 mm of another row shares it.
 */
export function portRows(grid: WallGrid, ports: readonly Port[], grooveEndMm: number): Float64Array {
  const rows = [...grid.depthsMm]
  for (const edge of [grooveEndMm, ...ports.flatMap((port) => [port.fromDepthMm, port.toDepthMm])]) {
    const isWithin = edge > 0 && edge < grid.lengthMm
    if (isWithin && rows.every((row) => Math.abs(row - edge) > oneRowMm)) rows.push(edge)
  }
  return Float64Array.from(rows).sort()
}

/**
 * Open cells, [row · columns + column], closed round, with more opened until no two touch at a corner alone: an
 * edge there would belong to four faces.
 */
export function withoutCornerContacts(open: Uint8Array, columns: number): Uint8Array {
  const opened = Uint8Array.from(open)
  for (let isDone = false; !isDone; ) {
    isDone = true
    for (let upper = 0; upper + columns < opened.length; upper++) {
      const start = upper - (upper % columns)
      const next = start + ((upper + 1 - start) % columns)
      const cells = [opened[upper], opened[next], opened[next + columns], opened[upper + columns]]
      if (cells[0] !== cells[2] || cells[1] !== cells[3] || cells[0] === cells[1]) continue
      opened[cells[0] ? next : upper] = 1
      isDone = false
    }
  }
  return opened
}
