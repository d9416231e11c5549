import type { Place, StationFinding } from '../findings'

/** How far two depths may lie apart and still be one level, mm. */
export const sameLevelMm = 1

/** The counted station on the same axis and nearest in depth, within 1 mm; undefined where there is none. */
export function sameStation(at: Place, stations: readonly StationFinding[]): StationFinding | undefined {
  let best: StationFinding | undefined
  for (const station of stations) {
    if (!station.counted || station.axisDegrees !== at.axisDegrees) continue
    const apart = Math.abs(station.depthMm - at.depthMm)
    if (apart > sameLevelMm) continue
    if (!best || apart < Math.abs(best.depthMm - at.depthMm)) best = station
  }
  return best
}
