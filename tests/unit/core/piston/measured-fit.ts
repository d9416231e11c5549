import type { Measured, Piston } from '../../../../src/core/measured'
import type { Fit } from '../../../../src/core/piston/fits'
import { fitsOf } from '../../../../src/core/piston/fits'
import { type Circumstances, findingOf, first, measuredBore, onlyScaleDoubt } from '../measured-bore'

/** A bore read at two levels on two axes, mm. */
export interface Sizes {
  readonly top: readonly [number, number]
  readonly bottom: readonly [number, number]
}

/** A piston with a size that holds no doubt, all of its measuring recorded. */
export function certainPiston(readMm: number, given: Partial<Piston> = {}): Piston {
  return {
    id: 'piston',
    state: 'at-hand',
    readMm,
    standardId: 'standard',
    readingDoubtUm: 0,
    heightMm: 10,
    temperatureC: 20,
    micrometerTemperatureC: 20,
    expansionPerK: 0,
    expansionDoubtPerK: 0,
    ...given,
  }
}

/** A bore whose stations hold u µm each, all their own, with the pistons given. */
export function withPistons(
  { top, bottom }: Sizes,
  pistons: readonly Piston[],
  given: Circumstances = {},
  um = 1,
): Measured {
  const certain = onlyScaleDoubt(um)
  const table = { levelsMm: [20, 100], axesDegrees: [0, 90], rows: [top, bottom] }
  return {
    ...measuredBore(table, { ...certain, ...given, bore: { ...certain.bore, ...given.bore } }),
    pistons,
  }
}

/** The fit of the first piston in the first bore. */
export function firstFit(measured: Measured): Fit {
  return first(fitsOf(measured, findingOf(measured)))
}
