import type { Difference, DifferenceStation, DrawnStation } from '../findings'
import { columnAngles, joinedSpans, rowDepths } from '../surface/grid-lines'
import { nearestContact } from '../surface/nearest-station'
import { pchip, periodicPchip, valueAt } from '../surface/pchip'
import { patchesWith } from '../surface/proven-patches'
import type { Wall } from '../surface/wall'
import type { WallGrid } from '../surface/wall-grid'
import { axisRad, type WallNodes, type WallReading, wallNodes } from '../surface/wall-nodes'
import { angleAmongAxes, isHatched, type WallSpan } from '../surface/wall-span'

export interface DifferenceGridOptions {
  /** Diameter that no difference is drawn at, mm. */
  readonly middleMm: number
  readonly rows?: number
  readonly columns?: number
}

type Place = { readonly depthMm: number; readonly angle: number }

/** Whether a difference stands out beyond its own U (95 %): it is then told from none. */
export function standsOut({ differenceMm, expandedMm }: DifferenceStation): boolean {
  return Math.abs(differenceMm) > expandedMm
}

/**
 * The stations of a difference as they are drawn on its wall: no difference at the middle, mm, and a verdict
 * where the difference stands out.
 */
export function differenceStations(difference: Difference, middleMm: number): readonly DrawnStation[] {
  return difference.stations.map((station) => ({
    depthMm: station.depthMm,
    axisDegrees: station.axisDegrees,
    diameterMm: middleMm + station.differenceMm,
    expandedMm: station.expandedMm,
    counted: true,
    conformity: {
      verdict: !standsOut(station) ? 'too-close' : station.differenceMm > 0 ? 'above' : 'below',
    },
  }))
}

/**
 * The difference of two bores as a wall of its own: `deviationsUm` are differences in µm, exact at every station
 * that both have and spanned between those alone, as any wall is. Hatched where either bore was not measured,
 * or where the stations of both do not reach. The doubt edges are −U, 0, 0 and +U of the nearest station, µm;
 * `proven` marks patches that lie beyond them and hold a station whose difference stands out beyond its U:
 * 1 above, 2 below. Nothing else may be read off it: between stations it is drawn for the eye. Own derivation.
 */
export function differenceGrid(
  difference: Difference,
  one: Wall,
  other: Wall,
  options: DifferenceGridOptions,
): WallGrid {
  const nodes = nodesOf(difference.stations, one)
  const own: WallSpan = { nodes, belts: [] }
  const spans = [own, one.span, other.span]
  const joined = joinedSpans(spans)
  const depthsMm = rowDepths(joined, one.lengthMm, options.rows ?? 128)
  const angles = columnAngles(joined, options.columns ?? 256)
  const at = placesOf(depthsMm, angles)
  const between = differencesBetween(nodes)
  const deviations = at.map((place) => between(place) * 1000)
  const nearest = at.map((place) => nearestTo(place, difference.stations, one))
  const size = { rows: depthsMm.length, columns: angles.length }
  return {
    middleMm: options.middleMm,
    lengthMm: one.lengthMm,
    depthsMm,
    angles,
    deviationsUm: Float32Array.from(deviations),
    hatched: hatchedCells(spans, depthsMm, angles),
    proven: provenPoints(deviations, nearest, at, size),
    doubtUm: Float32Array.from(
      nearest.flatMap(({ expandedMm }) => [-1000 * expandedMm, 0, 0, 1000 * expandedMm]),
    ),
  }
}

/** Three contacts read the mean of a level: one ring for each. */
function nodesOf(stations: readonly DifferenceStation[], { span }: Wall): WallNodes {
  if (span.nodes.period === Math.PI) return wallNodes([], [], stations.map(readingOf), Math.PI)
  const depths = [...new Set(stations.map(({ depthMm }) => depthMm))]
  const rings = depths.map((depthMm): WallReading => {
    const level = stations.filter((station) => station.depthMm === depthMm)
    const mean = level.reduce((sum, station) => sum + station.differenceMm, 0) / level.length
    return { depthMm, axis: 0, diameterMm: mean }
  })
  return wallNodes([], [0], rings, span.nodes.period)
}

