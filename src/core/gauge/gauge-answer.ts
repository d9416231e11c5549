import { conditionsOf } from '../conditions-of'
import { canProveInside, insideMargin, proof } from '../conformity/conformity'
import { limitPair } from '../conformity/limit-pair'
import type { GaugeAnswer } from '../findings'
import type { Bore, Gauge, Measured, Survey } from '../measured'
import { studentQuantile } from '../statistics/student'
import { type SetUpConditions, setUpContributions } from '../uncertainty/set-up-contributions'
import { stationContributions } from '../uncertainty/station-contributions'
import { type StationDoubt, stationDoubt } from '../uncertainty/station-doubt'
import { stepReadUm } from './presets'

/** How readings with a gauge scatter about the size of the place, µm. */
export interface ReadingScatter {
  /** Standard deviation of one reading. */
  readonly oneUm: number
  /** That of the mean of some repeats, with its degrees of freedom. */
  readonly ofMean: (repeats: number) => { readonly um: number; readonly degreesOfFreedom: number }
  /** What it rests on. */
  readonly estimate: 'repeatability' | 'crossed-study'
}

/**
 * What a station of the first bore of this engine that the gauge was used in would be worth with this gauge and
 * this scatter, and what is left open of its limits then. Undefined where it was used in none.
 */
export function gaugeAnswer(
  measured: Measured,
  gauge: Gauge,
  scatter: ReadingScatter,
): GaugeAnswer | undefined {
  const used = userOf(measured, gauge.id)
  if (!used) return undefined
  const { bore, survey } = used
  const pair = limitPair(measured.spec, bore)
  const repeats = usualRepeats(survey)
  const doubt = doubtOf({ ...conditionsOf(measured, bore, survey), gauge }, scatter, repeats, middleOf(pair))
  const { standardUncertaintyMm: u, degreesOfFreedom: nu, expandedMm } = doubt
  const maxMm = pair?.kind === 'wear' ? pair.newMaxMm : pair?.maxMm
  const bandMm = pair?.minMm === undefined || maxMm === undefined ? undefined : maxMm - pair.minMm
  const countedUm = Math.max(scatter.oneUm, stepReadUm(gauge) / Math.sqrt(12))
  const answer = {
    boreId: bore.id,
    boreName: bore.name,
    repeats,
    expandedMm,
    ...(bandMm === undefined ? {} : { bandMm, shareOfBand: (6 * countedUm) / 1000 / bandMm }),
  }
  if (!pair) return { ...answer, about: 'nothing' }
  if (pair.kind === 'wear' || bandMm === undefined) {
    const about = pair.kind === 'wear' ? 'wear' : 'one-limit'
    return { ...answer, about, marginMm: studentQuantile(proof, nu) * u }
  }
  const marginMm = canProveInside(u, nu, bandMm) ? insideMargin(u, nu, bandMm) : undefined
  return { ...answer, about: 'band', ...(marginMm === undefined ? {} : { marginMm }) }
}

/** Of a station in the middle of the limits, where the wall is straight, with the gauge's figures alone. */
function doubtOf(
  conditions: SetUpConditions,
  scatter: ReadingScatter,
  repeats: number,
  sizeMm = conditions.setUp.settingSizeMm,
): StationDoubt {
  const { gauge } = conditions
  const { um, degreesOfFreedom } = scatter.ofMean(repeats)
  return stationDoubt([
    ...setUpContributions(conditions)(sizeMm),
    ...stationContributions({
      id: `check:${gauge.id}`,
      repeats,
      setUp: conditions.setUp,
      gauge,
      standard: conditions.standard,
      repeatability: {
        um: um * Math.sqrt(repeats),
        degreesOfFreedom,
        estimate: `${scatter.estimate}:${gauge.id}`,
      },
      slope: 0,
    }),
  ])
}

function userOf(measured: Measured, gaugeId: string): { bore: Bore; survey: Survey } | undefined {
  const setUps = measured.setUps.filter((setUp) => setUp.gaugeId === gaugeId).map(({ id }) => id)
  for (const bore of measured.bores) {
    const survey = bore.surveys.at(-1)
    if (bore.role === 'of-this-engine' && survey && setUps.includes(survey.setUpId)) return { bore, survey }
  }
  return undefined
}

/** How often most stations were read; once where none was. */
function usualRepeats({ readings }: Survey): number {
  const counts = new Map<number, number>()
  for (const { sizesMm, dialUm } of readings) {
    const repeats = (sizesMm ?? dialUm ?? []).length
    if (repeats > 0) counts.set(repeats, (counts.get(repeats) ?? 0) + 1)
  }
  return [...counts].reduce((best, each) => (each[1] > best[1] ? each : best), [1, 0])[0]
}

function middleOf(pair: ReturnType<typeof limitPair>): number | undefined {
  const { minMm, maxMm } = pair ?? {}
  return minMm === undefined || maxMm === undefined ? (maxMm ?? minMm) : (minMm + maxMm) / 2
}
