import type { Bore, Measured, Survey } from './measured'
import { standardExpansion, wallExpansion } from './temperature/expansion'
import { temperaturesOf } from './temperature/temperatures'
import type { SetUpConditions } from './uncertainty/set-up-contributions'

/**
 * Everything that a survey's set-up brings to its readings. A survey that names an unknown set-up, gauge or
 * standard is our own mistake (the job file is checked before) and throws.
 */
export function conditionsOf(measured: Measured, bore: Bore, survey: Survey): SetUpConditions {
  const setUp = named(measured.setUps, survey.setUpId, 'set-up')
  const standard = named(measured.standards, setUp.standardId, 'standard')
  return {
    setUp,
    gauge: named(measured.gauges, setUp.gaugeId, 'gauge'),
    standard,
    bore,
    wall: wallExpansion(bore.wall),
    standardExpansion: standardExpansion(standard),
    temperatures: temperaturesOf(setUp, measured.thermometers),
  }
}

/** The entry of a list that has an id; throws where there is none. */
export function named<T extends { readonly id: string }>(list: readonly T[], id: string, what: string): T {
  const found = list.find((item) => item.id === id)
  if (!found) throw new Error(`inspect: no ${what} with id ${JSON.stringify(id)}`)
  return found
}
