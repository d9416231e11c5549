import fc from 'fast-check'
import type { Plan, Spot } from './invented-cylinder'

/** A plan of up to 6 levels × 6 axes with readings at some of its stations, at least one. */
export interface RaggedSurvey extends Plan {
  readonly spots: readonly Spot[]
  readonly levelsMm: readonly number[]
  readonly axesDegrees: readonly number[]
}

const levels = fc.uniqueArray(fc.integer({ min: 0, max: 90 }), { minLength: 1, maxLength: 6 })
const axes = fc.uniqueArray(fc.integer({ min: 0, max: 35 }), { minLength: 1, maxLength: 6 })
const microns = fc.integer({ min: -40, max: 60 })

/** Surveys as they come: levels and axes at odd places, in any order, with stations missing. */
export const raggedSurveys: fc.Arbitrary<RaggedSurvey> = fc
  .tuple(levels, axes)
  .chain(([levelsMm, steps]) => {
    const places = levelsMm.flatMap((depthMm) => steps.map((step) => ({ depthMm, axisDegrees: step * 5 })))
    return fc.tuple(
      fc.constant(levelsMm),
      fc.constant(steps.map((step) => step * 5)),
      fc.shuffledSubarray(places, { minLength: 1 }),
      fc.array(microns, { minLength: places.length, maxLength: places.length }),
    )
  })
  .map(([levelsMm, axesDegrees, places, deviations]) => ({
    levelsMm,
    axesDegrees,
    lengthMm: 100,
    spots: places.map((place, i) => ({ ...place, diameterMm: 54 + (deviations[i] ?? 0) / 1000 })),
  }))

/** Places on a wall of 100 mm: depth in mm, angle in rad. */
export const wallPlaces = fc.array(
  fc.tuple(fc.double({ min: 0, max: 100, noNaN: true }), fc.double({ min: -7, max: 7, noNaN: true })),
  { minLength: 12, maxLength: 12 },
)
