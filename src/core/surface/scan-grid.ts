import type { StationFinding } from '../findings'
import type { Belt } from '../measured'
import { reachOfReadingMm } from '../notes'
import type { RadialScan, ScanFit } from '../scan/radial-scan'
import { upperMedian } from '../scan/robust-weights'
import { doubtEdges, provenPoints } from './grid-judgement'
import type { GridLines } from './grid-lines'
import { type MonotoneCubic, pchip, periodicPchip, periodicSlopes, placeOn, valueIn } from './pchip'
import { filledNodes, type ScanNodes, scanNodes } from './scan-nodes'
import type { WallGrid } from './wall-grid'

export interface ScanGridOptions {
  /** Diameter that is drawn as it is, mm. */
  readonly middleMm: number
  readonly lengthMm: number
  readonly belts: readonly Pick<Belt, 'fromDepthMm' | 'toDepthMm'>[]
  /** The smooth form is taken off, so that what is local stands out. */
  readonly isLocal: boolean
  /**
   * Where stations tie the scan to a size: what is added to every radius about the axis, µm, and those stations.
   * Deviations are then those of twice the radius from the middle, so that they compare with limits, and the doubt of a
   * limit is that of the nearest station. Absent: the scan has no size, and deviations are those of the radius from
   * its own median.
   */
  readonly tied?: { readonly byUm: number; readonly stations: readonly StationFinding[] }
  /** At least so many rows and columns, as far as the most allow; 128 and 256 by default. */
  readonly leastRows?: number
  readonly leastColumns?: number
}

/** From so many angles on noise makes more lines than form does. */
const fineFrom = 128

/** A wall that is drawn has no more rows than this. */
export const mostGridRows = 512
/** A wall that is drawn has no more columns than this. */
export const mostGridColumns = 1024

/**
 * A scan sampled for the picture, about its fitted axis and not symmetric. Rows include every level and columns every
 * angle, as far as `mostGridRows` and `mostGridColumns` allow; of more, each row or column shows the value of its
 * neighbourhood that stands out of the smooth form most, so that a narrow score is not lost. Between them a monotone
 * cubic runs along the depth and one around, which invents no extreme. A cell is hatched where one of its corners has
 * no value, past the outermost levels, in a belt, and where levels or angles lie further apart than twice the reach of a
 * reading. A scan has no verdicts of its own: what is proven is what its stations prove. Own derivation; rounded to single precision.
 */
export function scanGridOf(scan: RadialScan, fit: ScanFit, options: ScanGridOptions): WallGrid {
  const nodes = scanNodes(scan, fit, { levels: mostGridRows - 2, angles: mostGridColumns - 1 })
  const { depthsMm, angles } = linesOf(nodes, options)
  const values = filledNodes(nodes, nodeValues(nodes, options))
  const deviationsUm = sampled(nodes, values, depthsMm, angles)
  return {
    middleMm: options.middleMm,
    lengthMm: options.lengthMm,
    depthsMm,
    angles,
    deviationsUm,
    hatched: hatchedCells(nodes, depthsMm, angles, options),
    ...judgedBy(options, { depthsMm, angles }, deviationsUm),
    ...(scan.anglesDegrees.length >= fineFrom ? { isFine: true as const } : {}),
  }
}

/** By the stations that give it a size; nothing is judged of a wall without one. */
function judgedBy(
  { tied, isLocal, middleMm }: ScanGridOptions,
  lines: GridLines,
  deviationsUm: Float32Array,
): Pick<WallGrid, 'proven' | 'doubtUm'> {
  const stations = isLocal ? [] : (tied?.stations.filter((station) => station.counted) ?? [])
  if (stations.length === 0) {
    const doubtUm = new Float32Array(deviationsUm.length * 4).fill(Number.POSITIVE_INFINITY)
    for (let node = 0; node < deviationsUm.length; node++) {
      doubtUm.fill(Number.NEGATIVE_INFINITY, 4 * node, 4 * node + 2)
    }
    return { proven: new Uint8Array(deviationsUm.length), doubtUm }
  }
  const wall = { stations, contacts: [0, 180], meanDiameterMm: middleMm, period: 2 * Math.PI }
  const doubt = doubtEdges(wall, lines, middleMm)
  return {
    proven: provenPoints(wall, lines, Float64Array.from(deviationsUm), doubt),
    doubtUm: new Float32Array(doubt),
  }
}

/** Deviations from the middle, µm; NaN where there is no value. */
function nodeValues(nodes: ScanNodes, { isLocal, tied, middleMm }: ScanGridOptions): Float64Array {
  if (isLocal) return nodes.residualUm
  if (tied) return nodes.radiiUm.map((value) => 2 * (value + tied.byUm) - middleMm * 1000)
  const middle = medianOf(nodes.radiiUm)
  return nodes.radiiUm.map((value) => value - middle)
}

function medianOf(values: Float64Array): number {
  return upperMedian(values.filter((value) => !Number.isNaN(value))) ?? 0
}

function linesOf(nodes: ScanNodes, options: ScanGridOptions): Pick<WallGrid, 'depthsMm' | 'angles'> {
  const { lengthMm, belts, leastRows = 128, leastColumns = 256 } = options
  const within = nodes.depthsMm.filter((depth) => depth >= 0 && depth <= lengthMm)
  const first = within[0] ?? lengthMm
  const last = within[within.length - 1] ?? 0
  const beltEdges = belts.flatMap((belt) => [belt.fromDepthMm, belt.toDepthMm])
  const reach = within.flatMap((depth, i) => {
    const next = within[i + 1]
    return next !== undefined && next - depth > 2 * reachOfReadingMm
      ? [depth + reachOfReadingMm, next - reachOfReadingMm]
      : []
  })
  const edges = [...beltEdges, ...reach].filter((edge) => edge > first && edge < last)
  const rows = [...new Set([0, ...within, ...edges, lengthMm])].sort((a, b) => a - b)
  const columns = [...new Set([0, ...nodes.angles])].sort((a, b) => a - b)
  return {
    depthsMm: spread(rows, leastRows - 1, mostGridRows),
    angles: spread([...columns, 2 * Math.PI], leastColumns, mostGridColumns + 1).slice(0, -1),
  }
}

