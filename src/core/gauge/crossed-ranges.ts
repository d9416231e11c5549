import { meanRangeDivisor } from '../statistics/range-of-normal'
import { categoriesOf } from './categories'
import type { CrossedTable } from './crossed-table'

/** A standard deviation, µm, and as a share of that of all readings. This method has no interval. */
export interface RangeSpread {
  readonly deviationUm: number
  readonly share: number
}

/** What a crossed study shows by averages and ranges. */
export interface CrossedRanges {
  /** Mean of the ranges of repeats, by person and of all; range of the people's means, and of the parts'. */
  readonly meanRangesUm: readonly number[]
  readonly meanRangeUm: number
  readonly peopleRangeUm: number
  readonly partsRangeUm: number
  /** K1, K2 and K3, by which the three are multiplied; K2 is absent for one person. */
  readonly factors: { readonly gauge: number; readonly people?: number; readonly parts: number }
  readonly gauge: RangeSpread
  readonly people: RangeSpread
  readonly gaugeAndPeople: RangeSpread
  readonly parts: RangeSpread
  readonly all: RangeSpread
  readonly categories: number
}

/** With more groups of repeats than this d2 serves in place of d2*. */
const manyGroups = 15

/**
 * A crossed study by averages and ranges: EV = R̄·K1, AV² = (X̄diff·K2)² − EV²/(parts·trials) and no less than 0,
 * PV = Rp·K3. K1 = 1/d2* of the trials for as many groups as there are cells (1/d2 beyond 15), K2 and K3 = 1/d2* of
 * the people and of the parts for one group, each to four decimals, as they are printed. Source: Measurement Systems
 * Analysis, 4th ed. 2010, chapter III, average and range method.
 */
export function crossedRanges(
  { people, parts, trials, valuesUm }: CrossedTable,
  stepUm: number,
): CrossedRanges {
  const meanRangesUm = valuesUm.map((row) => meanOf(row.map(rangeOf)))
  const meanRangeUm = meanOf(meanRangesUm)
  const peopleRangeUm = rangeOf(valuesUm.map((row) => meanOf(row.map(meanOf))))
  const partsRangeUm = rangeOf(parts.map((_, j) => meanOf(valuesUm.map((row) => meanOf(row[j] ?? [])))))
  const cells = people.length * parts.length
  const several = people.length > 1
  const k1 = factorOf(trials, cells > manyGroups ? Number.POSITIVE_INFINITY : cells)
  const k2 = several ? factorOf(people.length, 1) : 0
  const k3 = factorOf(parts.length, 1)
  const gauge = meanRangeUm * k1
  const peopleSquare = (peopleRangeUm * k2) ** 2 - gauge ** 2 / (parts.length * trials)
  const ofPeople = several ? Math.sqrt(Math.max(0, peopleSquare)) : 0
  const both = Math.hypot(gauge, ofPeople)
  const ofParts = partsRangeUm * k3
  const all = Math.hypot(both, ofParts)
  const spread = (deviationUm: number) => ({ deviationUm, share: all > 0 ? deviationUm / all : 0 })
  return {
    meanRangesUm,
    meanRangeUm,
    peopleRangeUm,
    partsRangeUm,
    factors: { gauge: k1, ...(several ? { people: k2 } : {}), parts: k3 },
    gauge: spread(gauge),
    people: spread(ofPeople),
    gaugeAndPeople: spread(both),
    parts: spread(ofParts),
    all: spread(all),
    categories: categoriesOf(ofParts, both, stepUm),
  }
}

/** 1/d2* to four decimals. */
function factorOf(values: number, groups: number): number {
  return Math.round(1e4 / meanRangeDivisor(values, groups)) / 1e4
}

function meanOf(values: readonly number[]): number {
  const [first = 0] = values
  return first + values.reduce((sum, value) => sum + (value - first), 0) / values.length
}

function rangeOf(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values)
}
