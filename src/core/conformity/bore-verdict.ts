import type { BoreVerdict, Conformity, LimitPair, Place, Side, StationFinding } from '../findings'
import { largestOfStationsFactor } from '../statistics/largest-of-stations'
import { studentQuantile } from '../statistics/student'
import { judgedLimits, proof } from './conformity'

/** What the factor of a bore takes of its stations. */
export type StationParts = Pick<
  StationFinding,
  'degreesOfFreedom' | 'commonMm' | 'individualMm' | 'individualDegreesOfFreedom'
>

/**
 * The factor on u by which a single station of this bore proves the whole bore outside: the larger of
 * the station's own t and the factor for the largest of all its stations. One station: its own t.
 */
export function boreFactor(stations: readonly StationParts[]): number {
  const first = stations[0]
  if (!first) throw new RangeError('boreFactor: no stations')
  if (stations.length === 1) return studentQuantile(proof, first.degreesOfFreedom)
  const freedom = Math.min(...stations.map((s) => s.individualDegreesOfFreedom))
  const parts = stations.map((s) => ({ common: s.commonMm, individual: s.individualMm }))
  return Math.max(largestOfStationsFactor(parts, freedom, proof), studentQuantile(proof, freedom))
}

/**
 * The verdict on a bore, about the stations measured: inside when every station is inside; outside when
 * some station is past the limit by the factor for all of them; otherwise too close to call. A station
 * past the limit by its own rule but not by that factor is outside in its own row only.
 */
export function boreVerdict(
  stations: readonly StationFinding[],
  pair: LimitPair | undefined,
  firm: boolean,
): BoreVerdict {
  if (stations.length === 0) return { known: false, why: 'no-readings' }
  const counted = stations.filter((s) => s.counted)
  if (counted.length === 0) return { known: false, why: 'all-blocked' }
  const limits = pair && judgedLimits(pair)
  if (!limits || (limits.min === undefined && limits.max === undefined)) {
    return { known: false, why: 'no-limits' }
  }
  const factor = boreFactor(counted)
  const past = (s: StationFinding, side: 'above' | 'below') => {
    const margin =
      side === 'above'
        ? s.diameterMm - (limits.max ?? Number.POSITIVE_INFINITY)
        : (limits.min ?? Number.NEGATIVE_INFINITY) - s.diameterMm
    return margin / s.standardUncertaintyMm
  }
  const proven = (side: 'above' | 'below') =>
    counted.filter((s) => s.conformity?.verdict === side && past(s, side) >= factor)
  const provenAbove = proven('above')
  const provenBelow = proven('below')
  const of = (verdict: Conformity['verdict']) => counted.filter((s) => s.conformity?.verdict === verdict)
  const tooClose = of('too-close')
  const inside = of('inside').length === counted.length
  const furthest = (s: StationFinding) => Math.max(past(s, 'above'), past(s, 'below'))
  const deciding = counted.reduce((a, b) => {
    const apart = outsideness(b) - outsideness(a)
    return apart > 0 || (apart === 0 && furthest(b) > furthest(a)) ? b : a
  })
  const conformity = deciding.conformity
  if (!conformity) throw new Error('boreVerdict: a counted station without a verdict')
  const verdict = inside
    ? 'inside'
    : provenAbove.length > 0
      ? 'above'
      : provenBelow.length > 0
        ? 'below'
        : 'too-close'
  const settled = verdict === 'too-close' ? settledBy(deciding, conformity.lean, factor, past) : undefined
  return {
    known: true,
    verdict,
    factor,
    stations: counted.length,
    above: of('above').map(place),
    below: of('below').map(place),
    provenAbove: provenAbove.map(place),
    provenBelow: provenBelow.map(place),
    tooClose: tooClose.map(place),
    deciding: place(deciding),
    lean: conformity.lean,
    leanProbability: conformity.leanProbability,
    ...(settled === undefined ? {} : { settledByExpandedMm: settled }),
    firm,
  }
}

function place({ depthMm, axisDegrees }: StationFinding): Place {
  return { depthMm, axisDegrees }
}

/** Probability that a station is outside. Far out it is 1 for all, and the distance in u then tells. */
function outsideness({ conformity: c }: StationFinding): number {
  return c ? c.probabilityAbove + c.probabilityBelow : 0
}

function settledBy(
  station: StationFinding,
  lean: Side,
  factor: number,
  past: (s: StationFinding, side: 'above' | 'below') => number,
): number | undefined {
  if (lean === 'inside') return station.conformity?.settledByExpandedMm
  const inU = past(station, lean)
  return inU > 0 ? (station.expandedMm * inU) / factor : undefined
}
