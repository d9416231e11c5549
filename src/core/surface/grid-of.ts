import type { BoreFinding } from '../findings'
import { middleOf } from './exaggeration'
import { doubtEdges, provenPoints } from './grid-judgement'
import { columnAngles, type GridLines, rowDepths } from './grid-lines'
import { periodicPchip, periodicSlopes, placeOn, valueAt, valueIn } from './pchip'
import type { Wall } from './wall'
import type { WallGrid } from './wall-grid'
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
  const judged = { ...wall, period: wall.span.nodes.period }
  const doubt = doubtEdges(judged, lines, middleMm)
  return {
    middleMm,
    lengthMm: lines.depthsMm.at(-1) ?? wall.lengthMm,
    ...lines,
    deviationsUm: new Float32Array(deviations),
    hatched: hatchedCells(wall, lines),
    proven: provenPoints(judged, lines, deviations, doubt),
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
