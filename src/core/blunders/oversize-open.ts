import type { Blunder } from '../findings'
import type { ReadSurvey } from './read-survey'

/**
 * Asked while the manual allows oversizes and nobody said which of them the bore has: an oversize is a sleeve
 * step to the readings, and the limits move with it.
 *
 * What is proposed is the standard size or the oversize nearest to the smallest diameter read, over the smallest
 * new size. A caliper that agrees with the standard size answers it. Own derivation.
 */
export function oversizeOpen({ oversizesMm, newMinMm, stations, caliperMm }: ReadSurvey): Blunder[] {
  if (oversizesMm === undefined || newMinMm === undefined || stations.length === 0) return []
  const smallestMm = Math.min(...stations.map(({ diameterMm }) => diameterMm))
  const overMm = (oversizeMm: number) => Math.abs(smallestMm - newMinMm - oversizeMm)
  const [nearestMm = 0] = [0, ...oversizesMm].sort((a, b) => overMm(a) - overMm(b) || a - b)
  if (nearestMm === 0 && caliperMm !== undefined) return []
  return [{ code: 'oversize-open', nearestMm, mend: { kind: 'say-oversize', oversizeMm: nearestMm } }]
}
