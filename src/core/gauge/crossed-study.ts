import type { GaugeAnswer } from '../findings'
import type { CrossedStudy, Gauge, Measured } from '../measured'
import { type CrossedRanges, crossedRanges } from './crossed-ranges'
import { type CrossedRefusal, type CrossedTable, crossedTable } from './crossed-table'
import { type CrossedVariance, crossedVariance } from './crossed-variance'
import { gaugeAnswer } from './gauge-answer'
import { freedomOfSum } from './mean-squares'
import { stepReadUm } from './presets'

/** What a crossed study of a gauge shows: several people, several parts, several readings by each of each. */
export interface CrossedStudyFinding {
  readonly gaugeId: string
  /** Which of the gauge's studies. */
  readonly index: number
  readonly date?: string
  /** The step that is read with this gauge. */
  readonly stepUm: number
  readonly shown:
    | (CrossedRefusal & { readonly known: false })
    | {
        readonly known: true
        readonly people: readonly string[]
        readonly parts: readonly string[]
        readonly trials: number
        readonly variance: Omit<CrossedVariance, 'ofMean'>
        readonly ranges: CrossedRanges
        /** What a station read by any one of these people is worth; absent while no bore of this engine was. */
        readonly answer?: GaugeAnswer
      }
}

/**
 * The crossed studies of every gauge, by analysis of variance and by averages and ranges. Not a part of `inspect`:
 * worked out where they are shown. Source: Measurement Systems Analysis, 4th ed. 2010, chapter III.
 */
export function crossedStudies(measured: Measured): CrossedStudyFinding[] {
  return measured.gauges.flatMap((gauge) =>
    (gauge.crossedStudies ?? []).map((study, index) => crossedStudy(measured, gauge, study, index)),
  )
}

function crossedStudy(
  measured: Measured,
  gauge: Gauge,
  study: CrossedStudy,
  index: number,
): CrossedStudyFinding {
  const table = crossedTable(study)
  return {
    gaugeId: gauge.id,
    index,
    ...(study.date === undefined ? {} : { date: study.date }),
    stepUm: stepReadUm(gauge),
    shown: 'why' in table ? { known: false, ...table } : shownBy(measured, gauge, table),
  }
}

function shownBy(measured: Measured, gauge: Gauge, table: CrossedTable): CrossedStudyFinding['shown'] {
  const { people, parts, trials } = table
  const { ofMean, ...variance } = crossedVariance(table, stepReadUm(gauge))
  const rest = variance.pooled ? [variance.squares.equipment, variance.squares.interaction] : []
  const freedom = rest.reduce((sum, squares) => sum + (squares?.degreesOfFreedom ?? 0), 0)
  // The zero is read by one person.
  const repeating = {
    ...gauge,
    repeatabilityUm: variance.gauge.deviationUm,
    repeatabilityDegreesOfFreedom: freedom > 0 ? freedom : variance.squares.equipment.degreesOfFreedom,
  }
  const answer = gaugeAnswer(measured, repeating, {
    oneUm: variance.gaugeAndPeople.deviationUm,
    ofMean(repeats) {
      const sum = ofMean(repeats)
      const square = sum.reduce((total, { of, factor }) => total + factor * of.meanSquare, 0)
      return { um: Math.sqrt(Math.max(0, square)), degreesOfFreedom: freedomOfSum(sum) }
    },
    // What one person's repeats show is what the zero was read with.
    estimate: people.length > 1 ? 'crossed-study' : 'repeatability',
  })
  return {
    known: true,
    people,
    parts,
    trials,
    variance,
    ranges: crossedRanges(table, stepReadUm(gauge)),
    ...(answer ? { answer } : {}),
  }
}
