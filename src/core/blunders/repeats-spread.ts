import type { Blunder } from '../findings'
import { studentisedRangeQuantile } from '../statistics/studentised-range'
import type { ReadSurvey } from './read-survey'

/** Of clean surveys this share may raise the question at any of its stations. */
const falseAlarms = 0.002

/**
 * Stations whose repeats lie further apart than this gauge usually leaves them: dirt, a tilt that was not
 * rocked out, a contact on an edge.
 *
 * Asked when largest less smallest of n repeats exceeds the studentised range for n values at
 * 1 − 0.002/stations times the standard deviation of one reading, and three times that deviation. The step
 * of the dial can widen a spread by one step beyond what the scatter does, so `stepMm` is allowed on top.
 * Own derivation; the studentised range after Lund & Lund, algorithm AS 190 (1983).
 */
export function repeatsSpread(survey: ReadSurvey, stepMm: number): Blunder[] {
  const several = survey.stations.filter((station) => station.sizesMm.length > 1)
  return several.flatMap(({ depthMm, axisDegrees, sizesMm }) => {
    const spreadMm = Math.max(...sizesMm) - Math.min(...sizesMm)
    const factor = studentisedRangeQuantile(
      1 - falseAlarms / several.length,
      sizesMm.length,
      survey.repeatDegreesOfFreedom,
    )
    const usualMm = Math.max(3, factor) * survey.repeatMm + stepMm
    return spreadMm > usualMm
      ? [{ code: 'repeats-spread', place: { depthMm, axisDegrees }, spreadMm, usualMm }]
      : []
  })
}
