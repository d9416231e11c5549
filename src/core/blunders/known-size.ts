import type { ReadStation, ReadSurvey } from './read-survey'

/** Stations whose size is known without measuring: a land, or all of a bore that never ran. */
export interface KnownSize {
  readonly stations: readonly ReadStation[]
  readonly meanMm: number
  /** Standard uncertainty of the mean, mm. */
  readonly u: number
  readonly fromMm: number
  readonly toMm: number
}

/** The known sizes of a survey; undefined without a land (or an unworn bore) or without the sizes when new. */
export function knownSize(survey: ReadSurvey): KnownSize | undefined {
  const { newMinMm, newMaxMm, commonMm } = survey
  const stations = survey.stations.filter((station) => survey.unworn || station.land)
  if (stations.length === 0 || newMinMm === undefined || newMaxMm === undefined) return undefined
  const n = stations.length
  const own = Math.sqrt(stations.reduce((sum, station) => sum + station.individualMm ** 2, 0)) / n
  return {
    stations,
    meanMm: stations.reduce((sum, station) => sum + station.diameterMm, 0) / n,
    u: Math.hypot(commonMm, own),
    fromMm: newMinMm,
    toMm: newMaxMm,
  }
}

/** How far a size lies outside of what is known, mm; 0 within. */
export function outsideBy(known: KnownSize, sizeMm: number): number {
  return Math.max(0, known.fromMm - sizeMm, sizeMm - known.toMm)
}