function readingOf({ depthMm, axisDegrees, differenceMm }: DifferenceStation): WallReading {
  return { depthMm, axis: axisRad(axisDegrees), diameterMm: differenceMm }
}

function placesOf(depthsMm: Float64Array, angles: Float64Array): readonly Place[] {
  return [...depthsMm].flatMap((depthMm) => [...angles].map((angle) => ({ depthMm, angle })))
}

/** The difference in mm at a place, as a wall runs: along the depth on each axis, then around. */
function differencesBetween(nodes: WallNodes): (place: Place) => number {
  const { axes, levelsMm, diametersMm, period } = nodes
  const along = [...axes].map((_, axis) =>
    pchip(
      levelsMm,
      diametersMm.filter((_, node) => node % axes.length === axis),
    ),
  )
  let ring: { readonly depthMm: number; readonly curve: ReturnType<typeof periodicPchip> } | undefined
  return ({ depthMm, angle }) => {
    if (ring?.depthMm !== depthMm) {
      const values = along.map((curve) => valueAt(curve, depthMm))
      ring = { depthMm, curve: periodicPchip(axes, values, period) }
    }
    return valueAt(ring.curve, angleAmongAxes(nodes, angle))
  }
}

function nearestTo(place: Place, stations: readonly DifferenceStation[], wall: Wall): DifferenceStation {
  let least = Number.POSITIVE_INFINITY
  let nearest: DifferenceStation | undefined
  for (const station of stations) {
    const arc = (nearestContact(station.axisDegrees, wall.contacts, place.angle) * wall.meanDiameterMm) / 2
    const away = Math.hypot(station.depthMm - place.depthMm, arc)
    if (away >= least) continue
    least = away
    nearest = station
  }
  if (!nearest) throw new Error('differenceGrid: expected a station that both have, got none')
  return nearest
}

/** Every edge of the hatching is a row or a column, so the middle of a cell speaks for all of it. */
function hatchedCells(spans: readonly WallSpan[], depthsMm: Float64Array, angles: Float64Array): Uint8Array {
  return Uint8Array.from(
    [...depthsMm].slice(0, -1).flatMap((from, row) => {
      const depthMm = (from + (depthsMm[row + 1] ?? from)) / 2
      return [...angles].map((angle, column) => {
        const middle = (angle + (angles[column + 1] ?? 2 * Math.PI)) / 2
        return spans.some((span) => isHatched(span, depthMm, middle)) ? 1 : 0
      })
    }),
  )
}

/** Patches beyond the doubt of the nearest station that hold a station which stands out. */
function provenPoints(
  deviations: readonly number[],
  nearest: readonly DifferenceStation[],
  at: readonly Place[],
  size: { readonly rows: number; readonly columns: number },
): Uint8Array {
  const isStation = at.map((place, point) => isAtContact(place, nearest[point]))
  const patches = (sign: 1 | -1) => {
    const seeds = deviations.flatMap((_, point) => {
      const station = nearest[point]
      return isStation[point] && station && standsOut(station) && sign * station.differenceMm > 0
        ? [point]
        : []
    })
    const beyond = Uint8Array.from(deviations, (um, point) =>
      sign * um > 1000 * (nearest[point]?.expandedMm ?? Number.POSITIVE_INFINITY) ? 1 : 0,
    )
    return patchesWith(seeds, beyond, size)
  }
  const above = patches(1)
  const below = patches(-1)
  return above.map((mark, point) => mark || (below[point] === 1 ? 2 : 0))
}

/** Lines pass through every level and axis, so a station's point is met but for rounding. */
function isAtContact(place: Place, station: DifferenceStation | undefined): boolean {
  if (!station || Math.abs(place.depthMm - station.depthMm) > 1e-9) return false
  const away = nearestContact(station.axisDegrees, [0, 180], place.angle)
  return away < 1e-9
}
