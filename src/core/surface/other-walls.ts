import type { StationFinding } from '../findings'
import { type CholeskyFactor, choleskyFactor, solvedBy } from '../statistics/cholesky'
import { type SeededDraws, seededDraws } from '../statistics/seeded-draws'
import type { Wall } from './wall'
import { correlationAlong, correlationRound } from './wall-correlation'
import type { WallGrid } from './wall-grid'
import { axisRad } from './wall-nodes'

/** Other walls that fit the same readings, drawn one after another. */
export interface OtherWalls {
  readonly known: true
  /** Standard deviation of the field where no reading is near, mm. */
  readonly spreadMm: number
  /** One more wall: diameter less the grid's middle, µm, as in the grid. */
  next(): Float32Array
}

export interface NoOtherWalls {
  readonly known: false
  readonly why: 'too-few-readings' | 'two-readings-at-one-place'
}

/** Fewer readings say nothing of how much a wall varies. */
export const leastReadings = 3

/** A field is taken to vary by a micron at least: less is not proven by any gauge, mm. */
const leastSpreadMm = 0.001

/** Readings nearer than this to each other are two at one place, mm and rad. */
const onePlaceMm = 0.01
const onePlace = (0.01 * Math.PI) / 180

/**
 * Walls drawn at random that fit the counted readings of a wall within their doubt: for the eye only, no figure
 * comes from them. Each is the drawn wall, plus one offset for all of it (the readings' shared error: the mean of
 * their common parts times one normal draw), plus a Gaussian field of mean 0 with the correlation of
 * `wallCorrelation` and the standard deviation of the readings about their mean (1 µm and the largest individual u
 * at least), conditioned on what each reading leaves over, known to its individual u. The mean of many is the
 * kriging mean: the drawn wall where that passes through the readings, as it does for two contacts. At a lone
 * reading they spread by u_i/√(1 + u_i²/σ²), just under its u; beside others by less; far from all by σ.
 *
 * A reading of two contacts is the diameter on its axis, and every wall is alike at θ and θ + 180°; one of three
 * contacts is the mean of its three places. Given a field z drawn freely on the grid and errors e drawn with the
 * readings' u, the conditioned field is z + K_XA·(K_AA + N)⁻¹·(r − A·z − e). Sources: kriging with a known trend,
 * Cressie, Statistics for Spatial Data, 1993, 3.4.5, and Rasmussen and Williams, Gaussian Processes for Machine
 * Learning, 2006, 2.23 to 2.24; conditioning a free draw, Journel and Huijbregts, Mining Geostatistics, 1978,
 * chapter VII (from memory). The same seed gives the same walls. Single precision.
 */
export function otherWalls(wall: Wall, grid: WallGrid, seed: number): OtherWalls | NoOtherWalls {
  const { stations } = wall
  if (stations.length < leastReadings) return { known: false, why: 'too-few-readings' }
  const field = fieldOf(wall, grid)
  if (hasTwins(field)) return { known: false, why: 'two-readings-at-one-place' }
  const factor = choleskyFactor(amongReadings(field), stations.length)
  const draws = seededDraws(seed)
  const rows = factorOf(grid.depthsMm, correlationAlong)
  const columns = factorOf(field.angles, (apart) => correlationRound(apart, field.period))
  return {
    known: true,
    spreadMm: field.spreadMm,
    next() {
      const free = freeField(rows, columns, draws, field.spreadMm)
      return drawnWall(grid, field, conditioned(field, factor, free, draws))
    },
  }
}

/** One reading as the field has it. */
interface Observed {
  readonly depthMm: number
  /** Where it touches, one angle for the two ends of an axis, rad. */
  readonly angles: readonly number[]
  /** Reading less the drawn wall there, mm. */
  readonly leftMm: number
  readonly individualMm: number
  /** Its shared part less that of all readings' mean, mm. */
  readonly sharedApartMm: number
  /** Grid nodes that it touches, [row · columns of the field + column]. */
  readonly nodes: readonly number[]
}

interface Field {
  readonly period: number
  readonly depthsMm: Float64Array
  /** One period of the grid's columns, rad. */
  readonly angles: Float64Array
  readonly observed: readonly Observed[]
  readonly spreadMm: number
  readonly sharedMm: number
}

function fieldOf(wall: Wall, grid: WallGrid): Field {
  const { stations } = wall
  const { period } = wall.span.nodes
  const angles = grid.angles.slice(0, Math.round((grid.angles.length * period) / (2 * Math.PI)))
  const sharedMm = meanOf(stations.map((station) => station.commonMm))
  const observed = stations.map((station) => {
    const touched = anglesOf(wall, station)
    const drawn = meanOf(touched.map((angle) => wall.at(station.depthMm, angle)))
    const row = nearestIndex(grid.depthsMm, (depth) => Math.abs(depth - station.depthMm))
    const columnOf = (angle: number) => nearestIndex(angles, (one) => Math.abs(chord(one - angle, period)))
    return {
      depthMm: station.depthMm,
      angles: touched,
      leftMm: station.diameterMm - drawn,
      individualMm: station.individualMm,
      sharedApartMm: station.commonMm - sharedMm,
      nodes: touched.map((angle) => row * angles.length + columnOf(angle)),
    }
  })
  return { period, depthsMm: grid.depthsMm, angles, observed, spreadMm: spreadOf(stations), sharedMm }
}

