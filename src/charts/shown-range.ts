import type { LimitPair, StationFinding } from '../core/findings'
import type { WallGrid } from '../core/surface/wall-grid'

/** Deviations from the middle, µm. */
export interface ShownRange {
  readonly lowUm: number
  readonly highUm: number
}

/** What a section or a profile must have room for: the wall, its limits with their doubt, each reading ± U. */
export function shownRange(
  grid: WallGrid,
  pair: LimitPair | undefined,
  stations: readonly StationFinding[],
): ShownRange {
  const um = (mm: number) => (mm - grid.middleMm) * 1000
  const edges = stations.flatMap(({ doubt }) => {
    if (!doubt) return []
    return [
      ...(pair?.minMm === undefined ? [] : [doubt.belowFirmMm]),
      ...(pair?.maxMm === undefined ? [] : [doubt.aboveFirmMm]),
    ]
  })
  const limits = [pair?.minMm, pair?.maxMm, pair?.newMaxMm].filter((limit) => limit !== undefined)
  const readings = stations.flatMap((s) => [s.diameterMm - s.expandedMm, s.diameterMm + s.expandedMm])
  const shown = [...edges, ...limits, ...readings].filter(Number.isFinite).map(um)
  const values = [...shown, ...grid.deviationsUm]
  return {
    lowUm: values.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY),
    highUm: values.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY),
  }
}
