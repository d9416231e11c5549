import { median } from './median'
import type { ReadStation } from './read-survey'

/** Levels and axes nearest to a station that are asked about it: more would cost time and add nothing. */
const asked = 6

/**
 * What the other stations let expect at each station, mm at 20 °C: the median over parallelograms
 * D(level, other axis) + D(other level, axis) − D(other level, other axis) with the six nearest levels and
 * axes; where there is none, the median of its axis or else of its level. Undefined where no other station
 * shares either.
 *
 * Exact for a bore whose levels and axes add up; one wrong station among the others moves it little from
 * three levels and three axes on. Own derivation: median polish (Tukey, Exploratory Data Analysis, 1977)
 * leaves each cell the residual from row and column effects; the median of parallelograms is the same
 * without the cell itself.
 */
export function expectedFromOthers(stations: readonly ReadStation[]): (number | undefined)[] {
  const depths = [...new Set(stations.map((station) => station.depthMm))]
  const axes = [...new Set(stations.map((station) => station.axisDegrees))]
  const cells = depths.map(() => axes.map((): number | undefined => undefined))
  for (const { depthMm, axisDegrees, diameterMm } of stations) {
    const row = cells[depths.indexOf(depthMm)]
    if (row) row[axes.indexOf(axisDegrees)] = diameterMm
  }
  const rowsNear = depths.map((depth) => nearest(depths, depth, (a, b) => Math.abs(a - b)))
  const columnsNear = axes.map((axis) => nearest(axes, axis, angleBetween))
  return stations.map((station) => {
    const row = depths.indexOf(station.depthMm)
    const column = axes.indexOf(station.axisDegrees)
    return expectedAt(cells, row, column, rowsNear[row] ?? [], columnsNear[column] ?? [])
  })
}

function expectedAt(
  cells: readonly (readonly (number | undefined)[])[],
  row: number,
  column: number,
  rows: readonly number[],
  columns: readonly number[],
): number | undefined {
  const corners: number[] = []
  const onAxis: number[] = []
  const atLevel: number[] = []
  for (const otherColumn of columns) {
    const beside = cells[row]?.[otherColumn]
    if (beside !== undefined) atLevel.push(beside)
  }
  for (const otherRow of rows) {
    const below = cells[otherRow]?.[column]
    if (below === undefined) continue
    onAxis.push(below)
    for (const otherColumn of columns) {
      const beside = cells[row]?.[otherColumn]
      const corner = cells[otherRow]?.[otherColumn]
      if (beside !== undefined && corner !== undefined) corners.push(beside + below - corner)
    }
  }
  const near = [corners, onAxis, atLevel].find((values) => values.length > 0)
  return near && median(near)
}

/** How far each station lies off what the others let expect, and how much such offs scatter, mm. */
export interface Offs {
  readonly offsMm: readonly (number | undefined)[]
  /**
   * 1.4826 times the median absolute deviation (the standard deviation, were the offs normal), and at least
   * twice the largest individual u: an expectation rests on three stations beside the one itself.
   */
  readonly scatterMm: number
}

/** The offs of a survey; a bore of a rough form scatters more, and then raises fewer questions. */
export function offsFromOthers(stations: readonly ReadStation[]): Offs {
  const before = known.get(stations)
  if (before) return before
  const offs = offsOf(stations)
  known.set(stations, offs)
  return offs
}

/** Several tests ask for the same survey. */
const known = new WeakMap<readonly ReadStation[], Offs>()

function offsOf(stations: readonly ReadStation[]): Offs {
  const expectations = expectedFromOthers(stations)
  const offsMm = stations.map((station, index) => {
    const expected = expectations[index]
    return expected === undefined ? undefined : station.diameterMm - expected
  })
  const offs = offsMm.filter((off) => off !== undefined)
  const least = 2 * Math.max(0, ...stations.map((station) => station.individualMm))
  if (offs.length === 0) return { offsMm, scatterMm: least }
  const middle = median(offs)
  const spread = 1.4826 * median(offs.map((off) => Math.abs(off - middle)))
  return { offsMm, scatterMm: Math.max(least, spread) }
}

/** An axis at 175° lies 10° from one at 5°. */
function angleBetween(a: number, b: number): number {
  const between = Math.abs(a - b) % 180
  return Math.min(between, 180 - between)
}

/** Where in the list the nearest other values stand. */
function nearest(values: readonly number[], to: number, apart: (a: number, b: number) => number): number[] {
  return values
    .map((value, index) => ({ index, far: apart(value, to) }))
    .filter(({ index }) => values[index] !== to)
    .sort((a, b) => a.far - b.far || a.index - b.index)
    .slice(0, asked)
    .map(({ index }) => index)
}
