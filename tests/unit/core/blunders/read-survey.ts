import type { ReadStation, ReadSurvey } from '../../../../src/core/blunders/read-survey'
import { seededRandom } from '../../../proof/seeded-random'

/** How the surveys of these tests are made: an invented worn bore, read with a given scatter. */
export interface Made {
  readonly levelsMm: readonly number[]
  readonly axesDegrees: readonly number[]
  readonly landsMm: readonly number[]
  readonly trueMm: (depthMm: number, axisDegrees: number) => number
  readonly repeats: number
  readonly repeatMm: number
  readonly scaleMm: number
  readonly commonMm: number
  readonly survey: Partial<ReadSurvey>
}

/** An iron bore of 86 mm with a land, worn most under the upper ring's reversal, larger across than along. */
export const ironBore: Made = {
  levelsMm: [4, 10, 40, 80, 125],
  axesDegrees: [0, 45, 90, 135],
  landsMm: [4],
  trueMm: (depth, axis) => {
    if (depth === 4) return 86.008
    const wear = 0.075 * Math.exp(-(depth - 10) / 45)
    return 86.01 + wear * (1 + 0.3 * Math.cos((2 * axis * Math.PI) / 180))
  },
  repeats: 2,
  repeatMm: 0.003,
  scaleMm: 0.0025,
  commonMm: 0.003,
  survey: {
    turnMm: 1,
    zeroMm: 86,
    sleeveStepMm: 0.5,
    newMinMm: 86,
    newMaxMm: 86.02,
  },
}

/** A plated bore of 54 mm on a micrometer-set one-micron gauge, levels above and below its ports. */
export const platedBore: Made = {
  levelsMm: [3, 8, 16, 25, 62, 80],
  axesDegrees: [0, 45, 90, 135],
  landsMm: [3],
  trueMm: (depth, axis) =>
    depth === 3
      ? 54.004
      : 54.006 + 0.00018 * (85 - depth) * (1 + 0.35 * Math.cos((2 * axis * Math.PI) / 180)),
  repeats: 3,
  repeatMm: 0.0015,
  scaleMm: 0.0006,
  commonMm: 0.0031,
  survey: {
    turnMm: 0.2,
    zeroMm: 54,
    sleeveStepMm: 0.5,
    newMinMm: 54,
    newMaxMm: 54.012,
  },
}

/** A clean survey drawn from its own stated doubt. */
export function readSurvey(made: Made, seed: number): ReadSurvey {
  const random = seededRandom(seed)
  const common = random.normal(made.commonMm)
  const stations = made.levelsMm.flatMap((depthMm) =>
    made.axesDegrees.map((axisDegrees): ReadStation => {
      const scale = random.normal(made.scaleMm)
      const sizesMm = Array.from(
        { length: made.repeats },
        () => made.trueMm(depthMm, axisDegrees) + common + scale + random.normal(made.repeatMm),
      )
      return {
        depthMm,
        axisDegrees,
        sizesMm,
        diameterMm: mean(sizesMm),
        individualMm: Math.hypot(made.scaleMm, made.repeatMm / Math.sqrt(made.repeats)),
        land: made.landsMm.includes(depthMm),
      }
    }),
  )
  return {
    stations,
    commonMm: made.commonMm,
    repeatMm: made.repeatMm,
    repeatDegreesOfFreedom: Number.POSITIVE_INFINITY,
    unworn: false,
    ...made.survey,
  }
}

/** The same with the sizes of some stations changed. */
export function reread(
  survey: ReadSurvey,
  change: (sizeMm: number, station: ReadStation, repeat: number) => number,
): ReadSurvey {
  const stations = survey.stations.map((station) => {
    const sizesMm = station.sizesMm.map((size, repeat) => change(size, station, repeat))
    return { ...station, sizesMm, diameterMm: station.diameterMm + mean(sizesMm) - mean(station.sizesMm) }
  })
  return { ...survey, stations }
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}
