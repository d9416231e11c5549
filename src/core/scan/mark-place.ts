import type { Port, SurfacePlace } from '../measured'
import { portAt } from '../ports/port-at'
import type { CellBox } from './cell-box'
import type { Bridge, MarkShape } from './scan-marks'
import { middle, type WorkingMap } from './working-map'

/** So many times longer one way than the other, a mark is a streak or a band. */
const elongated = 2
/** A band reaches so far around, at least, degrees. */
const bandFrom = 45
/** Wall between two openings is a bridge up to this width, degrees. */
const widestBridge = 22
/** So much of a mark's depth lies between the openings that make its bridge. */
const bridgeShare = 0.6
/** A chamfer reaches so far from the edge of an opening, mm, and one cell at least. */
const chamferMm = 1.5

/** Where a box of cells lies on the wall, to the edges of its cells. */
export function placeOfBox({ rowEdgesMm, columnEdges, columns }: WorkingMap, box: CellBox): SurfacePlace {
  const fromDepthMm = rowEdgesMm[box.top] ?? 0
  const toDepthMm = rowEdgesMm[box.bottom + 1] ?? 0
  if (box.wide >= columns) return { fromDepthMm, toDepthMm, fromDegrees: 0, toDegrees: 360 }
  return {
    fromDepthMm,
    toDepthMm,
    fromDegrees: withinTurn(columnEdges[box.left] ?? 0),
    toDegrees: withinTurn(columnEdges[((box.left + box.wide - 1) % columns) + 1] ?? 0),
  }
}

/** What a mark of this size looks like. */
export function shapeOf(alongMm: number, acrossMm: number, acrossDegrees: number): MarkShape {
  if (alongMm >= elongated * acrossMm) return 'streak'
  if (acrossDegrees >= bandFrom && acrossMm >= elongated * alongMm) return 'band'
  return 'patch'
}

/**
 * The bridge that a mark lies on: most of its depth is on one piece of wall of at most 22° between two openings.
 * Openings are gaps of the map; their edges are those of the ports where they are given.
 */
export function bridgeOf(
  map: WorkingMap,
  core: readonly number[],
  ports: readonly Port[],
): Bridge | undefined {
  const rows = new Set(core.map((cell) => Math.floor(cell / map.columns)))
  const pieces = [...rows].flatMap((row) => {
    const inRow = core.filter((cell) => Math.floor(cell / map.columns) === row)
    const cell = inRow[inRow.length >> 1]
    const piece = cell === undefined ? undefined : pieceAt(map, cell)
    return piece && inRow.every((other) => isOnPiece(map, piece, other)) ? [{ row, ...piece }] : []
  })
  if (pieces.length === 0 || pieces.length < bridgeShare * rows.size) return undefined
  const sample = pieces[pieces.length >> 1]
  return sample ? edgesOf(map, sample, ports) : undefined
}

interface Piece {
  readonly left: number
  readonly wide: number
}

/** The run of cells with values about one, where it ends at a gap on both sides and is narrow. */
function pieceAt(map: WorkingMap, cell: number): Piece | undefined {
  const { columns, columnEdges } = map
  const row = cell - (cell % columns)
  const isGap = (column: number) =>
    Number.isNaN(map.values[row + (((column % columns) + columns) % columns)] ?? 0)
  const column = cell % columns
  let left = column
  let right = column
  const turn = 360 / columns
  while (!isGap(left - 1) && (right - left) * turn <= widestBridge) left--
  while (!isGap(right + 1) && (right - left) * turn <= widestBridge) right++
  const wide = right - left + 1
  if (!isGap(left - 1) || !isGap(right + 1) || columnEdges.length === 0) return undefined
  if ((wide - 1) * turn > widestBridge) return undefined
  return { left: ((left % columns) + columns) % columns, wide }
}

function isOnPiece({ columns }: WorkingMap, { left, wide }: Piece, cell: number): boolean {
  return ((cell % columns) - left + columns) % columns < wide
}

function edgesOf(
  map: WorkingMap,
  { row, left, wide }: Piece & { readonly row: number },
  ports: readonly Port[],
): Bridge {
  const last = (left + wide - 1) % map.columns
  const before = portBeyond(map, ports, row, left, -1)
  const after = portBeyond(map, ports, row, last, 1)
  return {
    fromDegrees: withinTurn(before ? before.toDegrees : (map.columnEdges[left] ?? 0)),
    toDegrees: withinTurn(after ? after.fromDegrees : (map.columnEdges[last + 1] ?? 0)),
    ...(before && after && before.id !== after.id ? { ports: [before.name, after.name] as const } : {}),
  }
}

/** The port that begins within the gap beside a column: a probe stops short of its edge. */
function portBeyond(
  map: WorkingMap,
  ports: readonly Port[],
  row: number,
  column: number,
  step: -1 | 1,
): Port | undefined {
  const depthMm = middle(map.rowEdgesMm, row)
  for (let away = 1; (away * 360) / map.columns <= widestBridge; away++) {
    const beside = (((column + step * away) % map.columns) + map.columns) % map.columns
    if (!Number.isNaN(map.values[row * map.columns + beside] ?? 0)) return undefined
    const port = portAt(ports, depthMm, middle(map.columnEdges, beside))
    if (port) return port
  }
  return undefined
}

/** Whether every cell of a mark lies within the reach of a chamfer from a gap of the map. */
export function isBesideOpening(map: WorkingMap, core: readonly number[], diameterMm: number): boolean {
  const { columns, rows, rowEdgesMm } = map
  const cellMm = (Math.PI * diameterMm) / columns
  const rowMm = ((rowEdgesMm[rows] ?? 0) - (rowEdgesMm[0] ?? 0)) / rows
  const reachColumns = Math.max(1, Math.floor(chamferMm / cellMm))
  const reachRows = Math.max(1, Math.floor(chamferMm / Math.max(rowMm, 1e-9)))
  return core.every((cell) => hasGapNear(map, cell, reachRows, reachColumns))
}

function hasGapNear(
  { rows, columns, values }: WorkingMap,
  cell: number,
  reachRows: number,
  reachColumns: number,
): boolean {
  const row = Math.floor(cell / columns)
  for (let r = Math.max(0, row - reachRows); r <= Math.min(rows - 1, row + reachRows); r++) {
    for (let step = -reachColumns; step <= reachColumns; step++) {
      const column = ((cell % columns) + step + columns) % columns
      if (Number.isNaN(values[r * columns + column] ?? 0)) return true
    }
  }
  return false
}

/** An angle of any turn as the same in [0, 360), degrees. */
export function withinTurn(degrees: number): number {
  return ((degrees % 360) + 360) % 360
}
