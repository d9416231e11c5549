import { newBand } from '../conformity/limit-pair'
import type { Difference, DifferenceStation, StationFinding } from '../findings'
import type { Bore, Spec } from '../measured'
import { combine, expanded } from '../uncertainty/combine'
import { sameStation } from './same-station'

/**
 * This bore less another, station by station where both have a counted reading (levels within 1 mm, same
 * axis, each nearest to the other), mm, each with its U from the full covariance: a setting, a standard or a temperature that both
 * share drops out by itself. Undefined where they have no station in common. U is that of each
 * difference; the largest is chosen among all of them, and is the largest read, not a bound. Told from how two bores
 * are made by their mean difference, whose U and theirs add up in squares.
 */
export function difference(
  stations: readonly StationFinding[],
  other: { boreId: string; surveyId: string; stations: readonly StationFinding[] },
  asMadeExpandedMm: number | undefined,
): Difference | undefined {
  const pairs = stations
    .filter((s) => s.counted)
    .flatMap((mine) => {
      const theirs = sameStation(mine, other.stations)
      // Each station is taken once, so that B − A is A − B with the other sign.
      return theirs && sameStation(theirs, stations) === mine ? [{ mine, theirs }] : []
    })
  const differences = pairs.map(({ mine, theirs }): DifferenceStation => {
    const combined = combine([
      { factor: 1, contributions: mine.contributions },
      { factor: -1, contributions: theirs.contributions },
    ])
    return {
      depthMm: mine.depthMm,
      axisDegrees: mine.axisDegrees,
      differenceMm: mine.diameterMm - theirs.diameterMm,
      standardUncertaintyMm: combined.standardUncertainty,
      degreesOfFreedom: combined.degreesOfFreedom,
      expandedMm: expanded(combined),
    }
  })
  const first = differences[0]
  if (!first) return undefined
  const share = 1 / pairs.length
  const mean = combine(
    pairs.flatMap(({ mine, theirs }) => [
      { factor: share, contributions: mine.contributions },
      { factor: -share, contributions: theirs.contributions },
    ]),
  )
  const meanMm = differences.reduce((sum, d) => sum + d.differenceMm * share, 0)
  const expandedMm = expanded(mean)
  return {
    againstBoreId: other.boreId,
    againstSurveyId: other.surveyId,
    stations: differences,
    largest: differences.reduce((a, b) => (Math.abs(b.differenceMm) > Math.abs(a.differenceMm) ? b : a)),
    mean: { differenceMm: meanMm, expandedMm },
    ...(asMadeExpandedMm === undefined
      ? {}
      : { asMadeExpandedMm, beyondAsMade: Math.abs(meanMm) > Math.hypot(expandedMm, asMadeExpandedMm) }),
  }
}

/**
 * Standard uncertainty of how much two new bores may differ as made, mm: both anywhere in a band of width T,
 * rectangular, so that u of their difference is T/√6 (GUM, JCGM 100:2008, 4.3.7, twice). Where both
 * are of one known grade its width serves, else that of the new band; undefined where there is none.
 */
export function asMadeUncertainty(spec: Spec, bore: Bore, other: Bore): number | undefined {
  const grade = bore.grade === other.grade ? spec.grades?.find((g) => g.name === bore.grade) : undefined
  const { minMm, maxMm } = grade ?? newBand(spec)
  if (minMm === undefined || maxMm === undefined) return undefined
  return (maxMm - minMm) / Math.sqrt(6)
}

/** The same as U (95 %, 1.96·u), mm. Source: as for `asMadeUncertainty`. */
export function asMadeExpanded(spec: Spec, bore: Bore, other: Bore): number | undefined {
  const u = asMadeUncertainty(spec, bore, other)
  return u === undefined ? undefined : 1.959963984540054 * u
}
