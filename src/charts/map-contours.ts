import { contours } from 'd3-contour'
import type { LimitPair } from '../core/findings'
import type { WallGrid } from '../core/surface/wall-grid'
import { acrossOf, downOf, type MapScale } from './map-scale'

/** Paths of the map, in pixels: where a quantity of the wall exceeds a value. */
export interface MapContours {
  /** Bands of colour from the tight end on: each covers the wall at or above its deviation, µm. */
  readonly bands: readonly { readonly fromUm: number; readonly path: string }[]
  readonly isoLines: readonly { readonly um: number; readonly path: string }[]
  /** Too close to call at the max, at the min. */
  readonly doubtMax?: string
  readonly doubtMin?: string
  /** Where the wall crosses the limits drawn. */
  readonly crossingMax?: string
  readonly crossingMin?: string
  readonly provenAbove?: string
  readonly provenBelow?: string
  /** Of a difference: where it may be none, and the edge of where it stands out. */
  readonly withinDoubt?: string
  readonly standsOut?: string
}

/** Deviations beyond this stand for the infinite edges of limits that are not given, µm. */
const farUm = 1e6
const bandCount = 28

/** The columns of the grid turned so that the map starts and ends at 180°. */
interface Turned {
  readonly columns: number
  readonly depthsMm: Float64Array
  /** Across in pixels, one more than columns: the first again at the far edge. */
  readonly across: Float64Array
  readonly order: Uint32Array
}

export function mapContours(
  grid: WallGrid,
  scale: MapScale,
  pair: LimitPair | undefined,
  span: { lowUm: number; highUm: number },
  isoStepUm: number,
  isDifference = false,
): MapContours {
  const turned = turn(grid, scale)
  const deviations = fieldOf(grid, turned, (i) => grid.deviationsUm[i] ?? 0)
  const path = (field: Float64Array, value: number) => pathOf(field, value, turned, scale)
  const { low, high } = rangeOf(grid.deviationsUm)
  const maxUm = pair?.maxMm === undefined ? undefined : (pair.maxMm - grid.middleMm) * 1000
  const minUm = pair?.minMm === undefined ? undefined : (pair.minMm - grid.middleMm) * 1000
  const doubt = (edge: number, sign: 1 | -1) =>
    fieldOf(grid, turned, (i) => sign * ((grid.deviationsUm[i] ?? 0) - clampFar(grid.doubtUm[i * 4 + edge])))
  const proven = (mark: 1 | 2, edge: number, sign: 1 | -1) =>
    fieldOf(grid, turned, (i) => {
      const past = sign * ((grid.deviationsUm[i] ?? 0) - clampFar(grid.doubtUm[i * 4 + edge]))
      return grid.proven[i] === mark ? Math.max(past, 1e-3) : Math.min(past, -1e-3)
    })
  const bands = Array.from(
    { length: bandCount },
    (_, k) => span.lowUm + ((k + 1) / (bandCount + 1)) * (span.highUm - span.lowUm),
  )
  const out = () =>
    fieldOf(grid, turned, (i) => {
      const past = Math.abs(grid.deviationsUm[i] ?? 0) - clampFar(grid.doubtUm[i * 4 + 3])
      return grid.proven[i] ? Math.max(past, 1e-3) : Math.min(past, -1e-3)
    })
  return {
    ...(isDifference
      ? {
          standsOut: path(out(), 0),
          withinDoubt: path(
            out().map((past) => -past),
            0,
          ),
        }
      : {}),
    bands: bands
      .filter((fromUm) => fromUm <= high)
      .map((fromUm) => ({ fromUm, path: path(deviations, fromUm) })),
    isoLines: isoValues(low, high, isoStepUm).map((um) => ({ um, path: path(deviations, um) })),
    ...(maxUm === undefined
      ? {}
      : {
          doubtMax: path(doubt(2, 1), 0),
          crossingMax: path(deviations, maxUm),
          provenAbove: path(proven(1, 3, 1), 0),
        }),
    ...(minUm === undefined
      ? {}
      : {
          ...(pair?.kind === 'wear'
            ? {}
            : { doubtMin: path(doubt(1, -1), 0), crossingMin: path(deviations, minUm) }),
          provenBelow: path(proven(2, 0, -1), 0),
        }),
  }
}

function clampFar(um: number | undefined): number {
  return Math.min(farUm, Math.max(-farUm, um ?? farUm))
}

function rangeOf(values: ArrayLike<number>): { low: number; high: number } {
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (let i = 0; i < values.length; i++) {
    low = Math.min(low, values[i] ?? low)
    high = Math.max(high, values[i] ?? high)
  }
  return { low, high }
}

function isoValues(low: number, high: number, stepUm: number): number[] {
  const first = Math.ceil(low / stepUm)
  const count = Math.max(0, Math.floor(high / stepUm) - first + 1)
  return Array.from({ length: count }, (_, k) => (first + k) * stepUm)
}

function turn({ angles, depthsMm }: WallGrid, scale: MapScale): Turned {
  const columns = angles.length
  const start = angles.findIndex((angle) => angle >= Math.PI)
  const order = Uint32Array.from({ length: columns + 1 }, (_, i) => (start + i) % columns)
  const across = Float64Array.from(order, (column, i) =>
    i === columns ? scale.left + scale.width : acrossOf(scale, ((angles[column] ?? 0) * 180) / Math.PI),
  )
  across[0] = scale.left
  return { columns: columns + 1, depthsMm, across, order }
}

function fieldOf(grid: WallGrid, { order, columns }: Turned, value: (index: number) => number): Float64Array {
  const rows = grid.depthsMm.length
  const field = new Float64Array(rows * columns)
  for (let row = 0; row < rows; row++) {
    for (let i = 0; i < columns; i++)
      field[row * columns + i] = value(row * grid.angles.length + (order[i] ?? 0))
  }
  return field
}

function pathOf(field: Float64Array, value: number, turned: Turned, scale: MapScale): string {
  const rows = turned.depthsMm.length
  const { low, high } = rangeOf(field)
  if (high < value) return ''
  if (low >= value) return wholeWall(scale)
  const { coordinates } = contours().size([turned.columns, rows]).contour(Array.from(field), value)
  const x = (index: number) => between(turned.across, index - 0.5)
  const y = (index: number) => downOf(scale, between(turned.depthsMm, index - 0.5))
  return coordinates
    .flat()
    .map((ring) => `M${ring.map(([i, j]) => `${x(i ?? 0).toFixed(1)},${y(j ?? 0).toFixed(1)}`).join('L')}Z`)
    .join('')
}

function wholeWall({ left, top, width, height }: MapScale): string {
  return `M${left},${top}h${width}v${height}h${-width}Z`
}

function between(values: Float64Array, index: number): number {
  const inside = Math.min(values.length - 1, Math.max(0, index))
  const i = Math.floor(inside)
  const a = values[i] ?? 0
  return a + (inside - i) * ((values[i + 1] ?? a) - a)
}
