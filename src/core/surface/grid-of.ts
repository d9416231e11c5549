import type { BoreFinding, StationFinding } from '../findings'
import { middleOf } from './exaggeration'
import { columnAngles, type GridLines, rowDepths } from './grid-lines'
import { nearestContact } from './nearest-station'
import { periodicPchip, periodicSlopes, placeOn, valueAt, valueIn } from './pchip'
import { patchesWith } from './proven-patches'
import type { Wall } from './wall'
import type { WallGrid } from './wall-grid'
import { axisRad } from './wall-nodes'
import { angleAmongAxes, axisCell, isCellRead, isUnderContact, measuredInterval } from './wall-span'

export interface GridOptions {
  /** At least so many rows, 128 by default. */
  readonly rows?: number
  /** At least so many columns, 256 by default. */
  readonly columns?: number
  /** Diameter that deviations are counted from, mm; by default the middle of the finding's own pair. */
  readonly middleMm?: number
  /**
   * Lines to sample on in place of the wall's own; they must hold each of its levels and axes (`joinedSpans`).
   * The grid is then as long as they are, and the wall held constant past its end.
   */
  readonly lines?: GridLines
}

/**
 * The wall sampled for the picture. Rows include both ends, every level, belt edge and level ± 8 mm;
 * columns every axis, both ends; so every reading is a point of the grid and every cell is hatched or not as
 * a whole. Ports are not in it. Doubt edges are those of the station nearest on the unrolled wall, either
 * contact; without limits they are infinite and everything is inside. A point is proven above or below when
 * it lies past that edge in a patch, joined round 0°, that holds a counted station with that verdict: at a
 * station its own verdict decides.
 *
 * Deviations are rounded to single precision (4 nm in 50 µm); the wall itself is in double. Own derivation.
 */
export function gridOf(wall: Wall, finding: BoreFinding, options: GridOptions = {}): WallGrid {
  const middleMm = options.middleMm ?? middleOf(finding.pair, [finding])
  if (middleMm === undefined) throw new Error('gridOf: expected a limit or a counted station, found neither')
  const lines: GridLines = options.lines ?? {
    depthsMm: rowDepths(wall.span, wall.lengthMm, options.rows ?? 128),
    angles: columnAngles(wall.span, options.columns ?? 256),
  }
  const deviations = deviationsOf(wall, lines, middleMm)
  const doubt = doubtOf(wall, lines, middleMm)
  return {
    middleMm,
    lengthMm: lines.depthsMm.at(-1) ?? wall.lengthMm,
    ...lines,
    deviationsUm: new Float32Array(deviations),
    hatched: hatchedCells(wall, lines),
    proven: provenPoints(wall, lines, deviations, doubt),
    doubtUm: new Float32Array(doubt),
  }
}

/** Deviations in µm: each axis's curve at the row's depth, then one periodic curve across the columns. */
function deviationsOf(
  { span, alongDepth }: Wall,
  { depthsMm, angles }: GridLines,
  middleMm: number,
): Float64Array {
  const columns = angles.length
  const around = periodicPchip(span.nodes.axes, new Float64Array(span.nodes.axes.length), span.nodes.period)
  const places = Array.from(angles, (angle) => placeOn(around, angleAmongAxes(span.nodes, angle)))
  const deviations = new Float64Array(depthsMm.length * columns)
  depthsMm.forEach((depthMm, row) => {
    alongDepth.forEach((curve, axis) => {
      around.values[axis] = valueAt(curve, depthMm)
    })
    periodicSlopes(around)
    for (let column = 0; column < columns; column++) {
      const place = places[column]
      if (!place) continue
      const diameterMm = valueIn(around, place.interval, place.share)
      deviations[row * columns + column] = (diameterMm - middleMm) * 1000
    }
  })
  return deviations
}

/** Every edge of the hatching is a row or a column, so the middle of a cell speaks for all of it. */
function hatchedCells({ span }: Wall, { depthsMm, angles }: GridLines): Uint8Array {
  const columns = angles.length
  const middles = Array.from(angles, (angle, c) => (angle + (angles[c + 1] ?? 2 * Math.PI)) / 2)
  const cells = middles.map((angle) => axisCell(span.nodes, angle, 1))
  const hatched = new Uint8Array((depthsMm.length - 1) * columns).fill(1)
  for (let row = 0; row + 1 < depthsMm.length; row++) {
    const depthMm = ((depthsMm[row] ?? 0) + (depthsMm[row + 1] ?? 0)) / 2
    const interval = measuredInterval(span, depthMm, 1)
    if (interval === undefined) continue
    const isRead = Array.from(span.nodes.axes, (_, cell) => isCellRead(span.nodes, interval, cell))
    cells.forEach((cell, column) => {
      const angle = middles[column] ?? 0
      if (isRead[cell] && isUnderContact(span, { depthMm, angle }, 1, 1)) hatched[row * columns + column] = 0
    })
  }
  return hatched
}

