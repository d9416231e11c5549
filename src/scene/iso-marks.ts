import type { WallGrid } from '../core/surface/wall-grid'

/** A line of one deviation, µm from the middle, and places where it crosses measured wall. */
export interface IsoMark {
  readonly deviationUm: number
  readonly places: readonly { readonly depthMm: number; readonly angle: number }[]
}

const scans = 24
const placesKept = 48

/**
 * Places where each iso-line of the given step crosses measured wall, looked for along evenly chosen columns
 * and rows. Cells that are hatched or hold a proven corner are left out: the first has no lines, the second
 * its own mark. A step of 0: no lines.
 */
export function isoMarks(grid: WallGrid, stepUm: number): readonly IsoMark[] {
  if (stepUm <= 0) return []
  const found = new Map<number, { depthMm: number; angle: number }[]>()
  const note = (level: number, place: { depthMm: number; angle: number }) => {
    const places = found.get(level) ?? []
    places.push(place)
    found.set(level, places)
  }
  const columns = grid.angles.length
  const rows = grid.depthsMm.length
  for (const column of evenly(columns, scans)) {
    for (let row = 0; row + 1 < rows; row++) crossings(grid, stepUm, { row, column, alongDepth: true }, note)
  }
  for (const row of evenly(rows - 1, scans)) {
    for (let column = 0; column < columns; column++) {
      crossings(grid, stepUm, { row, column, alongDepth: false }, note)
    }
  }
  return [...found]
    .sort(([one], [other]) => one - other)
    .map(([level, places]) => ({ deviationUm: level * stepUm, places: thinned(places) }))
}

interface Edge {
  readonly row: number
  readonly column: number
  /** True: the cell's edge down the bore; false: its edge round it. */
  readonly alongDepth: boolean
}

/** Notes each whole multiple of the step between the two nodes of an edge. */
function crossings(
  grid: WallGrid,
  stepUm: number,
  edge: Edge,
  note: (level: number, place: { depthMm: number; angle: number }) => void,
): void {
  const columns = grid.angles.length
  const next = (edge.column + 1) % columns
  const first = edge.row * columns + edge.column
  const second = edge.alongDepth ? first + columns : edge.row * columns + next
  if (grid.hatched[first] || grid.proven[first] || grid.proven[second]) return
  const from = (grid.deviationsUm[first] ?? 0) / stepUm
  const to = (grid.deviationsUm[second] ?? 0) / stepUm
  if (from === to) return
  const angle = grid.angles[edge.column] ?? 0
  const angleNext = next === 0 ? 2 * Math.PI : (grid.angles[next] ?? 0)
  const depth = grid.depthsMm[edge.row] ?? 0
  const depthNext = grid.depthsMm[edge.row + 1] ?? depth
  for (let level = Math.ceil(Math.min(from, to)); level <= Math.max(from, to); level++) {
    const share = (level - from) / (to - from)
    if (edge.alongDepth) note(level, { depthMm: depth + share * (depthNext - depth), angle })
    else note(level, { depthMm: depth, angle: angle + share * (angleNext - angle) })
  }
}

function evenly(count: number, wanted: number): readonly number[] {
  const taken = Math.min(count, wanted)
  return Array.from({ length: taken }, (_, index) => Math.floor(((index + 0.5) * count) / taken))
}

function thinned<Place>(places: readonly Place[]): readonly Place[] {
  return evenly(places.length, placesKept).flatMap((index) => places[index] ?? [])
}
