import type { Blunder } from '../findings'
import { studentQuantile } from '../statistics/student'
import { type ReadStation, type ReadSurvey, separation } from './read-survey'

/** Rounds of taking out levels and axes in turn; each halves what is left in the worst ragged survey. */
const rounds = 60
/** What is left once a round changes no value by more, in the unit of the values, changes no question. */
const settled = 1e-9

/**
 * Readings that drift with the order in which they were taken: a part that cools, a gauge warmed by the hand.
 *
 * Least squares of the diameters on levels, axes and order: what order explains beyond levels and axes. The
 * drift over the survey is asked about when it exceeds five times its u, u from what the fit leaves over or
 * from the stations' own parts, whichever is the larger; U is given with it. Own derivation: partial
 * regression (Frisch & Waugh 1933), levels and axes taken out of order and diameters alike by alternating
 * means.
 */
export function driftWithOrder(survey: ReadSurvey): Blunder[] {
  const { stations } = survey
  const order = withoutLevelsAndAxes(
    stations,
    stations.map((_, index) => index),
  )
  const spread = sumOfSquares(order)
  if (spread < shown(stations.length)) return []
  const left = withoutLevelsAndAxes(
    stations,
    stations.map((station) => station.diameterMm),
  )
  const perReading = left.reduce((sum, value, i) => sum + value * (order[i] ?? 0), 0) / spread
  const freedom = freedomOf(stations)
  if (freedom < 3) return []
  const rest = left.map((value, i) => value - perReading * (order[i] ?? 0))
  const scatter = Math.max(
    Math.sqrt(sumOfSquares(rest) / freedom),
    ...stations.map((station) => station.individualMm),
  )
  const overSurveyMm = perReading * (stations.length - 1)
  const u = (scatter / Math.sqrt(spread)) * (stations.length - 1)
  if (Math.abs(overSurveyMm) <= separation * u) return []
  return [{ code: 'drift-with-order', overSurveyMm, expandedMm: studentQuantile(0.975, freedom) * u }]
}

/** Whether the order tells anything that levels and axes do not: not where they were read in rows. */
export function canSeeDriftWithOrder({ stations }: ReadSurvey): boolean {
  const order = withoutLevelsAndAxes(
    stations,
    stations.map((_, index) => index),
  )
  return sumOfSquares(order) >= shown(stations.length) && freedomOf(stations) >= 3
}

/** A twentieth of the spread that an order free of levels and axes has: n³/12. */
function shown(stations: number): number {
  return stations ** 3 / 240
}

function freedomOf(stations: readonly ReadStation[]): number {
  const levels = new Set(stations.map((station) => station.depthMm)).size
  const axes = new Set(stations.map((station) => station.axisDegrees)).size
  return stations.length - levels - axes
}

function withoutLevelsAndAxes(stations: readonly ReadStation[], values: readonly number[]): number[] {
  const levels = groupsOf(stations.map((station) => station.depthMm))
  const axes = groupsOf(stations.map((station) => station.axisDegrees))
  const left = [...values]
  let moved = Number.POSITIVE_INFINITY
  for (let round = 0; round < rounds && moved > settled; round++) {
    moved = 0
    for (const group of [...levels, ...axes]) {
      const mean = group.reduce((sum, i) => sum + (left[i] ?? 0), 0) / group.length
      for (const i of group) left[i] = (left[i] ?? 0) - mean
      moved = Math.max(moved, Math.abs(mean))
    }
  }
  return left
}

function groupsOf(keys: readonly number[]): number[][] {
  const groups = new Map<number, number[]>()
  keys.forEach((key, index) => {
    groups.set(key, [...(groups.get(key) ?? []), index])
  })
  return [...groups.values()]
}

function sumOfSquares(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value * value, 0)
}
