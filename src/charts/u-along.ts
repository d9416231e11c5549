import type { StationFinding } from '../core/findings'

/**
 * U at a depth of an axis, mm, mixed linearly between that of the readings above and below: for the eye, as the
 * wall is. Past the outermost readings it stays as it is there; undefined without a reading.
 */
export function uAlong(stations: readonly StationFinding[], depthMm: number): number | undefined {
  const sorted = [...stations].sort((a, b) => a.depthMm - b.depthMm)
  const above = sorted.findLast((s) => s.depthMm <= depthMm)
  const below = sorted.find((s) => s.depthMm >= depthMm)
  if (!above || !below) return (above ?? below)?.expandedMm
  if (above === below) return above.expandedMm
  const share = (depthMm - above.depthMm) / (below.depthMm - above.depthMm)
  return above.expandedMm + share * (below.expandedMm - above.expandedMm)
}