/** Four doubt edges in µm at each point, from the nearest station. */
function doubtOf(wall: Wall, { depthsMm, angles }: GridLines, middleMm: number): Float64Array {
  const columns = angles.length
  const axes = [...new Set(wall.stations.map((s) => s.axisDegrees))]
  const arcs = axes.map((axis) =>
    Float64Array.from(
      angles,
      (angle) => ((nearestContact(axis, wall.contacts, angle) * wall.meanDiameterMm) / 2) ** 2,
    ),
  )
  const ofAxis = axes.map((axis) => wall.stations.filter((s) => s.axisDegrees === axis))
  const doubt = new Float64Array(depthsMm.length * columns * 4)
  for (let row = 0; row < depthsMm.length; row++) {
    const depthMm = depthsMm[row] ?? 0
    const candidates = ofAxis.map((stations) => nearestAlong(stations, depthMm, middleMm))
    for (let column = 0; column < columns; column++) {
      const edges = nearestOf(candidates, arcs, column)
      const at = (row * columns + column) * 4
      for (let edge = 0; edge < 4; edge++) doubt[at + edge] = edges[edge] ?? Number.NaN
    }
  }
  return doubt
}

/** Edges of the candidate, one for each axis, that is nearest to a column, squares of distances added. */
function nearestOf(candidates: readonly Candidate[], arcs: readonly Float64Array[], column: number) {
  let least = Number.POSITIVE_INFINITY
  let edges = noEdges
  for (let axis = 0; axis < candidates.length; axis++) {
    const candidate = candidates[axis]
    const square = (candidate?.square ?? Number.NaN) + (arcs[axis]?.[column] ?? Number.NaN)
    if (candidate && square < least) {
      least = square
      edges = candidate.edges
    }
  }
  return edges
}

interface Candidate {
  /** Distance along the depth, squared, mm². */
  readonly square: number
  /** Below firm, inside from, inside to, above firm, µm. */
  readonly edges: readonly number[]
}

const noEdges: readonly number[] = [
  Number.NEGATIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  Number.POSITIVE_INFINITY,
  Number.POSITIVE_INFINITY,
]

/** Of the stations of one axis the one nearest along the depth. */
function nearestAlong(stations: readonly StationFinding[], depthMm: number, middleMm: number): Candidate {
  const nearest = stations.reduce((a, b) =>
    Math.abs(b.depthMm - depthMm) < Math.abs(a.depthMm - depthMm) ? b : a,
  )
  const { doubt } = nearest
  const edges = doubt
    ? [doubt.belowFirmMm, doubt.insideFromMm, doubt.insideToMm, doubt.aboveFirmMm].map(
        (edge) => (edge - middleMm) * 1000,
      )
    : noEdges
  return { square: (nearest.depthMm - depthMm) ** 2, edges }
}

/** 1 above, 2 below, at the points of patches that hold a station proven so. */
function provenPoints(
  wall: Wall,
  lines: GridLines,
  deviations: Float64Array,
  doubt: Float64Array,
): Uint8Array {
  const size = { rows: lines.depthsMm.length, columns: lines.angles.length }
  const above = new Uint8Array(deviations.length)
  const below = new Uint8Array(deviations.length)
  deviations.forEach((deviation, point) => {
    if (deviation >= (doubt[point * 4 + 3] ?? Number.POSITIVE_INFINITY)) above[point] = 1
    if (deviation <= (doubt[point * 4] ?? Number.NEGATIVE_INFINITY)) below[point] = 1
  })
  const provenAbove = patchesWith(pointsOf(wall, lines, 'above'), above, size)
  const provenBelow = patchesWith(pointsOf(wall, lines, 'below'), below, size)
  return provenAbove.map((mark, point) => mark || (provenBelow[point] === 1 ? 2 : 0))
}

/** Grid points of the stations with this verdict, at every contact. */
function pointsOf(wall: Wall, { depthsMm, angles }: GridLines, verdict: 'above' | 'below'): number[] {
  return wall.stations
    .filter((station) => station.conformity?.verdict === verdict)
    .flatMap((station) => {
      const row = depthsMm.indexOf(station.depthMm)
      if (row < 0) return []
      return contactColumns(wall, angles, station.axisDegrees).map((column) => row * angles.length + column)
    })
}

function contactColumns(wall: Wall, angles: Float64Array, axisDegrees: number): number[] {
  if (wall.span.nodes.period === Math.PI) {
    const axis = axisRad(axisDegrees)
    return [axis, axis + Math.PI].map((angle) => angles.indexOf(angle)).filter((column) => column >= 0)
  }
  return wall.contacts.map((contact) => {
    let best = 0
    angles.forEach((angle, column) => {
      const isNearer =
        nearestContact(axisDegrees, [contact], angle) <
        nearestContact(axisDegrees, [contact], angles[best] ?? 0)
      if (isNearer) best = column
    })
    return best
  })
}