/** The lines with others put evenly between them, so that there are at least so many intervals and at most so many lines. */
function spread(lines: readonly number[], leastIntervals: number, mostLines: number): Float64Array {
  const whole = (lines[lines.length - 1] ?? 0) - (lines[0] ?? 0)
  for (let least = leastIntervals; least > 0; least = Math.floor(least / 2)) {
    const widest = whole / least
    const finer = lines.flatMap((from, i) => {
      const to = lines[i + 1]
      if (to === undefined) return [from]
      const pieces = Math.max(1, Math.ceil((to - from) / widest - 1e-9))
      return Array.from({ length: pieces }, (_, piece) => from + ((to - from) * piece) / pieces)
    })
    if (finer.length <= mostLines) return Float64Array.from(finer)
  }
  return Float64Array.from(lines)
}

/**
 * Along the depth at each angle of the nodes, then around at each row. Rows and columns that are the scan's own need no
 * curve between them.
 */
function sampled(
  nodes: ScanNodes,
  values: Float64Array,
  depthsMm: Float64Array,
  angles: Float64Array,
): Float32Array {
  const count = nodes.angles.length
  const curveAt = (column: number) =>
    pchip(
      nodes.depthsMm,
      nodes.depthsMm.map((_, row) => values[row * count + column] ?? 0),
    )
  const any = curveAt(0)
  const rows = Array.from(depthsMm, (depthMm) => placeOn(any, depthMm))
  const along = rows.some(isBetween) ? nodes.angles.map((_, column) => curveAt(column)) : undefined
  const around = periodicPchip(nodes.angles, new Float64Array(count), 2 * Math.PI)
  const first = around.knots[0] ?? 0
  const places = Array.from(angles, (angle) => placeOn(around, angle < first ? angle + 2 * Math.PI : angle))
  const isCurved = places.some(isBetween)
  const deviations = new Float32Array(depthsMm.length * angles.length)
  for (const [row, { interval, share }] of rows.entries()) {
    const level = (share === 1 ? interval + 1 : interval) * count
    for (let column = 0; column < count; column++) {
      const curve = along?.[column]
      around.values[column] = curve ? valueBetween(curve, interval, share) : (values[level + column] ?? 0)
    }
    if (isCurved) periodicSlopes(around)
    for (const [column, place] of places.entries()) {
      deviations[row * angles.length + column] = valueIn(around, place.interval, place.share)
    }
  }
  return deviations
}

function isBetween({ share }: { readonly share: number }): boolean {
  return share > 0 && share < 1
}

/** A curve of one point has no interval. */
function valueBetween(curve: MonotoneCubic, interval: number, share: number): number {
  return curve.knots.length === 1 ? (curve.values[0] ?? 0) : valueIn(curve, interval, share)
}

function hatchedCells(
  nodes: ScanNodes,
  depthsMm: Float64Array,
  angles: Float64Array,
  { belts, middleMm }: ScanGridOptions,
): Uint8Array {
  const columns = nodes.angles.length
  const hatched = new Uint8Array((depthsMm.length - 1) * angles.length).fill(1)
  const cells = Array.from(angles, (angle, c) => {
    const middle = (angle + (angles[c + 1] ?? 2 * Math.PI)) / 2
    const left = (lastAtOrBefore(nodes.angles, middle) + columns) % columns
    const right = (left + 1) % columns
    const turn = ((nodes.angles[right] ?? 0) - (nodes.angles[left] ?? 0) + 2 * Math.PI) % (2 * Math.PI)
    return { left, right, isFar: (turn * middleMm) / 2 > 2 * reachOfReadingMm }
  })
  for (let row = 0; row + 1 < depthsMm.length; row++) {
    const depthMm = ((depthsMm[row] ?? 0) + (depthsMm[row + 1] ?? 0)) / 2
    const upper = lastAtOrBefore(nodes.depthsMm, depthMm)
    const [from, to] = [nodes.depthsMm[upper], nodes.depthsMm[upper + 1]]
    if (from === undefined || to === undefined) continue
    if (Math.min(depthMm - from, to - depthMm) > reachOfReadingMm) continue
    if (belts.some((belt) => depthMm > belt.fromDepthMm && depthMm < belt.toDepthMm)) continue
    const above = nodes.residualUm.subarray(upper * columns, (upper + 1) * columns)
    const below = nodes.residualUm.subarray((upper + 1) * columns, (upper + 2) * columns)
    for (const [column, { left, right, isFar }] of cells.entries()) {
      // A sum is no number where one of its parts is none.
      const corners = (above[left] ?? 0) + (above[right] ?? 0) + (below[left] ?? 0) + (below[right] ?? 0)
      if (!isFar && !Number.isNaN(corners)) hatched[row * angles.length + column] = 0
    }
  }
  return hatched
}

/** −1 where all are beyond x. */
function lastAtOrBefore(values: readonly number[], x: number): number {
  let low = -1
  let high = values.length
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if ((values[middle] ?? Number.NaN) <= x) low = middle
    else high = middle
  }
  return low
}
