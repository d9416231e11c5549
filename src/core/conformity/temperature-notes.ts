import type { BoreVerdict, LimitPair, Note, StationFinding, TemperatureEffect } from '../findings'
import { isOfTemperature } from '../temperature/temperature-effect'
import { stationDoubt } from '../uncertainty/station-doubt'
import { boreVerdict } from './bore-verdict'
import { conformity, judgedLimits } from './conformity'

/** Part and standard further apart than this are no longer good to the usual doubt of their difference, K. */
const farApartK = 3

/**
 * What temperature does to this verdict: that the doubt of the correction alone keeps it open (without the
 * temperature sources the same readings would be proven); that the correction is more than half of the width
 * between the limits; that part and standard were further apart than 3 K. The first only where there is a verdict.
 * Own derivation.
 */
export function temperatureNotes(
  stations: readonly StationFinding[],
  pair: LimitPair | undefined,
  verdict: BoreVerdict | undefined,
  effect: TemperatureEffect | undefined,
  soakedTogether: boolean,
): Note[] {
  if (!effect) return []
  const differenceK = effect.boreC - effect.referenceC
  const halfMm =
    pair?.minMm === undefined || pair.maxMm === undefined ? undefined : (pair.maxMm - pair.minMm) / 2
  return [
    ...temperatureDecides(stations, pair, verdict),
    ...(halfMm !== undefined && Math.abs(effect.totalMm) > halfMm
      ? [{ code: 'correction-exceeds-half-band', correctionMm: effect.totalMm, halfMm } as const]
      : []),
    ...(effect.recorded && !soakedTogether && Math.abs(differenceK) > farApartK
      ? [{ code: 'part-and-standard-apart', differenceK } as const]
      : []),
  ]
}

function temperatureDecides(
  stations: readonly StationFinding[],
  pair: LimitPair | undefined,
  verdict: BoreVerdict | undefined,
): Note[] {
  if (!pair || !verdict?.known || verdict.verdict !== 'too-close') return []
  const without = stations.map((station): StationFinding => {
    const contributions = station.contributions.filter((part) => !isOfTemperature(part))
    const doubt = stationDoubt(contributions)
    const { standardUncertaintyMm: standardUncertainty, degreesOfFreedom } = doubt
    return {
      ...station,
      ...doubt,
      contributions,
      conformity: conformity(
        { value: station.diameterMm, standardUncertainty, degreesOfFreedom },
        judgedLimits(pair),
      ),
    }
  })
  const proven = boreVerdict(without, pair, verdict.firm)
  if (!proven.known || proven.verdict === 'too-close') return []
  const { depthMm, axisDegrees } = verdict.deciding
  const at = (list: readonly StationFinding[]) =>
    list.find((s) => s.depthMm === depthMm && s.axisDegrees === axisDegrees)?.expandedMm
  const expandedMm = at(stations)
  const withoutMm = at(without)
  if (expandedMm === undefined || withoutMm === undefined) {
    throw new Error('temperatureNotes: the deciding station is none of the stations')
  }
  return [
    { code: 'temperature-decides', place: verdict.deciding, expandedMm, withoutMm, verdict: proven.verdict },
  ]
}
