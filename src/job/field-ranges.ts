import type { Unit } from '../core/problem'

/** What a number in a field may be. Wide enough for any real bench; outside it a slip is certain. */
export interface FieldRange {
  readonly least: number
  readonly most: number
  readonly mostExcluded?: boolean
  readonly unit?: Unit
}

const boreSize: FieldRange = { least: 1, most: 2000, unit: 'mm' }
const depth: FieldRange = { least: 0, most: 20000, unit: 'mm' }
const formLimit: FieldRange = { least: 0, most: 10, unit: 'mm' }
const clearance: FieldRange = { least: -1, most: 10, unit: 'mm' }
const gap: FieldRange = { least: 0, most: 50, unit: 'mm' }
const share: FieldRange = { least: 0, most: 0.1 }
const dial: FieldRange = { least: -20000, most: 20000, unit: 'µm' }
const doubt: FieldRange = { least: 0, most: 1000, unit: 'µm' }
const expansion: FieldRange = { least: 0, most: 0.0001, unit: '1/K' }
const temperature: FieldRange = { least: -50, most: 80, unit: '°C' }
const axis: FieldRange = { least: 0, most: 180, mostExcluded: true, unit: '°' }
const angle: FieldRange = { least: -360, most: 360, unit: '°' }

/** The range of every numeric field of a job, by the field's name (for a list: of each of its numbers). */
export const fieldRanges = {
  newMinMm: boreSize,
  newMaxMm: boreSize,
  wearLimitMm: boreSize,
  minMm: boreSize,
  maxMm: boreSize,
  settingSizeMm: boreSize,
  overContactsMm: boreSize,
  caliperMm: boreSize,
  sizesMm: boreSize,
  oversizesMm: { least: 0.001, most: 20, unit: 'mm' },
  oversizeMm: { least: 0, most: 20, unit: 'mm' },
  ovalityLimitMm: formLimit,
  ovalityLimitPerMm: share,
  taperLimitMm: formLimit,
  taperLimitPerMmOfBore: share,
  taperLimitPerMmOfTravel: share,
  travelMm: { least: 1, most: 20000, unit: 'mm' },
  lengthMm: { least: 1, most: 20000, unit: 'mm' },
  depthMm: depth,
  levelsMm: depth,
  fromDepthMm: depth,
  toDepthMm: depth,
  from: depth,
  to: depth,
  axisDegrees: axis,
  axesDegrees: axis,
  x: axis,
  y: axis,
  acrossMm: { least: 0, most: 20000, unit: 'mm' },
  alongMm: { least: 0, most: 20000, unit: 'mm' },
  widthPx: { least: 1, most: 100000 },
  heightPx: { least: 1, most: 100000 },
  fromDegrees: angle,
  toDegrees: angle,
  dialUm: dial,
  zeroOpenUm: dial,
  zeroCloseUm: dial,
  dialOverContactsUm: dial,
  turnValueUm: { least: 1, most: 20000, unit: 'µm' },
  stepUm: { least: 0.001, most: 1000, unit: 'µm' },
  repeatabilityUm: doubt,
  repeatabilityDegreesOfFreedom: { least: 1, most: 1000000 },
  settingUm: doubt,
  scaleUm: doubt,
  driftHalfWidthUm: doubt,
  rockingUm: doubt,
  contactHalfWidthMm: { least: 0, most: 100, unit: 'mm' },
  feetOffsetMm: { least: 0, most: 1000, unit: 'mm' },
  depthDoubtMm: { least: 0, most: 100, unit: 'mm' },
  errorUm: { least: -1000, most: 1000, unit: 'µm' },
  doubtUm: doubt,
  doubtK: { least: 0, most: 20, unit: 'K' },
  expansionPerK: expansion,
  expansionDoubtPerK: expansion,
  boreTemperatureC: temperature,
  referenceTemperatureC: temperature,
  referenceTemperatureCloseC: temperature,
  gaugeWarmedK: { least: -60, most: 60, unit: 'K' },
  platingUm: { least: 0, most: 2000, unit: 'µm' },
  hoursRun: { least: 0, most: 1000000, unit: 'h' },
  restedHours: { least: 0, most: 1000000, unit: 'h' },
  repeatsPerStation: { least: 1, most: 50 },
  wantedDoubtUm: { least: 0.001, most: 1000, unit: 'µm' },
  crownAtTopMm: { least: -200, most: 1000, unit: 'mm' },
  clearanceMinMm: clearance,
  clearanceMaxMm: clearance,
  clearanceLimitMm: clearance,
  clearanceAtC: temperature,
  pistonHeightMm: depth,
  ringGapMinMm: gap,
  ringGapMaxMm: gap,
  ringGapLimitMm: gap,
  gapMm: gap,
  cleanUpMm: { least: 0, most: 5, unit: 'mm' },
  serviceIntervalHours: { least: 0.1, most: 1000000, unit: 'h' },
  hoursPerWeek: { least: 0.01, most: 168, unit: 'h' },
  readMm: boreSize,
  heightMm: depth,
  crownHeightMm: depth,
  pinHeightMm: depth,
  topRingHeightMm: depth,
  readingDoubtUm: doubt,
  feelerDoubtUm: doubt,
  temperatureC: temperature,
  micrometerTemperatureC: temperature,
  levels: { least: 1, most: 100000 },
  angles: { least: 3, most: 100000 },
  values: { least: 1, most: 1000000 },
  cutOffUndulations: { least: 1, most: 10000 },
  plateTorqueNm: { least: 0, most: 10000, unit: 'N·m' },
} as const satisfies Record<string, FieldRange>

export type RangedField = keyof typeof fieldRanges

export function rangeOf(field: string): FieldRange | undefined {
  return Object.hasOwn(fieldRanges, field) ? fieldRanges[field as RangedField] : undefined
}
