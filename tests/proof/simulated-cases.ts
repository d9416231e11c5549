import type { SimulatedCase } from './simulated-survey'

/** Every true diameter exactly at the limit: a round, straight bore of 54.050 mm. */
const atTheLimit: SimulatedCase = {
  gauge: 'dial-0.001-micrometer',
  wall: 'plated-aluminium',
  repeats: 3,
  closingZero: true,
  boreC: 26,
  referenceC: 26,
  levelsMm: [8, 25, 62, 80],
  axesDegrees: [0, 45, 90, 135],
  trueMm: () => 54.05,
  spec: { newMinMm: 54, newMaxMm: 54.012, wearLimitMm: 54.05, ovalityAxesDegrees: { x: 0, y: 90 } },
}

/** An oval, tapered bore, well worn. */
function worn(depthMm: number, axisDegrees: number): number {
  return 54.028 - 0.0002 * depthMm + 0.005 * Math.cos((2 * axisDegrees * Math.PI) / 180)
}

/** The cases that coverage is counted in, by name. */
export const simulatedCases: Readonly<Record<string, SimulatedCase>> = {
  'a round bore at the limit, micrometer-set': atTheLimit,
  'a round bore at the limit, ring-set, one reading': { ...atTheLimit, gauge: 'dial-0.001-ring', repeats: 1 },
  'a round bore at the limit, no closing zero, one reading': {
    ...atTheLimit,
    repeats: 1,
    closingZero: false,
  },
  'a round iron bore at the limit, ten-micron dial, two readings': {
    ...atTheLimit,
    gauge: 'dial-0.01',
    wall: 'grey-iron',
    repeats: 2,
  },
  'a round bore at the limit, by the reverse method': { ...atTheLimit, entry: 'reverse' },
  'an oval, tapered bore, micrometer-set': { ...atTheLimit, trueMm: worn },
  'an oval, tapered bore, the part 4 K warmer than a ring, two axes': {
    ...atTheLimit,
    gauge: 'dial-0.001-ring',
    boreC: 24,
    referenceC: 20,
    axesDegrees: [0, 90],
    trueMm: worn,
  },
}
