import { type Job, jobFormat, jobFormatVersion } from '../../../src/job/schema'

/** A small job with a bore of the engine and one for comparison. All figures are invented. */
export function inventedJob(change: Partial<Job> = {}): Job {
  const survey = { setUpId: 'set', levelsMm: [8, 60], axesDegrees: [0, 90] }
  const sizes = (depthMm: number, axisDegrees: number, ...sizesMm: number[]) => ({
    depthMm,
    axisDegrees,
    sizesMm,
  })
  return {
    format: jobFormat,
    formatVersion: jobFormatVersion,
    id: 'j1',
    name: 'Invented saw',
    invented: true,
    spec: { newMinMm: 54, newMaxMm: 54.012, wearLimitMm: 54.05, ovalityLimitMm: 0.015, taperLimitMm: 0.025 },
    gauges: [{ id: 'g', kind: 'dial-0.001-micrometer' }],
    standards: [{ id: 'm', kind: 'micrometer', errorUm: 0 }],
    thermometers: [{ id: 't' }],
    setUps: [
      {
        id: 'set',
        gaugeId: 'g',
        standardId: 'm',
        entry: 'size',
        settingSizeMm: 54,
        zeroOpenUm: 0,
        zeroCloseUm: 1,
        boreTemperatureC: 26,
        referenceTemperatureC: 26,
        boreThermometerId: 't',
        referenceThermometerId: 't',
      },
    ],
    bores: [
      {
        id: 'used',
        name: 'Used',
        role: 'of-this-engine',
        lengthMm: 80,
        wall: { kind: 'plated-aluminium', platingUm: 70 },
        ports: [
          { id: 'p', name: 'exhaust', fromDepthMm: 55, toDepthMm: 70, fromDegrees: -20, toDegrees: 20 },
        ],
        belts: [],
        surveys: [
          {
            id: 's-used',
            date: '2026-03-09',
            hoursRun: 120.5,
            ...survey,
            readings: [
              sizes(8, 0, 54.033, 54.034),
              sizes(8, 90, 54.02, 54.019),
              sizes(60, 0, 54.012),
              sizes(60, 90, 54.011),
            ],
          },
        ],
      },
      {
        id: 'new',
        name: 'New',
        role: 'for-comparison',
        lengthMm: 80,
        wall: { kind: 'plated-aluminium' },
        ports: [],
        belts: [],
        surveys: [{ id: 's-new', ...survey, readings: [sizes(8, 0, 54.009), sizes(8, 90, 54.008)] }],
      },
    ],
    ...change,
  }
}
