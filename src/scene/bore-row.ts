import type { DrawnStation, LimitPair } from '../core/findings'
import type { Port, SurfaceFinding } from '../core/measured'
import type { WallGrid } from '../core/surface/wall-grid'
import { outerRadius } from './bore-extent'
import type { PictureView } from './picture-view'
import type { WallWay } from './wall-way'

/** A bore as it is drawn. */
export interface RowBore {
  readonly id: string
  /** Its name, written below it, and under that its worst figure. */
  readonly title: string
  readonly figure: string
  readonly grid: WallGrid
  readonly ports: readonly Port[]
  readonly stations: readonly DrawnStation[]
  readonly surface: readonly SurfaceFinding[]
  readonly pair?: LimitPair
  /** Where it is not drawn at the exaggeration of the row. */
  readonly exaggeration?: number
  /** The difference of two of the others. */
  readonly isDifference?: true
  /** Drawn on its way between two surveys. */
  readonly way?: WallWay
}

/** Bores side by side: those other than the one in hand, and where in the row that one stands. */
export interface BoreRow {
  readonly bores: readonly RowBore[]
  /** Which of `bores` is in hand. */
  readonly chosen: number
  /** What is pointed at on one is pointed at on all. */
  readonly isLinked?: true
}

/** The exaggeration that a bore of a row is drawn at. */
export function drawnAt(bore: Pick<RowBore, 'exaggeration'> | undefined, ofRow: number): number {
  return bore?.exaggeration ?? ofRow
}

/** From this many bores on, only the one in hand has its shell, iso-lines and discs. */
export const plainFrom = 4

/** Room between bores, as a share of the widest: few leave some for the depths beside the one in hand. */
const room = { few: 0.45, many: 0.15 }

/**
 * How far each bore of a row stands from its middle, mm to the right of the picture, so that the widest of
 * all that is drawn have room between them. One bore stands at 0.
 */
export function rowOffsets(row: BoreRow | undefined, exaggeration: number): readonly number[] {
  if (!row) return [0]
  const widest = Math.max(...row.bores.map((bore) => widestRadius(bore, exaggeration)))
  const step = 2 * widest * (1 + (row.bores.length < plainFrom ? room.few : room.many))
  return row.bores.map((_, index) => (index - (row.bores.length - 1) / 2) * step)
}

const depthsLookedAt = 9
const anglesLookedAt = 32

function widestRadius({ grid, pair, ...bore }: RowBore, ofRow: number): number {
  const exaggeration = drawnAt(bore, ofRow)
  let widest = 0
  for (let i = 0; i < depthsLookedAt; i++) {
    const depthMm = (i / (depthsLookedAt - 1)) * grid.lengthMm
    for (let j = 0; j < anglesLookedAt; j++) {
      const angle = (j / anglesLookedAt) * 2 * Math.PI
      widest = Math.max(widest, outerRadius({ grid, pair, exaggeration }, depthMm, angle))
    }
  }
  return widest
}

/** The bore whose middle is nearest to a place of the picture, CSS pixels; `offsets` from the bore in hand. */
export function boreUnder(
  { bores }: BoreRow,
  offsets: readonly number[],
  view: PictureView,
  x: number,
): RowBore | undefined {
  if (!view.project({ x: 0, y: 0, z: 0 })) return undefined
  const away = offsets.map((offset) => Math.abs(view.x + offset * view.pixelsPerMm - x))
  return bores[away.indexOf(Math.min(...away))]
}
