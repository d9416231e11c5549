import { columnAt, deviationAt as deviationAtNode, rowAt } from '../core/surface/drawn-position'
import type { WallGrid } from '../core/surface/wall-grid'

/**
 * Deviation of the drawn wall, µm on the diameter, at a depth in mm and an angle in rad, mixed as the shader
 * mixes it. Depths past the ends read as the ends.
 */
export function deviationAt(grid: WallGrid, depthMm: number, angle: number): number {
  return deviationAtNode(grid, columnAt(grid, angle), rowAt(grid, depthMm))
}

/** Index of the node nearest to a place, by rows and columns. */
export function nearestNode(grid: WallGrid, depthMm: number, angle: number): number {
  const columns = grid.angles.length
  return Math.round(rowAt(grid, depthMm)) * columns + (Math.round(columnAt(grid, angle)) % columns)
}
