import type { MapPaint } from '../../charts/MapWall'
import type { LimitPair } from '../../core/findings'
import type { WallGrid } from '../../core/surface/wall-grid'

/** What colours a wall between a pair of limits. */
export type PaintOf = (grid: WallGrid, pair: LimitPair | undefined) => MapPaint
