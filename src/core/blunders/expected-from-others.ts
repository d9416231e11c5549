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
  const cells = new Map(stations.map((station) => [keyOf(station.depthMm, station.axisDegrees), station]))
  const depths = [...new Set(stations.map((station) => station.depthMm))]
  const axes = [...new Set(stations.map((station) => station.axisDegrees))]
  return stations.map(({ depthMm, axisDegrees }) => {
    const at = (depth: number, axis: number) => cells.get(keyOf(depth, axis))?.diameterMm
    const otherDepths = nearest(depths, depthMm, (a, b) => Math.abs(a - b))
    const otherAxes = nearest(axes, axisDegrees, angleBetween)
    const corners = otherDepths.flatMap((depth) =>
      otherAxes.flatMap((axis) => {
        const beside = at(depthMm, axis)
        const below = at(depth, axisDegrees)
        const corner = at(depth, axis)
        return beside === undefined || below === undefined || corner === undefined
          ? []
          : [beside + below - corner]
      }),
    )
    if (corners.length > 0) return median(corners)
    const onAxis = otherDepths.flatMap((depth) => at(depth, axisDegrees) ?? [])
    const atLevel = otherAxes.flatMap((axis) => at(depthMm, axis) ?? [])
    const near = onAxis.length > 0 ? onAxis : atLevel
    return near.length > 0 ? median(near) : undefined
  })
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
  const expectations = expectedFromOthers(stations)
  const offsMm = stations.map((station, index) => {
    const expected = expectations[index]
    return expected === undefined ? undefined : station.diameterMm - expected
  })
  const known = offsMm.filter((off) => off !== undefined)
  const least = 2 * Math.max(0, ...stations.map((station) => station.individualMm))
  if (known.length === 0) return { offsMm, scatterMm: least }
  const middle = median(known)
  const spread = 1.4826 * median(known.map((off) => Math.abs(off - middle)))
  return { offsMm, scatterMm: Math.max(least, spread) }
}

function keyOf(depthMm: number, axisDegrees: number): string {
  return `${depthMm} ${axisDegrees}`
}

/** An axis at 175° lies 10° from one at 5°. */
function angleBetween(a: number, b: number): number {
  const between = Math.abs(a - b) % 180
  return Math.min(between, 180 - between)
}

function nearest(values: readonly number[], to: number, apart: (a: number, b: number) => number): number[] {
  return values
    .filter((value) => value !== to)
    .sort((a, b) => apart(a, to) - apart(b, to) || a - b)
    .slice(0, asked)
}
