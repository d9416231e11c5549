import type { GrowingCase } from './earliest-hours'

const two: GrowingCase = {
  gauge: 'dial-0.001-micrometer',
  wall: 'grey-iron',
  repeats: 3,
  closingZero: true,
  boreC: 24,
  referenceC: 24,
  levelsMm: [20],
  axesDegrees: [0],
  spec: { newMinMm: 54, newMaxMm: 54.02, wearLimitMm: 54.1 },
  visits: [0, 1000],
  newMm: 54.01,
  rateUm: () => 30,
}

/** Worn most at the top and across, so that one station comes first. */
function mostAtTheTop(depthMm: number, axisDegrees: number): number {
  return 30 - 0.2 * depthMm - (axisDegrees === 0 ? 0 : 6)
}

/** The cases in which the earliest hours are compared with the true ones. */
export const growingCases: Readonly<Record<string, GrowingCase>> = {
  'two surveys, one station': two,
  'two surveys, growth within its doubt': { ...two, rateUm: () => 3 },
  'four surveys, one station': { ...two, visits: [0, 400, 800, 1200] },
  'four surveys, plated, five kelvin warmer than the ring': {
    ...two,
    gauge: 'dial-0.001-ring',
    wall: 'plated-aluminium',
    boreC: 27,
    referenceC: 22,
    visits: [100, 500, 900, 1300],
  },
  'two surveys, four stations': {
    ...two,
    levelsMm: [10, 60],
    axesDegrees: [0, 90],
    rateUm: mostAtTheTop,
  },
  'four surveys, four stations, ten-micron dial': {
    ...two,
    gauge: 'dial-0.01',
    levelsMm: [10, 60],
    axesDegrees: [0, 90],
    visits: [0, 400, 800, 1200],
    rateUm: mostAtTheTop,
  },
}
