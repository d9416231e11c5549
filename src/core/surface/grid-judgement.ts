import type { StationFinding } from '../findings'
import type { GridLines } from './grid-lines'
import { nearestContact } from './nearest-station'
import { patchesWith } from './proven-patches'
import { axisRad } from './wall-nodes'

/** What a drawn wall is judged by: the counted stations, and where their gauge touched it. */
export interface JudgedWall {
  readonly stations: readonly StationFinding[]
  /** Degrees from the axis of a station. */
  readonly contacts: readonly number[]
  readonly meanDiameterMm: number
  /** π where both ends of an axis are columns of the grid; else the column nearest to a contact stands for it. */
  readonly period: number
}

/** Four doubt edges in µm at each point, those of the station nearest on the unrolled wall. Own derivation. */
export function doubtEdges(
  wall: JudgedWall,
  { depthsMm, angles }: GridLines,
  middleMm: number,
): Float64Array {
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

/** 1 above, 2 below, at the points of patches that hold a station proven so. Own derivation. */
export function provenPoints(
  wall: JudgedWall,
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
function pointsOf(wall: JudgedWall, { depthsMm, angles }: GridLines, verdict: 'above' | 'below'): number[] {
  return wall.stations
    .filter((station) => station.conformity?.verdict === verdict)
    .flatMap((station) => {
      const row = depthsMm.indexOf(station.depthMm)
      if (row < 0) return []
      return contactColumns(wall, angles, station.axisDegrees).map((column) => row * angles.length + column)
    })
}

function contactColumns(wall: JudgedWall, angles: Float64Array, axisDegrees: number): number[] {
  if (wall.period === Math.PI) {
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