function anglesOf({ span, contacts }: Wall, { axisDegrees }: StationFinding): readonly number[] {
  if (span.nodes.period === Math.PI) return [axisRad(axisDegrees)]
  return contacts.map((contact) => ((axisDegrees + contact) * Math.PI) / 180)
}

/** Standard deviation of the readings about their mean, mm, as far as that is more than their own doubt. */
function spreadOf(stations: readonly StationFinding[]): number {
  const mean = meanOf(stations.map((station) => station.diameterMm))
  const squares = stations.reduce((sum, station) => sum + (station.diameterMm - mean) ** 2, 0)
  const own = stations.map((station) => station.individualMm)
  return Math.max(leastSpreadMm, ...own, Math.sqrt(squares / (stations.length - 1)))
}

function hasTwins({ observed, period }: Field): boolean {
  return observed.some((one, index) =>
    observed
      .slice(0, index)
      .some(
        (other) =>
          Math.abs(one.depthMm - other.depthMm) < onePlaceMm &&
          other.angles.some((angle) => Math.abs(chord(angle - (one.angles[0] ?? 0), period)) < onePlace),
      ),
  )
}

/** K_AA + N: covariance of the readings, mm², with the square of each one's own u. */
function amongReadings({ observed, period, spreadMm }: Field): Float64Array {
  return Float64Array.from(
    observed.flatMap((one) =>
      observed.map((other) => {
        const along = correlationAlong(one.depthMm - other.depthMm)
        const round = meanOf(
          one.angles.flatMap((a) => other.angles.map((b) => correlationRound(a - b, period))),
        )
        return spreadMm ** 2 * along * round + (one === other ? one.individualMm ** 2 : 0)
      }),
    ),
  )
}

function factorOf(lines: Float64Array, correlation: (apart: number) => number): CholeskyFactor {
  const size = lines.length
  const matrix = new Float64Array(size * size)
  lines.forEach((one, i) => {
    lines.forEach((other, j) => {
      matrix[i * size + j] = correlation(one - other)
    })
  })
  return choleskyFactor(matrix, size, true)
}

/** σ·L·Ξ·Mᵀ: a field whose covariance is the product of that along the rows and that along the columns. */
function freeField(
  rows: CholeskyFactor,
  columns: CholeskyFactor,
  draws: SeededDraws,
  spreadMm: number,
): Float64Array {
  const along = new Float64Array(rows.size * columns.size)
  for (let node = 0; node < along.length; node++) along[node] = draws.normal() * spreadMm
  const mixed = new Float64Array(along.length)
  for (let row = 0; row < rows.size; row++) {
    for (let k = 0; k <= row; k++) {
      const share = rows.lower[row * rows.size + k] ?? 0
      for (let column = 0; column < columns.size; column++) {
        const node = row * columns.size + column
        mixed[node] = (mixed[node] ?? 0) + share * (along[k * columns.size + column] ?? 0)
      }
    }
  }
  return mixed.map((_, node) => {
    const column = node % columns.size
    let sum = 0
    for (let k = 0; k <= column; k++) {
      sum += (columns.lower[column * columns.size + k] ?? 0) * (mixed[node - column + k] ?? 0)
    }
    return sum
  })
}

/** The field, mm, that fits the readings, and the offset of all of it. */
function conditioned(field: Field, factor: CholeskyFactor, free: Float64Array, draws: SeededDraws) {
  const { observed, period, spreadMm, sharedMm, angles, depthsMm } = field
  const shared = draws.normal()
  const left = observed.map(
    (one) =>
      one.leftMm +
      one.sharedApartMm * shared -
      one.individualMm * draws.normal() -
      meanOf(one.nodes.map((node) => free[node] ?? 0)),
  )
  const weights = solvedBy(factor, left)
  const fitted = Float64Array.from(free)
  observed.forEach((one, index) => {
    const weight = (weights[index] ?? 0) * spreadMm ** 2
    const round = Array.from(angles, (angle) =>
      meanOf(one.angles.map((touched) => correlationRound(angle - touched, period))),
    )
    depthsMm.forEach((depthMm, row) => {
      const along = weight * correlationAlong(depthMm - one.depthMm)
      round.forEach((share, column) => {
        const node = row * angles.length + column
        fitted[node] = (fitted[node] ?? 0) + along * share
      })
    })
  })
  return { fitted, offsetMm: sharedMm * shared }
}

function drawnWall(
  grid: WallGrid,
  { angles }: Field,
  { fitted, offsetMm }: { readonly fitted: Float64Array; readonly offsetMm: number },
): Float32Array {
  const columns = grid.angles.length
  return grid.deviationsUm.map((deviation, node) => {
    const row = Math.floor(node / columns)
    const column = (node % columns) % angles.length
    return deviation + 1000 * ((fitted[row * angles.length + column] ?? 0) + offsetMm)
  })
}

/** Chord of a turn, as an angle where it is small; 0 after a period. */
function chord(apart: number, period: number): number {
  return (period / Math.PI) * Math.sin((apart * Math.PI) / period)
}

function nearestIndex(values: Float64Array, distance: (value: number) => number): number {
  let nearest = 0
  values.forEach((value, index) => {
    if (distance(value) < distance(values[nearest] ?? Number.POSITIVE_INFINITY)) nearest = index
  })
  return nearest
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}
