import { drawnDiameter } from './exaggeration'
import type { Toward, WallGrid } from './wall-grid'

/** A place in bore space, mm: x, y, z. */
export type Position = readonly [x: number, y: number, z: number]

/**
 * Where a point of the wall is drawn, mm: the twin, in double precision, of what the wall's vertex shader
 * computes, kept here so that the two can be compared.
 *
 * Bore space: y runs along the axis, up; the deck lies at y = +length/2 and the depth goes down, so a depth
 * z is at y = length/2 − z. Angle 0° faces +z, toward whoever looks at the front. Angles run clockwise seen
 * from the deck, looking down −y. With +z toward the foot of the page and +x to its right, clockwise from
 * the foot leads to the left: 90° is −x, 180° is −z, 270° is +x. So x = −R·sin θ and z = R·cos θ, with R
 * half of the drawn diameter.
 *
 * `column` runs from 0 to the number of columns (the seam, column 0 again), `row` from 0 to rows − 1; whole
 * numbers are the grid's nodes, and between them angle, depth and deviation are mixed bilinearly. On its way
 * toward another wall on the same lines, each node lies that share of the way between its two deviations:
 * drawn only, no survey measured it. Own derivation.
 */
export function drawnPosition(
  grid: WallGrid,
  exaggeration: number,
  column: number,
  row: number,
  toward?: Toward,
): Position {
  const place = cellAt(grid, column, row)
  const angle = mixed(columnAngle(grid, place.column), columnAngle(grid, place.column + 1), place.across)
  const depthMm = mixed(rowDepth(grid, place.row), rowDepth(grid, place.row + 1), place.down)
  const deviationUm = deviationOnTheWay(grid, column, row, toward)
  const diameterMm = grid.middleMm + deviationUm / 1000
  const radius = drawnDiameter(grid.middleMm, exaggeration, diameterMm) / 2
  return [-radius * Math.sin(angle), grid.lengthMm / 2 - depthMm, radius * Math.cos(angle)]
}

/**
 * The same for a point of a unit square laid over the wall: u from 0 to 1 once around, starting at 0°, and v
 * from 0 at the deck to 1 at the bottom, both linear in angle and depth.
 */
export function drawnPositionOfUnit(grid: WallGrid, exaggeration: number, u: number, v: number): Position {
  const column = u === 1 ? grid.angles.length : columnAt(grid, u * 2 * Math.PI)
  return drawnPosition(grid, exaggeration, column, rowAt(grid, v * grid.lengthMm))
}

/** Diameter less the grid's middle, µm, at a node coordinate, mixed bilinearly between the nodes. */
export function deviationAt(grid: WallGrid, column: number, row: number): number {
  const { row: upper, column: left, down, across } = cellAt(grid, column, row)
  return mixed(
    mixed(deviationAtNode(grid, left, upper), deviationAtNode(grid, left + 1, upper), across),
    mixed(deviationAtNode(grid, left, upper + 1), deviationAtNode(grid, left + 1, upper + 1), across),
    down,
  )
}

/** At either end of the way exactly that wall's own. Throws where the two are not on the same lines. */
function deviationOnTheWay(grid: WallGrid, column: number, row: number, toward: Toward | undefined): number {
  const from = deviationAt(grid, column, row)
  if (!toward || toward.share <= 0) return from
  if (toward.grid.deviationsUm.length !== grid.deviationsUm.length) {
    throw new RangeError('drawnPosition: expected two walls on the same lines')
  }
  const to = deviationAt(toward.grid, column, row)
  return toward.share >= 1 ? to : mixed(from, to, toward.share)
}

/**
 * Row coordinate of a depth in mm: whole at the rows' own depths, linear in depth between them, found by
 * bisection. A depth outside the bore takes the row of its end.
 */
export function rowAt(grid: WallGrid, depthMm: number): number {
  const last = grid.depthsMm.length - 1
  if (depthMm <= rowDepth(grid, 0)) return 0
  if (depthMm >= rowDepth(grid, last)) return last
  const row = lastAtOrBefore(grid.depthsMm, depthMm)
  const from = rowDepth(grid, row)
  return row + (depthMm - from) / (rowDepth(grid, row + 1) - from)
}

/**
 * Column coordinate of an angle in rad, from 0 up to but without the number of columns: whole at the
 * columns' own angles, linear in angle between them, found by bisection. Angles are taken modulo 2π.
 */
export function columnAt(grid: WallGrid, angleRad: number): number {
  const turn = 2 * Math.PI
  const angle = ((angleRad % turn) + turn) % turn
  const column = lastAtOrBefore(grid.angles, angle)
  const from = columnAngle(grid, column)
  return (column + (angle - from) / (columnAngle(grid, column + 1) - from)) % grid.angles.length
}

/** Index of the last of the increasing values that is not beyond x; 0 where all are. */
function lastAtOrBefore(values: Float64Array, x: number): number {
  let low = 0
  let high = values.length
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (at(values, middle) <= x) low = middle
    else high = middle
  }
  return low
}

/** The cell that holds a node coordinate, with the share of the way across and down. */
function cellAt(grid: WallGrid, column: number, row: number) {
  const columns = grid.angles.length
  const rows = grid.depthsMm.length
  if (!(column >= 0 && column <= columns && row >= 0 && row <= rows - 1)) {
    throw new RangeError(
      `drawnPosition: expected a column from 0 to ${columns} and a row from 0 to ${rows - 1}, got ${column}, ${row}`,
    )
  }
  const left = Math.min(Math.floor(column), columns - 1)
  const upper = Math.min(Math.floor(row), rows - 2)
  return { column: left, row: upper, across: column - left, down: row - upper }
}

function mixed(from: number, to: number, share: number): number {
  return from * (1 - share) + to * share
}

function columnAngle(grid: WallGrid, column: number): number {
  return column >= grid.angles.length ? 2 * Math.PI : at(grid.angles, column)
}

function rowDepth(grid: WallGrid, row: number): number {
  return at(grid.depthsMm, row)
}

function deviationAtNode(grid: WallGrid, column: number, row: number): number {
  const columns = grid.angles.length
  return at(grid.deviationsUm, row * columns + (column % columns))
}

function at(values: Float64Array | Float32Array, index: number): number {
  const value = values[index]
  if (value === undefined) {
    throw new RangeError(`drawnPosition: expected an index below ${values.length}, got ${index}`)
  }
  return value
}
