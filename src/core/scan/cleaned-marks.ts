import type { SurfacePlace } from '../measured'
import { isWithinSurface, middleOfSurface, surfaceWidthDegrees } from '../surface-findings/surface-place'
import { formDoubtShare } from './form-doubt'
import { withinTurn } from './mark-place'
import type { RadialScan } from './radial-scan'
import type { ScanMark, ScanMarks } from './scan-marks'
import { turnBetween } from './scan-turn'
import { middle, type WorkingMap } from './working-map'

/**
 * What became of a mark: nothing of it is left; it is less or more than it was; it is as it was, within doubt; it
 * stood proud and lies back now; or the second scan has no value there.
 */
export type MarkFate =
  | 'gone'
  | 'less'
  | 'as-before'
  | 'more'
  | 'turned-larger'
  | 'turned-smaller'
  | 'not-seen'

/** A mark of the scan before cleaning, and what the place showed afterwards. */
export interface CleanedMark {
  /** Its place in the list of the first scan. */
  readonly mark: number
  readonly fate: MarkFate
  /** Mean over the place of its height, over the smooth form, before and after, with ± at 95 %, µm. */
  readonly before: MeanHeight
  readonly after?: MeanHeight
  /** Marks of the second scan that lie where it lay, by their place in that list. */
  readonly now: readonly number[]
}

export interface MeanHeight {
  readonly um: number
  readonly expandedUm: number
}

/** Two scans of one bore, before and after stuck metal was cleaned off. */
export type CleanedMarks =
  | {
      readonly marks: readonly CleanedMark[]
      /** Marks of the second scan where the first had none. */
      readonly fresh: readonly number[]
      /** Whether the openings of both show that they begin at one angle; a wall without openings cannot. */
      readonly sameZero: 'shown' | 'taken'
    }
  /** The openings of the second lie so much further clockwise: nothing was compared. */
  | { readonly turnedDegrees: number }

/** A scan and its marks. */
export interface MarkedScan {
  readonly scan: RadialScan
  readonly found: ScanMarks
}

/** Two-sided 95 % of a normal distribution. */
const coverage = 1.959964

/**
 * What became of each mark when the bore was cleaned. At the place of a mark's height the mean over the smooth form is
 * taken from both scans; its doubt is σ/√n of the scan and what a smooth form may miss. A mark is gone when what is
 * left is within ± of 0; less or more when the two differ by more than the doubt of both, that of the first being the one
 * it has as the highest place. Scans whose openings do not lie at the same angles are not compared. Own derivation.
 */
export function cleanedMarks(before: MarkedScan, after: MarkedScan): CleanedMarks {
  const turn = turnBetween(before.scan, after.scan)
  if (turn !== undefined && turn !== 0) return { turnedDegrees: turn }
  const marks = before.found.marks.map((mark, index): CleanedMark => {
    const place = toMiddles(mark.peakPlace, before.found.map)
    const was = meanOver(before, place)
    const is = meanOver(after, place)
    return {
      mark: index,
      fate: fateOf(mark, was, is),
      before: was ?? { um: mark.heightUm, expandedUm: mark.expandedUm },
      ...(is ? { after: is } : {}),
      now: overlapping(mark, after.found.marks),
    }
  })
  const fresh = after.found.marks.flatMap((mark, index) =>
    overlapping(mark, before.found.marks).length === 0 ? [index] : [],
  )
  return { marks, fresh, sameZero: turn === undefined ? 'taken' : 'shown' }
}

function fateOf(mark: ScanMark, was: MeanHeight | undefined, is: MeanHeight | undefined): MarkFate {
  if (!is || !was) return 'not-seen'
  const side = mark.sign === 'larger' ? 1 : -1
  const left = side * is.um
  if (left < -is.expandedUm) return mark.sign === 'larger' ? 'turned-smaller' : 'turned-larger'
  if (left <= is.expandedUm) return 'gone'
  const change = left - side * was.um
  if (Math.abs(change) <= Math.hypot(mark.expandedUm, is.expandedUm)) return 'as-before'
  return change < 0 ? 'less' : 'more'
}

/** From the middle of a place's first cell to that of its last: what a finer scan surely sees of it. */
function toMiddles(place: SurfacePlace, { rows, columns, rowEdgesMm }: WorkingMap): SurfacePlace {
  const halfRow = Math.min(
    ((rowEdgesMm[rows] ?? 0) - (rowEdgesMm[0] ?? 0)) / (2 * rows),
    (place.toDepthMm - place.fromDepthMm) / 2,
  )
  const halfColumn = Math.min(180 / columns, surfaceWidthDegrees(place) / 2)
  return {
    fromDepthMm: place.fromDepthMm + halfRow,
    toDepthMm: place.toDepthMm - halfRow,
    fromDegrees: withinTurn(place.fromDegrees + halfColumn),
    toDegrees: withinTurn(place.toDegrees - halfColumn),
  }
}

/** Mean over the smooth form of the cells in a place, or of those half a cell beside it; undefined for none. */
function meanOver(
  { scan, found: { map, sigmaUm } }: MarkedScan,
  place: SurfacePlace,
): MeanHeight | undefined {
  const { rows, columns, values, rowEdgesMm, columnEdges } = map
  const halfRow = ((rowEdgesMm[rows] ?? 0) - (rowEdgesMm[0] ?? 0)) / (2 * rows)
  for (const margin of [0, 1]) {
    let sum = 0
    let count = 0
    for (let cell = 0; cell < rows * columns; cell++) {
      const value = values[cell] ?? Number.NaN
      const depthMm = middle(rowEdgesMm, Math.floor(cell / columns))
      const angle = middle(columnEdges, cell % columns)
      if (Number.isNaN(value)) continue
      if (!isWithinSurface(place, depthMm, angle, margin * halfRow, (margin * 180) / columns)) continue
      sum += value
      count++
    }
    if (count === 0) continue
    const doubtUm = sigmaUm * Math.hypot(1 / Math.sqrt(count), formDoubtShare(scan))
    return { um: sum / count, expandedUm: coverage * doubtUm }
  }
  return undefined
}

/** Marks that lie at least half within a mark, or it within them: by depth and by angle. */
function overlapping(mark: SurfacePlace, others: readonly ScanMark[]): number[] {
  return others.flatMap((other, index) => (doOverlap(mark, other) ? [index] : []))
}

function doOverlap(one: SurfacePlace, other: SurfacePlace): boolean {
  const along = Math.min(one.toDepthMm, other.toDepthMm) - Math.max(one.fromDepthMm, other.fromDepthMm)
  if (2 * along < Math.min(one.toDepthMm - one.fromDepthMm, other.toDepthMm - other.fromDepthMm)) return false
  const [wide, narrow] = surfaceWidthDegrees(one) >= surfaceWidthDegrees(other) ? [one, other] : [other, one]
  const { depthMm, angleDegrees } = middleOfSurface(narrow)
  return isWithinSurface({ ...wide, fromDepthMm: depthMm, toDepthMm: depthMm }, depthMm, angleDegrees)
}
