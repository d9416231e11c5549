import { gridOf } from '../../../src/core/surface/grid-of'
import { wallOf } from '../../../src/core/surface/wall'
import type { WallGrid } from '../../../src/core/surface/wall-grid'
import { made, type Plan } from '../core/surface/invented-cylinder'

/** A made-up bore as the picture gets it. */
export function drawn(plan: Plan, rows = 33, columns = 48) {
  const { bore, finding } = made(plan)
  const wall = wallOf(bore, finding)
  if (!wall) throw new Error('expected a wall')
  return { bore, finding, grid: gridOf(wall, finding, { rows, columns }) }
}

/** A wall with one deviation all over, µm, 80 mm long about 54 mm: even lines, nothing hatched or proven. */
export function evenGrid(
  deviationUm: (row: number, column: number) => number,
  rows = 9,
  columns = 12,
): WallGrid {
  const deviationsUm = Float32Array.from({ length: rows * columns }, (_, node) =>
    deviationUm(Math.floor(node / columns), node % columns),
  )
  return {
    middleMm: 54,
    lengthMm: 80,
    depthsMm: Float64Array.from({ length: rows }, (_, row) => (row / (rows - 1)) * 80),
    angles: Float64Array.from({ length: columns }, (_, column) => (column / columns) * 2 * Math.PI),
    deviationsUm,
    hatched: new Uint8Array((rows - 1) * columns),
    proven: new Uint8Array(rows * columns),
    doubtUm: Float32Array.from({ length: rows * columns * 4 }, (_, index) => (index % 4 < 2 ? -1 : 1) * 1e9),
  }
}
