import { conditionsOf } from '../conditions-of'
import { canProveInside, insideMargin, proof } from '../conformity/conformity'
import { limitPair } from '../conformity/limit-pair'
import type { CheckDrift, CheckScatter, GaugeAnswer, GaugeCheckFinding } from '../findings'
import type { Bore, Gauge, GaugeCheck, Measured, Survey } from '../measured'
import { chiSquaredQuantile } from '../statistics/chi-squared'
import { scatter, standardDeviation } from '../statistics/scatter'
import { straightLine } from '../statistics/straight-line'
import { studentQuantile } from '../statistics/student'
import { type SetUpConditions, setUpContributions } from '../uncertainty/set-up-contributions'
import { stationContributions } from '../uncertainty/station-contributions'
import { type StationDoubt, stationDoubt } from '../uncertainty/station-doubt'
import { stepReadUm } from './presets'

/**
 * What the checks of every gauge show: one place read again and again. Repeatability with its interval, drift over
 * the order of reading, and whether a gauge that scatters like this can answer what the spec asks.
 */
export function gaugeChecks(measured: Measured): GaugeCheckFinding[] {
  return measured.gauges.flatMap((gauge) =>
    (gauge.checks ?? []).map((check, index) => gaugeCheck(measured, gauge, check, index)),
  )
}

type Repeating = Required<Pick<Gauge, 'repeatabilityUm' | 'repeatabilityDegreesOfFreedom'>>
type OwnFigures = Gauge & Repeating

/** Repeatability as the gauge's own figures take it over: to a nanometre. */
export function figuresOfCheck({ standardDeviationUm, degreesOfFreedom }: CheckScatter): Repeating {
  return {
    repeatabilityUm: Math.round(standardDeviationUm * 1000) / 1000,
    repeatabilityDegreesOfFreedom: degreesOfFreedom,
  }
}

function gaugeCheck(measured: Measured, gauge: Gauge, check: GaugeCheck, index: number): GaugeCheckFinding {
  const valuesUm = check.dialUm ?? (check.sizesMm ?? []).map((mm) => mm * 1000)
  const found = valuesUm.length >= 2 ? scatterOf(valuesUm, stepReadUm(gauge)) : undefined
  const drift = valuesUm.length >= 3 ? driftOf(valuesUm, stepReadUm(gauge)) : undefined
  const own = found && figuresOfCheck(found)
  const answer = own && answerOf(measured, { ...gauge, ...own })
  return {
    gaugeId: gauge.id,
    index,
    ...(check.date === undefined ? {} : { date: check.date }),
    readings: valuesUm.length,
    stepUm: stepReadUm(gauge),
    ...(found ? { scatter: found } : {}),
    ...(drift ? { drift } : {}),
    isInUse:
      own !== undefined &&
      gauge.repeatabilityUm === own.repeatabilityUm &&
      gauge.repeatabilityDegreesOfFreedom === own.repeatabilityDegreesOfFreedom,
    ...(answer ? { answer } : {}),
  }
}

/**
 * The standard deviation s of repeated readings with its two-sided 95 % interval, s·√(ν/χ²_0.975) to
 * s·√(ν/χ²_0.025). Source: NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.3.1; for normal readings. Below
 * step/√12 the step that is read hides it.
 */
function scatterOf(valuesUm: readonly number[], stepUm: number): CheckScatter {
  const standardDeviationUm = standardDeviation(valuesUm)
  const degreesOfFreedom = valuesUm.length - 1
  const bound = (p: number) =>
    standardDeviationUm * Math.sqrt(degreesOfFreedom / chiSquaredQuantile(p, degreesOfFreedom))
  return {
    standardDeviationUm,
    degreesOfFreedom,
    lowUm: bound(0.975),
    highUm: bound(0.025),
    isBelowStep: standardDeviationUm < stepUm / Math.sqrt(12),
  }
}

/**
 * Drift from the first reading to the last by a straight line over their order, with U (95 %, two-sided). What is
 * left over counts as no less than step/√12.
 */
function driftOf(valuesUm: readonly number[], stepUm: number): CheckDrift {
  const steps = valuesUm.length - 1
  const order = valuesUm.map((_, index) => index)
  const line = straightLine(order, valuesUm)
  const hidden = stepUm / Math.sqrt(12) / Math.sqrt(scatter(order).squares)
  const isHidden = hidden > line.slopeDeviation
  const freedom = isHidden ? Number.POSITIVE_INFINITY : line.degreesOfFreedom
  const expandedUm = studentQuantile(0.975, freedom) * Math.max(hidden, line.slopeDeviation) * steps
  const overCheckUm = line.slope * steps
  return { overCheckUm, expandedUm, standsOut: Math.abs(overCheckUm) > expandedUm }
}

/**
 * What a station of the first bore of this engine that the gauge was used in would be worth with this gauge, and
 * what is left open of its limits then.
 */
function answerOf(measured: Measured, gauge: OwnFigures): GaugeAnswer | undefined {
  const used = userOf(measured, gauge.id)
  if (!used) return undefined
  const { bore, survey } = used
  const pair = limitPair(measured.spec, bore)
  const repeats = usualRepeats(survey)
  const doubt = doubtOf({ ...conditionsOf(measured, bore, survey), gauge }, gauge, repeats, middleOf(pair))
  const { standardUncertaintyMm: u, degreesOfFreedom: nu, expandedMm } = doubt
  const maxMm = pair?.kind === 'wear' ? pair.newMaxMm : pair?.maxMm
  const bandMm = pair?.minMm === undefined || maxMm === undefined ? undefined : maxMm - pair.minMm
  const countedUm = Math.max(gauge.repeatabilityUm, stepReadUm(gauge) / Math.sqrt(12))
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

/** Of a station in the middle of the limits, where the wall is straight, with the gauge's own figures alone. */
function doubtOf(
  conditions: SetUpConditions,
  gauge: OwnFigures,
  repeats: number,
  sizeMm = conditions.setUp.settingSizeMm,
): StationDoubt {
  return stationDoubt([
    ...setUpContributions(conditions)(sizeMm),
    ...stationContributions({
      id: `check:${gauge.id}`,
      repeats,
      setUp: conditions.setUp,
      gauge,
      standard: conditions.standard,
      repeatability: {
        um: gauge.repeatabilityUm,
        degreesOfFreedom: gauge.repeatabilityDegreesOfFreedom,
        estimate: `repeatability:${gauge.id}`,
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
