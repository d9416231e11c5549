import type { CheckDrift, CheckScatter, GaugeCheckFinding } from '../findings'
import type { Gauge, GaugeCheck, Measured } from '../measured'
import { chiSquaredQuantile } from '../statistics/chi-squared'
import { scatter, standardDeviation } from '../statistics/scatter'
import { straightLine } from '../statistics/straight-line'
import { studentQuantile } from '../statistics/student'
import { gaugeAnswer, type ReadingScatter } from './gauge-answer'
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

/** Repeats scatter by themselves alone. */
function repeatsOf({
  repeatabilityUm,
  repeatabilityDegreesOfFreedom: degreesOfFreedom,
}: Repeating): ReadingScatter {
  return {
    oneUm: repeatabilityUm,
    ofMean: (repeats) => ({ um: repeatabilityUm / Math.sqrt(repeats), degreesOfFreedom }),
    // The zero was read with the same scatter.
    estimate: 'repeatability',
  }
}

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
  const answer = own && gaugeAnswer(measured, { ...gauge, ...own }, repeatsOf(own))
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
