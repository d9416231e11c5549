import type { Job } from '../../../src/job/schema'

/** A job with one of everything, small enough to see through. Invented. */
export const sampleJob: Job = {
  format: 'borewall-job',
  formatVersion: 2,
  id: 'sample',
  name: 'Sample',
  machine: 'Pump',
  customer: 'The owner',
  shownIn: 'mm',
  hoursPerWeek: 12.5,
  note: 'Line one\nline two',
  invented: true,
  repeatsPerStation: 2,
  wantedDoubtUm: 2.5,
  spec: {
    newMinMm: 54,
    newMaxMm: 54.012,
    grades: [
      { name: 'A', minMm: 54, maxMm: 54.006 },
      { name: 'B', minMm: 54.006, maxMm: 54.012 },
    ],
    wearLimitMm: 54.05,
    ovalityLimitMm: 0.015,
    ovalityLimitPerMm: 0.0003,
    ovalityRule: 'pooled',
    ovalityAxesDegrees: { x: 0, y: 90 },
    taperLimitMm: 0.025,
    taperLimitPerMmOfBore: 0.0005,
    taperLimitPerMmOfTravel: 0.0006,
    taperRule: 'level-means',
    travelMm: 44,
    crownAtTopMm: 0.4,
    clearanceMinMm: 0.044,
    clearanceMaxMm: 0.056,
    clearanceLimitMm: 0.085,
    clearanceRule: 'smallest-to-largest',
    clearanceAtC: 20,
    pistonHeightMm: 8,
    ringGapMinMm: 0.2,
    ringGapMaxMm: 0.35,
    ringGapLimitMm: 0.8,
    cleanUpMm: 0.12,
    oversizesAlike: true,
    serviceIntervalHours: 50,
  },
  gauges: [
    {
      id: 'gauge',
      name: 'Gauge',
      kind: 'dial-0.001-micrometer',
      stepUm: 1,
      repeatabilityUm: 1.5,
      repeatabilityDegreesOfFreedom: 20,
      settingUm: 2.6,
      scaleUm: 0.6,
      driftHalfWidthUm: 1.5,
      contactHalfWidthMm: 2.5,
      depthDoubtMm: 0.5,
      rockingUm: 1,
      checks: [{ date: '2024-05-30', sizesMm: [54.01, 54.011, 54.01] }, { dialUm: [2, 1, 2.5] }],
      crossedStudies: [
        {
          date: '2024-05-30',
          readings: [
            { person: 'One', part: '1', sizesMm: [54.01, 54.011] },
            { person: 'One', part: '2', sizesMm: [54.02, 54.02] },
          ],
        },
        { readings: [{ person: 'One', part: '1', dialUm: [2, 1.5] }] },
      ],
    },
  ],
  standards: [
    {
      id: 'micrometer',
      name: 'Micrometer',
      kind: 'micrometer',
      errorUm: 1,
      doubtUm: 1.5,
      expansionPerK: 0.0000115,
      expansionDoubtPerK: 0.0000006,
    },
  ],
  thermometers: [{ id: 'thermometer', name: 'Thermometer', doubtK: 1 }],
  setUps: [
    {
      id: 'set-up',
      gaugeId: 'gauge',
      standardId: 'micrometer',
      entry: 'size',
      settingSizeMm: 54,
      largerIs: 'anticlockwise',
      zeroOpenUm: 0,
      zeroCloseUm: 1,
      boreTemperatureC: 26,
      referenceTemperatureC: 25,
      boreThermometerId: 'thermometer',
      referenceThermometerId: 'thermometer',
      soakedTogether: true,
    },
  ],
  bores: [
    {
      id: 'bore',
      name: '1',
      role: 'of-this-engine',
      grade: 'A',
      lengthMm: 88,
      ringTravelMm: { from: 6, to: 84 },
      wall: {
        kind: 'plated-aluminium',
        platingUm: 70,
        liner: false,
        mayBeBored: false,
        mayBeHoned: true,
        expansionPerK: 0.000023,
        expansionDoubtPerK: 0.000001,
      },
      ports: [
        { id: 'exhaust', name: 'exhaust', fromDepthMm: 29, toDepthMm: 55, fromDegrees: -45, toDegrees: 45 },
        { id: 'transfer', name: 'transfer', fromDepthMm: 42, toDepthMm: 55, fromDegrees: 62, toDegrees: 100 },
      ],
      belts: [{ id: 'belt', name: 'lower belt', fromDepthMm: 70, toDepthMm: 72 }],
      surveys: [
        {
          id: 'survey',
          name: 'First',
          date: '2024-02-29',
          hoursRun: 185,
          setUpId: 'set-up',
          levelsMm: [8, 35, 62],
          axesDegrees: [0, 90],
          readings: [
            { depthMm: 8, axisDegrees: 0, sizesMm: [54.033, 54.035, 54.033] },
            { depthMm: 8, axisDegrees: 90, sizesMm: [54.02] },
            { depthMm: 35, axisDegrees: 90, sizesMm: [54.018, 54.019], confirmed: true },
          ],
          surfaceFindings: [
            {
              id: 'streak',
              kind: 'scratch',
              shape: 'streak',
              fromDepthMm: 12,
              toDepthMm: 40,
              fromDegrees: 359,
              toDegrees: 1,
              catchesNail: true,
              acrossMm: 0.4,
              alongMm: 27,
              note: 'Bright',
              scanId: 'scan',
              photos: [{ hash: 'ab'.repeat(32), name: 'scratch.jpg', widthPx: 1600, heightPx: 1200 }],
            },
          ],
          unreachable: [{ depthMm: 62, axisDegrees: 90 }],
          ringGaps: [{ depthMm: 8, gapMm: 0.42 }],
          feelerDoubtUm: 12,
        },
      ],
      scans: [
        {
          id: 'scan',
          name: 'Before cleaning',
          date: '2024-02-29',
          hoursRun: 185,
          clamping: 'bare',
          cleaning: 'before',
          gaugeId: 'gauge',
          hash: 'cd'.repeat(32),
          levels: 14,
          angles: 72,
          values: 854,
          tieSurveyId: 'survey',
          cutOffUndulations: 15,
        },
      ],
    },
  ],
  pistons: [
    {
      id: 'piston',
      name: 'Used',
      state: 'fitted',
      boreId: 'bore',
      grade: 'A',
      oversizeMm: 0,
      readMm: 53.928,
      heightMm: 8,
      standardId: 'micrometer',
      readingDoubtUm: 2,
      temperatureC: 24,
      micrometerTemperatureC: 24,
      thermometerId: 'thermometer',
      expansionPerK: 0.00002,
      expansionDoubtPerK: 0.000001,
      crownHeightMm: 56,
      pinHeightMm: 26,
      topRingHeightMm: 50,
      profile: [{ heightMm: 40, readMm: 53.8 }],
    },
    { id: 'catalogue', state: 'obtainable', grade: 'B', minMm: 53.956, maxMm: 53.962 },
  ],
  scans: [{ hash: 'cd'.repeat(32), base64: 'AAAA' }],
  photographs: [{ hash: 'ab'.repeat(32), type: 'image/jpeg', base64: '/9j/4A==' }],
}

/** Counts up: `id-1`, `id-2` and so on. */
export function countingIds(): () => string {
  let count = 0
  return () => {
    count += 1
    return `id-${count}`
  }
}

/** A copy that may be spoilt, with one value set along a path, or taken out when it is undefined. */
export function spoilt(path: readonly (string | number)[], value: unknown): unknown {
  const copy: unknown = structuredClone(sampleJob)
  const last = path.at(-1)
  const parent = path.slice(0, -1).reduce<unknown>((at, key) => Reflect.get(Object(at), key), copy)
  if (last === undefined || typeof parent !== 'object' || parent === null) throw new Error('No such place')
  if (value === undefined) Reflect.deleteProperty(parent, last)
  else Reflect.set(parent, last, value)
  return copy
}
