import { type CellBox, cellBox, isInBox } from './cell-box'
import { halfHeightBox } from './half-height-box'
import { doColumnsMeet, joinedRegion, joinedRegions } from './joined-regions'
import { type MarkRegion, markRegions } from './mark-regions'
import { narrowLineMm, withoutWideMark } from './narrow-lines'
import type { MarkSign } from './scan-marks'
import type { RingMap } from './window-means'
import type { WorkingMap } from './working-map'

/** A narrow line is looked for where it covers so many cells or more. */
const leastLineColumns = 2
/** A mark within which lines are looked for is so many cells wider than a line. */
const widerBy = 3
/** Lines go on beyond the half height of the mark that they lie in, by these shares of its size. */
const beyondAcross = 0.5
const beyondAlong = 0.25

/** A region, the map that its height is read from, and the wider region that it is a narrow line of. */
export interface SeenMark {
  readonly region: MarkRegion
  readonly heights: RingMap
  readonly wide?: MarkRegion
}

/**
 * Looks at a map twice: as it is, and with the wide marks taken away, for narrow lines of the other sign within them.
 * Lines are told from the mark where a line of 1.4 mm covers two cells or more.
 */
export function seenMarks(
  map: WorkingMap,
  sigma: number,
  diameterMm: number,
): { readonly seen: readonly SeenMark[]; readonly threshold: number } {
  const { regions, threshold } = markRegions(map, sigma, map.misfit, ['smaller', 'larger'])
  const lineColumns = Math.ceil((narrowLineMm * map.columns) / (Math.PI * diameterMm))
  const touching = joinedRegions(map, regions, diameterMm, 0)
  const wide = lineColumns < leastLineColumns ? [] : wideMarks(map, sigma, touching, diameterMm, lineColumns)
  const seen = (['smaller', 'larger'] as const).flatMap((sign) => {
    const own = wide.filter(({ region }) => region.sign === sign)
    const others = wide.filter(({ region }) => region.sign !== sign)
    const found =
      others.length > 0
        ? linesWithin(map, sigma, diameterMm, sign, others, lineColumns)
        : touching
            .filter((region) => region.sign === sign)
            .map((region): SeenMark => ({ region, heights: map }))
    // Pieces and slopes of a wide mark belong to it.
    const rest = found.filter(
      ({ region }) => !own.some(({ box }) => shareWithin(region, box, map.columns) > 0.5),
    )
    return [...own.map(({ region }): SeenMark => ({ region, heights: map })), ...rest]
  })
  return { seen, threshold }
}

/**
 * Marks wider than lines, their pieces joined that a line parts. Of two signs that lie in one
 * another the one with more wall is the mark, and what is within it its lines.
 */
function wideMarks(
  map: WorkingMap,
  sigma: number,
  touching: readonly MarkRegion[],
  diameterMm: number,
  lineColumns: number,
): Wide[] {
  const wide = joinedRegions(map, touching, diameterMm, lineColumns)
    .filter(({ box }) => box.wide >= lineColumns + widerBy && box.wide < map.columns / 4)
    .map((region) => {
      const trimmed = toHalfHeight(map, region, sigma)
      return { region: trimmed, box: reachOf(map, trimmed.box) }
    })
  return wide.filter(
    ({ region }) =>
      !wide.some(
        (other) =>
          other.region.sign !== region.sign &&
          other.region.core.length > region.core.length &&
          shareWithin(region, other.box, map.columns) > 0.5,
      ),
  )
}

/** Without the pieces at its ends that have less than half of its height. */
function toHalfHeight(map: WorkingMap, region: MarkRegion, sigma: number): MarkRegion {
  const half = halfHeightBox(map, region.core, region.sign, sigma)
  const core = region.core.filter((cell) => isInBox(half, map.columns, cell))
  return { ...region, core, box: cellBox(core, map.columns) }
}

function shareWithin({ core }: MarkRegion, box: CellBox, columns: number): number {
  return core.filter((cell) => isInBox(box, columns, cell)).length / core.length
}

interface Wide {
  readonly region: MarkRegion
  readonly box: CellBox
}

function linesWithin(
  map: WorkingMap,
  sigma: number,
  diameterMm: number,
  sign: MarkSign,
  others: readonly Wide[],
  lineColumns: number,
): SeenMark[] {
  let standing: RingMap = map
  let heights: RingMap = map
  for (const { region, box } of others) {
    standing = withoutWideMark(standing, box, region.sign, sigma, lineColumns).standing
    heights = withoutWideMark(heights, box, region.sign, sigma, lineColumns).heights
  }
  const { regions } = markRegions(standing, sigma, map.misfit, [sign])
  const seen = joinedRegions(map, regions, diameterMm, 0).map((region): SeenMark => {
    const wide = others.find(({ box }) => shareWithin(region, box, map.columns) >= 0.5)
    return { region, heights, ...(wide ? { wide: wide.region } : {}) }
  })
  return wholeLines(seen, map.columns)
}

/** Pieces of a line within one wide mark, one below the other, are one line: the mark hides it where it is highest. */
function wholeLines(seen: readonly SeenMark[], columns: number): SeenMark[] {
  const whole: SeenMark[] = []
  for (const one of seen) {
    const at = whole.findIndex((other) => {
      if (one.wide === undefined || one.wide !== other.wide) return false
      return doColumnsMeet(one.region.box, other.region.box, columns)
    })
    const other = whole[at]
    if (!other) whole.push(one)
    else whole[at] = { ...other, region: joinedRegion(other.region, one.region, columns) }
  }
  return whole
}

/** The box of a mark with its slopes, and what lines may go on beyond it. */
function reachOf({ rows, columns }: WorkingMap, { top, bottom, left, wide }: CellBox): CellBox {
  const across = Math.ceil(beyondAcross * wide)
  const along = Math.ceil(beyondAlong * (bottom - top + 1))
  return {
    top: Math.max(0, top - along),
    bottom: Math.min(rows - 1, bottom + along),
    left: (left - across + columns) % columns,
    wide: Math.min(columns, wide + 2 * across),
  }
}
