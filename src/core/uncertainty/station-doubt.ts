import type { Contribution, StationFinding } from '../findings'
import { combine, expanded, isCommon } from './combine'

/** The doubt of a station: its whole, the part it shares with others, and its own. */
export type StationDoubt = Pick<
  StationFinding,
  | 'standardUncertaintyMm'
  | 'degreesOfFreedom'
  | 'expandedMm'
  | 'commonMm'
  | 'individualMm'
  | 'individualDegreesOfFreedom'
>

/** The doubt that contributions add up to, mm. Source: as for `combine`. */
export function stationDoubt(contributions: readonly Contribution[]): StationDoubt {
  const combined = combine([{ factor: 1, contributions }])
  const individual = combine([{ factor: 1, contributions: contributions.filter((c) => !isCommon(c)) }])
  const common = combine([{ factor: 1, contributions: contributions.filter(isCommon) }])
  return {
    standardUncertaintyMm: combined.standardUncertainty,
    degreesOfFreedom: combined.degreesOfFreedom,
    expandedMm: expanded(combined),
    commonMm: common.standardUncertainty,
    individualMm: individual.standardUncertainty,
    individualDegreesOfFreedom: individual.degreesOfFreedom,
  }
}
