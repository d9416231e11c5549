import type { Place } from '../../core/findings'
import type { PlannedStation } from '../../job/selectors'

/** A station that both contacts can reach. */
function isReachable(station: PlannedStation): boolean {
  return station.blockedBy.length === 0
}

/** Repeats that a station has. */
export function repeatsAt({ reading }: PlannedStation): readonly number[] {
  return reading?.sizesMm ?? reading?.dialUm ?? []
}

/**
 * The station that the next number belongs to: the first after `from` in the order of entry that can be
 * reached and has fewer repeats than wanted, beginning again at the top; undefined when all are read.
 */
export function nextStation(
  rows: readonly (readonly PlannedStation[])[],
  wanted: number,
  from?: Place,
): PlannedStation | undefined {
  const all = rows.flat()
  const at = all.findIndex((s) => s.depthMm === from?.depthMm && s.axisDegrees === from.axisDegrees)
  const onward = [...all.slice(at + 1), ...all.slice(0, at + 1)]
  return onward.find((station) => isReachable(station) && repeatsAt(station).length < wanted)
}

/** So many repeats were taken at the stations read so far: the most at any of them, 1 before the first. */
export function repeatsTaken(rows: readonly (readonly PlannedStation[])[]): number {
  return Math.max(1, ...rows.flat().map((station) => repeatsAt(station).length))
}
