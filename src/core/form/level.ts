import type { LevelFinding, StationFinding } from '../findings'
import type { GaugeKind } from '../measured'
import { combine, expanded } from '../uncertainty/combine'
import { fittedOval } from './fitted-oval'
import { rangeInterval } from './range-interval'

/** The stations of one level, in the order of their axes. */
export interface Level {
  readonly depthMm: number
  readonly land: boolean
  readonly stations: readonly StationFinding[]
}

/** Counted stations gathered by level, from the deck down. */
export function levelsOf(stations: readonly StationFinding[]): Level[] {
  const byDepth = new Map<number, StationFinding[]>()
  for (const station of stations) {
    if (!station.counted) continue
    const level = byDepth.get(station.depthMm)
    if (level) level.push(station)
    else byDepth.set(station.depthMm, [station])
  }
  return [...byDepth]
    .sort(([a], [b]) => a - b)
    .map(([depthMm, group]) => ({
      depthMm,
      land: group.some((s) => s.land),
      stations: group.sort((a, b) => a.axisDegrees - b.axisDegrees),
    }))
}

/**
 * Mean diameter of a level with U, and for two axes or more largest less smallest with its interval; not for
 * three contacts, which read the mean of a level.
 */
export function levelFinding(level: Level, kind: GaugeKind): LevelFinding {
  const { stations } = level
  const mean = meanOf(stations)
  const w = largest(stations).diameterMm - smallest(stations).diameterMm
  const interval = rangeInterval(w, stations, stations.length, 1, false)
  return {
    depthMm: level.depthMm,
    land: level.land,
    axesDegrees: stations.map((s) => s.axisDegrees),
    meanMm: mean.value,
    meanExpandedMm: mean.expanded,
    ...(stations.length >= 2 && kind !== 'three-contact-micrometer'
      ? { ovality: { valueMm: w, lowMm: interval.low, highMm: interval.high }, ...ovalOf(stations) }
      : {}),
  }
}

/**
 * The fitted oval of three axes or more. Two axes show |A − B| = oval·|cos 2φ| with φ not known: the oval is
 * at least |A − B| − U, and for half of all directions they show under 71 % of it (own derivation).
 */
function ovalOf(stations: readonly StationFinding[]): Pick<LevelFinding, 'fittedOval' | 'ovalAtLeastMm'> {
  const fitted = fittedOval(stations)
  if (fitted) return { fittedOval: fitted }
  const [one, other] = stations
  if (stations.length !== 2 || !one || !other) return {}
  const u = combine([
    { factor: 1, contributions: one.contributions },
    { factor: -1, contributions: other.contributions },
  ])
  return { ovalAtLeastMm: Math.max(0, Math.abs(one.diameterMm - other.diameterMm) - expanded(u)) }
}

function meanOf(stations: readonly StationFinding[]) {
  const factor = 1 / stations.length
  let value = 0
  for (const s of stations) value += s.diameterMm * factor
  const u = combine(stations.map((s) => ({ factor, contributions: s.contributions })))
  return { value, expanded: expanded(u) }
}

/** The station with the largest diameter; the first of equals. */
export function largest(stations: readonly StationFinding[]): StationFinding {
  return stations.reduce((a, b) => (b.diameterMm > a.diameterMm ? b : a))
}

/** The station with the smallest diameter; the last of equals, so that a range of equals has two ends. */
export function smallest(stations: readonly StationFinding[]): StationFinding {
  return stations.reduce((a, b) => (b.diameterMm <= a.diameterMm ? b : a))
}
