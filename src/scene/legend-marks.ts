import type { LimitPair, StationFinding } from '../core/findings'
import type { Port } from '../core/measured'
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
] as const
export type LegendMark = (typeof legendMarkKinds)[number]

export interface MarkedWall {
  readonly grid: WallGrid
  readonly pair: LimitPair | undefined
  readonly stations: readonly StationFinding[]
  readonly ports: readonly Port[]
  readonly isoStepUm: number
  /** Each judged limit is drawn as a ring with its doubt, as the 3D picture has it. */
  readonly ringed: boolean
}

/** The marks that a wall does carry, so that only those are explained. */
export function legendMarks(wall: MarkedWall): readonly LegendMark[] {
  const { grid, pair, stations, ports, isoStepUm, ringed } = wall
  const { hatched, doubtful } = marksPresent(grid, pair)
  const present: Record<LegendMark, boolean> = {
    disc: stations.some((station) => station.counted),
    'disc-open': stations.some((station) => !station.counted),
    hatch: hatched,
    stipple: doubtful || (ringed && hasDoubtBand(grid, pair)),
    dashed: crosses(grid, pair?.maxMm) || (pair?.kind !== 'wear' && crosses(grid, pair?.minMm)),
    'firm-above': grid.proven.includes(1),
    'firm-below': grid.proven.includes(2),
    'iso-lines': isoMarks(grid, isoStepUm).length > 0,
    hole: ports.length > 0,
  }
  return legendMarkKinds.filter((kind) => present[kind])
}

/** Whether a judged limit has a band of doubt about it: dots along its ring. */
function hasDoubtBand(grid: WallGrid, pair: LimitPair | undefined): boolean {
  const edges = [
    ...(pair?.maxMm === undefined ? [] : [2, 3]),
    ...(pair?.minMm === undefined || pair.kind === 'wear' ? [] : [0, 1]),
  ]
  return edges.some((edge) => grid.doubtUm.some((um, index) => index % 4 === edge && Number.isFinite(um)))
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
