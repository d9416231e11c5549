import { type CellBox, isInBox } from './cell-box'
import { joinedRegion, joinedRegions } from './joined-regions'
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
  const { regions, threshold } = markRegions(map, sigma, ['smaller', 'larger'])
  const lineColumns = Math.ceil((narrowLineMm * map.columns) / (Math.PI * diameterMm))
  const canTell = lineColumns >= leastLineColumns
  const joined = joinedRegions(map, regions, diameterMm, canTell ? lineColumns : 0)
  const isWide = ({ wide }: CellBox) => canTell && wide >= lineColumns + widerBy && wide < map.columns / 4
  const wide = joined
    .filter(({ box }) => isWide(box))
    .map((region) => ({ region, box: reachOf(map, region.box) }))
  const seen = (['smaller', 'larger'] as const).flatMap((sign) => {
    const others = wide.filter(({ region }) => region.sign !== sign)
    if (others.length === 0) {
      return joined.filter((region) => region.sign === sign).map((region) => ({ region, heights: map }))
    }
    return linesWithin(map, sigma, diameterMm, sign, others, lineColumns)
  })
  return { seen, threshold }
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
  const { regions } = markRegions(standing, sigma, [sign])
  const seen = joinedRegions(map, regions, diameterMm, 0).map((region): SeenMark => {
    const wide = others.find(({ box }) => {
      const inside = region.core.filter((cell) => isInBox(box, map.columns, cell)).length
      return 2 * inside >= region.core.length
    })
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
      return doOverlap(one.region.box, other.region.box, columns)
    })
    const other = whole[at]
    if (!other) whole.push(one)
    else whole[at] = { ...other, region: joinedRegion(other.region, one.region, columns) }
  }
  return whole
}

function doOverlap(one: CellBox, other: CellBox, columns: number): boolean {
  const after = (a: CellBox, b: CellBox) => (b.left - a.left + columns) % columns < a.wide
  return after(one, other) || after(other, one)
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
