import type { DrawnStation, LimitPair } from '../core/findings'
import type { Port, SurfaceFinding } from '../core/measured'
import type { WallGrid } from '../core/surface/wall-grid'
import { isoMarks } from './iso-marks'
import { marksPresent } from './marks-present'

/** A mark that a drawn wall may carry, in the order in which a legend explains them. */
export const legendMarkKinds = [
  'disc',
  'disc-open',
  'hatch',
  'stipple',
  'dashed',
  'firm-above',
  'firm-below',
  'iso-lines',
  'hole',
  'surface',
] as const
export type LegendMark = (typeof legendMarkKinds)[number]

export interface MarkedWall {
  readonly grid: WallGrid
  readonly pair: LimitPair | undefined
  readonly stations: readonly DrawnStation[]
  readonly ports: readonly Port[]
  readonly surface: readonly SurfaceFinding[]
  readonly isoStepUm: number
  /** Of the 3D picture, which draws each judged limit as a ring with its doubt; the flat map has none. */
  readonly exaggeration: number | undefined
}

/** Share of the middle diameter from which a band of doubt can be seen as drawn. */
const seenShare = 0.005

/** The marks that a wall does carry, so that only those are explained. */
export function legendMarks(wall: MarkedWall): readonly LegendMark[] {
  const { grid, pair, stations, ports, surface, isoStepUm, exaggeration } = wall
  const { hatched, doubtful } = marksPresent(grid, pair, surface)
  const present: Record<LegendMark, boolean> = {
    disc: stations.some((station) => station.counted),
    'disc-open': stations.some((station) => !station.counted),
    hatch: hatched,
    stipple: doubtful || (exaggeration !== undefined && showsDoubtBand(grid, pair, exaggeration)),
    dashed: crosses(grid, pair?.maxMm) || (pair?.kind !== 'wear' && crosses(grid, pair?.minMm)),
    'firm-above': grid.proven.includes(1),
    'firm-below': grid.proven.includes(2),
    'iso-lines': isoMarks(grid, isoStepUm).length > 0,
    hole: ports.length > 0,
    surface: surface.length > 0,
  }
  return legendMarkKinds.filter((kind) => present[kind])
}

/** Whether a judged limit has a band of doubt along its ring that is wide enough to be seen. */
function showsDoubtBand(grid: WallGrid, pair: LimitPair | undefined, exaggeration: number): boolean {
  const bands = [
    ...(pair?.maxMm === undefined ? [] : [2]),
    ...(pair?.minMm === undefined || pair.kind === 'wear' ? [] : [0]),
  ]
  const leastUm = (seenShare * grid.middleMm * 1000) / exaggeration
  return bands.some((edge) =>
    grid.doubtUm.some((um, index) => {
      if (index % 4 !== edge) return false
      const widthUm = (grid.doubtUm[index + 1] ?? um) - um
      return Number.isFinite(widthUm) && widthUm >= leastUm
    }),
  )
}

/** Whether measured wall lies on both sides of a limit, mm, within one cell: its crossing is drawn there. */
function crosses(grid: WallGrid, limitMm: number | undefined): boolean {
  if (limitMm === undefined) return false
  const limitUm = (limitMm - grid.middleMm) * 1000
  const columns = grid.angles.length
  return grid.hatched.some((hatched, cell) => {
    if (hatched) return false
    const column = cell % columns
    const next = cell - column + ((column + 1) % columns)
    const corners = [cell, next, cell + columns, next + columns].map((node) => grid.deviationsUm[node] ?? 0)
    return Math.min(...corners) < limitUm && Math.max(...corners) > limitUm
  })
}
