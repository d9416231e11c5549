import { portAt } from '../core/ports/port-at'
import { rampSpan } from '../core/surface/ramp-span'
import type { Job } from './schema'
import { findingOf, mapGridOfBore } from './selectors'

/** The wall of a thumbnail unrolled: so many marks across, from 180° over the front to 180° again, and down. */
export const thumbnailColumns = 24
export const thumbnailRows = 10

/** Steps from the smallest limit to the largest, as the colours of a wall have. */
export const thumbnailSteps = 9

/**
 * What a mark stands for. A step of the colours by its digit where somebody measured, by its letter where nobody
 * did; the others each by a sign of its own.
 */
export type ThumbnailMark =
  | { readonly kind: 'step'; readonly step: number; readonly isMeasured: boolean }
  | { readonly kind: 'proven-above' | 'proven-below' | 'port' }

const provenAbove = '+'
const provenBelow = '-'
const port = 'o'
const firstLetter = 'a'.charCodeAt(0)

/** One mark for each place, row by row from the deck down; any text for which this holds can be drawn. */
export const thumbnailPattern = new RegExp(`^(?:[0-8a-i+\\-o]{${thumbnailColumns * thumbnailRows}})?$`)

export function thumbnailMark(mark: string): ThumbnailMark {
  if (mark === provenAbove) return { kind: 'proven-above' }
  if (mark === provenBelow) return { kind: 'proven-below' }
  if (mark === port) return { kind: 'port' }
  const isMeasured = mark >= '0' && mark <= '8'
  return { kind: 'step', isMeasured, step: isMeasured ? Number(mark) : mark.charCodeAt(0) - firstLetter }
}

/** The wall of a bore as it is drawn, by its latest survey, as a text of marks; empty while there is no wall. */
export function boreThumbnail(job: Job, boreId: string): string {
  const grid = mapGridOfBore(job, boreId)
  const bore = job.bores.find(({ id }) => id === boreId)
  const pair = findingOf(job, boreId)?.pair
  if (!grid || !bore) return ''
  const span = rampSpan(grid.middleMm, pair, grid.deviationsUm)
  const columns = grid.angles.length
  const rows = grid.depthsMm.length
  const proven = provenMarks(grid.proven, rows, columns)
  let marks = ''
  for (let row = 0; row < thumbnailRows; row++) {
    const depthMm = ((row + 0.5) / thumbnailRows) * grid.lengthMm
    const gridRow = Math.min(rows - 2, cellOf(grid.depthsMm, depthMm))
    for (let column = 0; column < thumbnailColumns; column++) {
      const degrees = ((column + 0.5) / thumbnailColumns) * 360 - 180
      const gridColumn = cellOf(grid.angles, ((degrees + 360) % 360) * (Math.PI / 180))
      const at = gridRow * columns + gridColumn
      const share = ((grid.deviationsUm[at] ?? 0) - span.lowUm) / (span.highUm - span.lowUm)
      const step = Math.round(Math.min(1, Math.max(0, share)) * (thumbnailSteps - 1))
      const isMeasured = grid.hatched[at] === 0
      if (portAt(bore.ports, depthMm, degrees)) marks += port
      else if (proven[row * thumbnailColumns + column]) marks += proven[row * thumbnailColumns + column]
      else marks += isMeasured ? `${step}` : String.fromCharCode(firstLetter + step)
    }
  }
  return marks
}

/** A proven patch is seen however small it is: any of its points marks its place. */
function provenMarks(proven: Uint8Array, rows: number, columns: number): string[] {
  const marks = new Array<string>(thumbnailColumns * thumbnailRows).fill('')
  proven.forEach((side, point) => {
    if (side === 0) return
    const row = Math.floor(((Math.floor(point / columns) + 0.5) / rows) * thumbnailRows)
    const turned = ((point % columns) / columns + 0.5) % 1
    marks[row * thumbnailColumns + Math.floor(turned * thumbnailColumns)] =
      side === 1 ? provenAbove : provenBelow
  })
  return marks
}

/** Index of the last of increasing lines that is not beyond a place. */
function cellOf(lines: Float64Array, place: number): number {
  let cell = 0
  while (cell + 1 < lines.length && (lines[cell + 1] ?? place) <= place) cell += 1
  return cell
}
