import { reachOfReadingMm } from '../notes'
import type { WallGrid } from './wall-grid'
import type { WallNodes } from './wall-nodes'
import type { WallSpan } from './wall-span'

/** Rows and columns of a grid: depths in mm, angles in rad. */
export type GridLines = Pick<WallGrid, 'depthsMm' | 'angles'>

/** What the lines of a grid follow: the levels, axes, belts and footprints of a wall, or of several. */
export interface LinedSpan extends Omit<WallSpan, 'nodes'> {
  readonly nodes: Pick<WallNodes, 'levelsMm' | 'axes' | 'period'>
}

/**
 * What the lines of a grid follow that serves several walls at once, so that each passes through its own
 * readings on it. Where some are symmetric (period π) and others are not, the axes of the first stand twice.
 * Throws without a wall.
 */
export function joinedSpans(spans: readonly LinedSpan[]): LinedSpan {
  const period = Math.max(...spans.map(({ nodes }) => nodes.period))
  if (!Number.isFinite(period)) throw new RangeError('joinedSpans: expected at least one wall, got none')
  const axesOf = ({ nodes }: LinedSpan) =>
    nodes.period === period ? [...nodes.axes] : [...nodes.axes].flatMap((axis) => [axis, axis + nodes.period])
  const distinct = (values: readonly number[]) => Float64Array.from(new Set(values)).sort()
  const footprints = spans.flatMap((span) => span.footprints ?? [])
  return {
    nodes: {
      levelsMm: distinct(spans.flatMap(({ nodes }) => [...nodes.levelsMm])),
      axes: distinct(spans.flatMap(axesOf)),
      period,
    },
    belts: spans.flatMap(({ belts }) => belts),
    ...(footprints.length > 0 ? { footprints } : {}),
  }
}

/** Edges nearer than this to a row that is there already get no row of their own, mm. */
const oneRowMm = 1e-3

/** Edges nearer than this to a column that is there already get no column of their own, rad. */
const oneColumn = 1e-5

/**
 * Depths of the grid's rows, mm, increasing from 0 to the length: both ends, every level, every edge of a
 * belt, every level ± 8 mm (where the wall gets out of reach of a reading), and as many between as make it
 * at least `least` rows, evenly. What lies outside the bore is left out. An edge within 1 µm of another row
 * shares it.
 */
export function rowDepths(span: LinedSpan, lengthMm: number, least: number): Float64Array {
  const within = (depth: number) => depth >= 0 && depth <= lengthMm
  const levels = [...span.nodes.levelsMm]
  const rows = new Set([0, lengthMm, ...levels.filter(within)])
  const edges = [
    ...span.belts.flatMap((belt) => [belt.fromDepthMm, belt.toDepthMm]),
    ...levels.flatMap((level) => [level - reachOfReadingMm, level + reachOfReadingMm]),
  ]
  for (const edge of edges.filter(within)) {
    if ([...rows].every((row) => Math.abs(row - edge) > oneRowMm)) rows.add(edge)
  }
  return filled([...rows].sort(increasing), least - 1)
}

/**
 * Angles of the grid's columns, rad, increasing from 0 to below 2π: every axis, both ends, and as many
 * between as make it at least `least` columns, evenly. The two halves are alike where the wall's period is
 * π. With footprints, their edges and middles are columns too.
 */
export function columnAngles({ nodes, footprints }: LinedSpan, least: number): Float64Array {
  const turns = Math.round((2 * Math.PI) / nodes.period)
  const prints = (footprints ?? []).flatMap(({ angle, halfWidth }) =>
    [angle - halfWidth, angle, angle + halfWidth].map((edge) => modulo(edge, nodes.period)),
  )
  const lines = new Set([0, ...nodes.axes])
  for (const edge of prints) {
    if ([...lines, nodes.period].every((line) => Math.abs(line - edge) > oneColumn)) lines.add(edge)
  }
  const closed = filled([...lines, nodes.period].sort(increasing), Math.ceil(least / turns))
  const once = closed.slice(0, -1)
  return turns === 1 ? once : Float64Array.of(...once, ...once.map((angle) => angle + nodes.period))
}

/** The lines with others put evenly between them, so that there are at least this many intervals. */
function filled(lines: readonly number[], leastIntervals: number): Float64Array {
  const first = lines[0] ?? 0
  const widest = ((lines[lines.length - 1] ?? first) - first) / leastIntervals
  return Float64Array.from(
    lines.flatMap((from, i) => {
      const to = lines[i + 1]
      if (to === undefined) return [from]
      const pieces = Math.max(1, Math.ceil((to - from) / widest - 1e-9))
      return Array.from({ length: pieces }, (_, piece) => from + ((to - from) * piece) / pieces)
    }),
  )
}

function modulo(value: number, period: number): number {
  const rest = ((value % period) + period) % period
  return rest === period ? 0 : rest
}

function increasing(a: number, b: number): number {
  return a - b
}
