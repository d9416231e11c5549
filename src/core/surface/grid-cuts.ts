import { columnAt } from './drawn-position'
import type { WallGrid } from './wall-grid'

/** A point of the wall where it is cut open, with what is known there. */
export interface CutPoint {
  /** Along the cut: rad around a section, mm down a profile. */
  readonly at: number
  /** Diameter less the grid's middle, µm. */
  readonly deviationUm: number
  /** Below firm, inside from, inside to, above firm, µm; infinite where there is no such limit. */
  readonly doubtUm: readonly [number, number, number, number]
  /** 1 proven above, 2 proven below, in a patch that holds a station with that verdict. */
  readonly proven: number
  /** Nobody measured between this point and the next. */
  readonly hatchedAfter: boolean
}

/**
 * The wall cut across at a level: its points once around, from 0 to 2π rad, the last the first again. Between two
 * points nobody measured where nobody did on either side of the level. The points are the grid's own: this is the
 * wall as it is drawn everywhere. Throws for a depth, mm, that is no row of the grid; every level is one.
 */
export function sectionCut(grid: WallGrid, depthMm: number): CutPoint[] {
  const row = grid.depthsMm.indexOf(depthMm)
  if (row < 0) throw new RangeError(`sectionCut: expected the depth of a row, got ${depthMm}`)
  const columns = grid.angles.length
  return Array.from({ length: columns + 1 }, (_, i) => {
    const column = i % columns
    const hatchedAfter = isHatched(grid, row - 1, column) && isHatched(grid, row, column)
    return pointOf(grid, row, column, i === columns ? 2 * Math.PI : (grid.angles[column] ?? 0), hatchedAfter)
  })
}

/**
 * The wall cut along its depth at the column nearest to an angle, rad: every axis is one, both ends. Its points
 * run from the deck, 0 mm, to the bottom. Between two points nobody measured where nobody did on either side of
 * the column.
 */
export function profileCut(grid: WallGrid, angleRad: number): CutPoint[] {
  const columns = grid.angles.length
  const column = Math.round(columnAt(grid, angleRad)) % columns
  const before = (column + columns - 1) % columns
  return Array.from(grid.depthsMm, (depthMm, row) => {
    const hatchedAfter = isHatched(grid, row, before) && isHatched(grid, row, column)
    return pointOf(grid, row, column, depthMm, hatchedAfter)
  })
}

function pointOf(grid: WallGrid, row: number, column: number, at: number, hatchedAfter: boolean): CutPoint {
  const index = row * grid.angles.length + column
  const doubt = (edge: number) => grid.doubtUm[index * 4 + edge] ?? Number.NaN
  return {
    at,
    deviationUm: grid.deviationsUm[index] ?? Number.NaN,
    doubtUm: [doubt(0), doubt(1), doubt(2), doubt(3)],
    proven: grid.proven[index] ?? 0,
    hatchedAfter,
  }
}

/** Whether nobody measured in a cell; there is no wall above the first row of cells, nor below the last. */
function isHatched({ hatched, angles, depthsMm }: WallGrid, row: number, column: number): boolean {
  if (row < 0 || row >= depthsMm.length - 1) return true
  return hatched[row * angles.length + column] === 1
}
