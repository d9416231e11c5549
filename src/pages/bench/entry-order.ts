import type { Place } from '../../core/findings'
import type { PlannedStation } from '../../job/selectors'

/** A station that both contacts can reach, for all that is recorded. */
export function isReachable(station: PlannedStation): boolean {
  return station.blockedBy.length === 0 && !station.isUnreachable
}

export function samePlace(one: Place, other: Place): boolean {
  return one.depthMm === other.depthMm && one.axisDegrees === other.axisDegrees
}

/** Repeats that a station has. */
export function repeatsAt({ reading }: PlannedStation): readonly number[] {
  return reading?.sizesMm ?? reading?.dialUm ?? []
}

/**
 * The station that the next number belongs to: the first after `from` in the order of entry that can be
 * reached, was not passed over and has fewer repeats than wanted, beginning again at the top; undefined when
 * all are read.
 */
export function nextStation(
  rows: readonly (readonly PlannedStation[])[],
  wanted: number,
  from?: Place,
  skipped: readonly Place[] = [],
): PlannedStation | undefined {
  const all = rows.flat()
  const at = all.findIndex((station) => from !== undefined && samePlace(station, from))
  const onward = [...all.slice(at + 1), ...all.slice(0, at + 1)]
  return onward.find(
    (station) =>
      isReachable(station) &&
      !skipped.some((place) => samePlace(place, station)) &&
      repeatsAt(station).length < wanted,
  )
}

/** The station before another in the order of entry that can be reached, read or not, from the top to the last. */
export function stationBefore(
  rows: readonly (readonly PlannedStation[])[],
  from: Place | undefined,
): PlannedStation | undefined {
  const all = rows.flat()
  const at = all.findIndex((station) => from !== undefined && samePlace(station, from))
  const before = at < 0 ? all : all.slice(0, at)
  return before.findLast(isReachable) ?? all.slice(Math.max(at, 0)).findLast(isReachable)
}

/** So many repeats were taken at the stations read so far: the most at any of them, 1 before the first. */
export function repeatsTaken(rows: readonly (readonly PlannedStation[])[]): number {
  return Math.max(1, ...rows.flat().map((station) => repeatsAt(station).length))
}

/** Numbers of readings per station to choose from: up to five, and so many as are wanted already. */
export function repeatChoices(wanted: number): readonly number[] {
  return wanted > 5 ? [1, 2, 3, 4, 5, wanted] : [1, 2, 3, 4, 5]
}
