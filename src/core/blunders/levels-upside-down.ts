import type { Blunder } from '../findings'
import { knownSize, outsideBy } from './known-size'
import { type ReadStation, type ReadSurvey, separation } from './read-survey'

/**
 * Levels written down from the wrong end: a land that is not of its known size while the level at its mirror
 * place is; without a land, a worn bore (proven above the largest new size somewhere) whose lower third is
 * larger than its upper third.
 *
 * Asked beyond five times the doubt of the two figures that are compared. A bore may well wear most at the
 * bottom: it is a question. Own derivation.
 */
export function levelsUpsideDown(survey: ReadSurvey): Blunder[] {
  const levels = levelsOf(survey)
  if (levels.length < 3 || survey.unworn) return []
  const by = survey.stations.some((station) => station.land) ? 'land' : 'wear'
  const asked = by === 'land' ? landAtTheOtherEnd(survey, levels) : largerBelow(survey, levels)
  return asked ? [{ code: 'levels-upside-down', by, mend: { kind: 'turn-levels-over' } }] : []
}

/**
 * Whether levels written from the wrong end would stand out: the same readings the other way up are asked about.
 * One level, or a bore that never ran, has no wrong end worth a question. Own derivation.
 */
export function canSeeLevelsUpsideDown(survey: ReadSurvey): boolean {
  const levels = levelsOf(survey)
  if (levels.length < 2 || survey.unworn) return true
  const landLevels = new Set(survey.stations.filter(({ land }) => land).map(({ depthMm }) => depthMm))
  const stations = survey.stations.map((station) => {
    const depthMm = levels[levels.length - 1 - levels.indexOf(station.depthMm)] ?? station.depthMm
    return { ...station, depthMm, land: landLevels.has(depthMm) }
  })
  return [survey, { ...survey, stations }].some((either) => levelsUpsideDown(either).length > 0)
}

function levelsOf({ stations }: ReadSurvey): number[] {
  return [...new Set(stations.map((station) => station.depthMm))].sort((a, b) => a - b)
}

function landAtTheOtherEnd(survey: ReadSurvey, levels: readonly number[]): boolean {
  const known = knownSize(survey)
  if (!known) return false
  const landLevels = new Set(known.stations.map((station) => station.depthMm))
  const mirrored = survey.stations.filter((station) => {
    const index = levels.indexOf(station.depthMm)
    return landLevels.has(levels[levels.length - 1 - index] ?? Number.NaN)
  })
  // A land at both ends keeps its size whichever way up it is written.
  if (mirrored.some((station) => station.land)) return false
  const { meanMm, u } = meanOf(mirrored, survey.commonMm)
  const apart = Math.abs(meanMm - known.meanMm)
  return (
    outsideBy(known, known.meanMm) > 3 * known.u &&
    apart > separation * individualOf(mirrored, known.stations) &&
    outsideBy(known, meanMm) <= 2 * u
  )
}

function largerBelow(survey: ReadSurvey, levels: readonly number[]): boolean {
  const { newMaxMm, stations, commonMm } = survey
  const third = Math.ceil(levels.length / 3)
  const upper = stations.filter((station) => levels.indexOf(station.depthMm) < third)
  const lower = stations.filter((station) => levels.indexOf(station.depthMm) >= levels.length - third)
  const above = meanOf(upper, commonMm)
  const below = meanOf(lower, commonMm)
  const worn = newMaxMm !== undefined && below.meanMm - newMaxMm > 3 * below.u
  return worn && below.meanMm - above.meanMm > separation * individualOf(upper, lower)
}

function meanOf(stations: readonly ReadStation[], commonMm: number) {
  const n = stations.length
  const meanMm = stations.reduce((sum, station) => sum + station.diameterMm, 0) / n
  return { meanMm, u: Math.hypot(commonMm, individualOf(stations)) }
}

/** Standard uncertainty of the difference of means (or of one mean), from the stations' own parts. */
function individualOf(...groups: readonly (readonly ReadStation[])[]): number {
  const variances = groups.map(
    (group) => group.reduce((sum, station) => sum + station.individualMm ** 2, 0) / group.length ** 2,
  )
  return Math.sqrt(variances.reduce((sum, variance) => sum + variance, 0))
}
