import type { WallGrid } from '../core/surface/wall-grid'
import { acrossOf, downOf, type MapScale } from './map-scale'

export interface Rect {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** The cells that nobody measured, gathered into as few rectangles as their rows allow, in pixels. */
export function hatchedRects(grid: WallGrid, scale: MapScale): Rect[] {
  const columns = grid.angles.length
  const start = grid.angles.findIndex((angle) => angle >= Math.PI)
  const open = new Map<string, { from: number; to: number; top: number }>()
  const rects: Rect[] = []
  const edge = (i: number) =>
    i === columns
      ? scale.left + scale.width
      : i === 0
        ? scale.left
        : acrossOf(scale, ((grid.angles[(start + i) % columns] ?? 0) * 180) / Math.PI)
  const close = (run: { from: number; to: number; top: number }, row: number) => {
    const y = downOf(scale, grid.depthsMm[run.top] ?? 0)
    const x = edge(run.from)
    rects.push({ x, y, width: edge(run.to) - x, height: downOf(scale, grid.depthsMm[row] ?? 0) - y })
  }
  const rows = grid.depthsMm.length - 1
  for (let row = 0; row <= rows; row++) {
    const runs = row < rows ? runsOf(grid.hatched, row, columns, start) : []
    const keys = new Set(runs.map(({ from, to }) => `${from} ${to}`))
    for (const [key, run] of open) {
      if (keys.has(key)) continue
      close(run, row)
      open.delete(key)
    }
    for (const run of runs) {
      const key = `${run.from} ${run.to}`
      if (!open.has(key)) open.set(key, { ...run, top: row })
    }
  }
  return rects
}

function runsOf(
  hatched: Uint8Array,
  row: number,
  columns: number,
  start: number,
): { from: number; to: number }[] {
  const runs: { from: number; to: number }[] = []
  let from = -1
  for (let i = 0; i <= columns; i++) {
    const on = i < columns && hatched[row * columns + ((start + i) % columns)] === 1
    if (on && from < 0) from = i
    if (!on && from >= 0) {
      runs.push({ from, to: i })
      from = -1
    }
  }
  return runs
}
