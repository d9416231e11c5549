import type { Port } from '../measured'
import { portAt } from '../ports/port-at'
import type { RadialScan } from './radial-scan'
import { robustSigma } from './robust-weights'
import { misfitShare } from './standing-out'
import type { RingMap } from './window-means'

/** Finer scans are averaged to so many cells at most. */
const mostColumns = 720
const mostRows = 256

/** A map of deviations with where its cells lie on the wall. */
export interface WorkingMap extends RingMap {
  /** Edges of the rows, mm: one more than there are rows. */
  readonly rowEdgesMm: readonly number[]
  /** Edges of the columns, degrees, rising over one turn: one more than there are columns. */
  readonly columnEdges: readonly number[]
  /** Robust standard deviation of a cell's value. */
  readonly sigma: number
  /** What the smooth form may be off beneath any number of cells. */
  readonly misfit: number
}

/**
 * The residuals of a scan as a map of at most 256 rows by 720 columns: neighbours of a finer scan are averaged, a
 * cell with values for less than half of it is a gap, and so is what lies in a port. `sigmaUm` is the standard
 * deviation of one residual; that of an average is estimated anew.
 */
export function workingMap(
  scan: RadialScan,
  residualUm: Float64Array,
  sigmaUm: number,
  ports: readonly Port[],
): WorkingMap {
  const { depthsMm, anglesDegrees } = scan
  const rowStarts = startsOf(depthsMm.length, mostRows)
  const columnStarts = startsOf(anglesDegrees.length, mostColumns)
  const rows = rowStarts.length - 1
  const columns = columnStarts.length - 1
  const values = new Float64Array(rows * columns)
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      values[row * columns + column] = meanOfBlock(
        residualUm,
        anglesDegrees.length,
        [rowStarts[row] ?? 0, rowStarts[row + 1] ?? 0],
        [columnStarts[column] ?? 0, columnStarts[column + 1] ?? 0],
      )
    }
  }
  const rowEdgesMm = depthEdges(depthsMm, rowStarts)
  const columnEdges = angleEdges(anglesDegrees, columnStarts)
  blankPorts(values, rowEdgesMm, columnEdges, ports)
  const isAveraged = rows < depthsMm.length || columns < anglesDegrees.length
  const sigma = isAveraged ? robustSigma(values, new Float64Array(values.length)) : sigmaUm
  return { rows, columns, values, rowEdgesMm, columnEdges, sigma, misfit: misfitShare * sigmaUm }
}

/** Where groups of neighbours begin, and the end: as few to a group as leave no more than the most. */
function startsOf(count: number, most: number): number[] {
  const size = Math.ceil(count / most)
  const groups = Math.ceil(count / size)
  return Array.from({ length: groups + 1 }, (_, group) => Math.min(count, group * size))
}

function meanOfBlock(
  values: Float64Array,
  angles: number,
  [top, bottom]: readonly [number, number],
  [left, right]: readonly [number, number],
): number {
  let sum = 0
  let count = 0
  for (let level = top; level < bottom; level++) {
    for (let angle = left; angle < right; angle++) {
      const value = values[level * angles + angle] ?? Number.NaN
      if (Number.isNaN(value)) continue
      sum += value
      count++
    }
  }
  return count * 2 >= (bottom - top) * (right - left) && count > 0 ? sum / count : Number.NaN
}

/** Midway between levels; the outermost levels themselves. */
function depthEdges(depthsMm: readonly number[], starts: readonly number[]): number[] {
  const last = depthsMm[depthsMm.length - 1] ?? 0
  return starts.map((start) => {
    if (start === 0) return depthsMm[0] ?? 0
    if (start >= depthsMm.length) return last
    return ((depthsMm[start - 1] ?? 0) + (depthsMm[start] ?? 0)) / 2
  })
}

/** Midway between angles, the first perhaps below 0, the last a turn further. */
function angleEdges(angles: readonly number[], starts: readonly number[]): number[] {
  const at = (index: number) =>
    index < 0
      ? (angles[angles.length - 1] ?? 0) - 360
      : index >= angles.length
        ? (angles[0] ?? 0) + 360
        : (angles[index] ?? 0)
  return starts.map((start) => (at(start - 1) + at(start)) / 2)
}

function blankPorts(
  values: Float64Array,
  rowEdgesMm: readonly number[],
  columnEdges: readonly number[],
  ports: readonly Port[],
): void {
  if (ports.length === 0) return
  const columns = columnEdges.length - 1
  for (let cell = 0; cell < values.length; cell++) {
    const row = Math.floor(cell / columns)
    const column = cell % columns
    const depth = middle(rowEdgesMm, row)
    if (portAt(ports, depth, middle(columnEdges, column))) values[cell] = Number.NaN
  }
}

/** The middle of a row or a column, from its edges. */
export function middle(edges: readonly number[], index: number): number {
  return ((edges[index] ?? 0) + (edges[index + 1] ?? 0)) / 2
}
