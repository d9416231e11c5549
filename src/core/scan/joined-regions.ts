import { type CellBox, cellBox, isInBox } from './cell-box'
import { shapeOf } from './mark-place'
import type { MarkRegion } from './mark-regions'
import type { MarkShape } from './scan-marks'
import type { WorkingMap } from './working-map'

/**
 * Regions of one sign that are one mark: those that touch, streaks one below the other with nothing but an opening
 * between them, and bands one beside the other with nothing but an opening between them; with `lineColumns` above 0
 * also those that a narrow line of so many columns, or somewhat more, parts. The evidence of the plainest stands for
 * all.
 */
export function joinedRegions(
  map: WorkingMap,
  regions: readonly MarkRegion[],
  diameterMm: number,
  lineColumns: number,
): MarkRegion[] {
  const isOne = (one: MarkRegion, other: MarkRegion) =>
    one.sign === other.sign &&
    (isOneMark(map, one, other, diameterMm) ||
      (lineColumns > 0 && areParted(map, one, other, regions, lineColumns)))
  const marks: MarkRegion[] = []
  for (const region of regions) {
    let joined = region
    for (let at = 0; at < marks.length; ) {
      const other = marks[at]
      if (!other || !isOne(joined, other)) {
        at++
        continue
      }
      joined = joinedRegion(joined, other, map.columns)
      marks.splice(at, 1)
      at = 0
    }
    marks.push(joined)
  }
  return marks
}

/** Two regions of one sign as one; the evidence is that of the plainer. */
export function joinedRegion(one: MarkRegion, other: MarkRegion, columns: number): MarkRegion {
  const core = [...one.core, ...other.core]
  return {
    sign: one.sign,
    core,
    box: cellBox(core, columns),
    evidence: Math.max(one.evidence, other.evidence),
  }
}

function isOneMark(map: WorkingMap, one: MarkRegion, other: MarkRegion, diameterMm: number): boolean {
  const shapes = [regionShape(map, one, diameterMm), regionShape(map, other, diameterMm)]
  if (shapes.includes('streak') && shapes.includes('band')) return false
  if (doTouch(map, one, other)) return true
  if (!shapes.includes('band') && isOpeningBelow(map, one, other)) return true
  return !shapes.includes('streak') && isOpeningBeside(map, one, other)
}

/**
 * Side by side over half or more of the shorter one, with no more than a line between them, or up to twice that where
 * a region of the other sign begins there.
 */
function areParted(
  { columns }: WorkingMap,
  one: MarkRegion,
  other: MarkRegion,
  regions: readonly MarkRegion[],
  lineColumns: number,
): boolean {
  if (2 * rowsShared(one.box, other.box) < Math.min(heightOf(one.box), heightOf(other.box))) return false
  return [
    [one.box, other.box],
    [other.box, one.box],
  ].some(([before, after]) => {
    if (!before || !after) return false
    const wide = (after.left - (before.left + before.wide) + 2 * columns) % columns
    if (wide <= lineColumns) return true
    if (wide > 2 * lineColumns) return false
    const gap = { ...before, bottom: before.bottom + 1, left: (before.left + before.wide) % columns, wide }
    return regions.some(
      ({ sign, box }) => sign !== one.sign && rowsShared(box, gap) > 0 && doColumnsMeet(box, gap, columns),
    )
  })
}

function heightOf({ top, bottom }: CellBox): number {
  return bottom - top + 1
}

function rowsShared(one: CellBox, other: CellBox): number {
  return Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) + 1
}

/** Whether two boxes have a column in common. */
export function doColumnsMeet(one: CellBox, other: CellBox, columns: number): boolean {
  const begins = (a: CellBox, b: CellBox) => (b.left - a.left + columns) % columns < a.wide
  return begins(one, other) || begins(other, one)
}

function regionShape(map: WorkingMap, { box }: MarkRegion, diameterMm: number): MarkShape {
  const { top, bottom, wide } = box
  const alongMm = (map.rowEdgesMm[bottom + 1] ?? 0) - (map.rowEdgesMm[top] ?? 0)
  const degrees = (360 * wide) / map.columns
  return shapeOf(alongMm, (Math.PI * diameterMm * degrees) / 360, degrees)
}

/** Some cell of one is beside a cell of the other, corners included. */
function doTouch({ rows, columns }: WorkingMap, one: MarkRegion, other: MarkRegion): boolean {
  const close = one.core.filter((cell) => isInBox(other.box, columns, cell, 1, 1))
  if (close.length === 0) return false
  const cells = new Set(other.core)
  return close.some((cell) => {
    const row = Math.floor(cell / columns)
    for (let r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
      for (const step of [-1, 0, 1]) {
        if (cells.has(r * columns + (((cell % columns) + step + columns) % columns))) return true
      }
    }
    return false
  })
}

/** In half or more of the columns of the narrower one, the other lies above or below with gaps alone between. */
function isOpeningBelow({ columns, values }: WorkingMap, one: MarkRegion, other: MarkRegion): boolean {
  const [a, b] = [rowsByColumn(one.core, columns), rowsByColumn(other.core, columns)]
  let facing = 0
  for (const [column, { from, to }] of a) {
    const across = b.get(column)
    if (!across) continue
    const [begin, end] = to < across.from ? [to + 1, across.from] : [across.to + 1, from]
    let gaps = 0
    for (let row = begin; row < end; row++) if (Number.isNaN(values[row * columns + column] ?? 0)) gaps++
    if (end > begin && gaps === end - begin) facing++
  }
  return facing > 0 && 2 * facing >= Math.min(a.size, b.size)
}

/** In half or more of the rows of the lower one, the other lies beside it with gaps alone between. */
function isOpeningBeside({ columns, values }: WorkingMap, one: MarkRegion, other: MarkRegion): boolean {
  const rowsOf = (core: readonly number[]) => new Set(core.map((cell) => Math.floor(cell / columns)))
  const [a, b] = [rowsOf(one.core), rowsOf(other.core)]
  const cells = new Set(other.core)
  const facing = [...a].filter((row) =>
    one.core.some((cell) => {
      if (Math.floor(cell / columns) !== row) return false
      return [-1, 1].some((step) => {
        let at = cell
        let gaps = 0
        do {
          at = row * columns + (((((at % columns) + step) % columns) + columns) % columns)
          gaps++
        } while (Number.isNaN(values[at] ?? 0) && gaps < columns)
        return gaps > 1 && cells.has(at)
      })
    }),
  )
  return facing.length > 0 && 2 * facing.length >= Math.min(a.size, b.size)
}

/** For each column that cells lie in, their first and last row. */
function rowsByColumn(core: readonly number[], columns: number) {
  const extents = new Map<number, { from: number; to: number }>()
  for (const cell of core) {
    const row = Math.floor(cell / columns)
    const known = extents.get(cell % columns)
    extents.set(cell % columns, {
      from: Math.min(row, known?.from ?? row),
      to: Math.max(row, known?.to ?? row),
    })
  }
  return extents
}
