import type {
  Belt,
  Bore,
  CrossedReading,
  CrossedStudy,
  Gauge,
  GaugeCheck,
  Grade,
  Piston,
  PistonSize,
  Port,
  RingGap,
  Scan,
  SetUp,
  Spec,
  Standard,
  SurfaceFinding,
  Survey,
  Thermometer,
  UnreachableStation,
  Wall,
} from '../core/measured'
import type { Job } from './schema'

/** The lists that parts refer to by the place in them: those of the job, and of the bore that a part belongs to. */
export type PlacedList = ListOfJob | ListOfBore
export type ListOfJob = 'gauges' | 'standards' | 'thermometers' | 'setUps' | 'bores'
export type ListOfBore = 'surveys' | 'scans'

/**
 * How a field is written in a code: as it is, as a part, as a list of parts, as a place in a list, as readings, as a
 * hash of 64 hexadecimal digits.
 */
export type Way =
  | 'as-it-is'
  | 'readings'
  | 'hash'
  | { readonly part: PartName }
  | { readonly parts: PartName }
  | { readonly placeIn: PlacedList }

export interface CodeField {
  readonly name: string
  readonly way: Way
}

type Fields<Names extends string> = readonly (Names | readonly [Names, Exclude<Way, 'as-it-is'>])[]
type NameIn<Field> = Field extends readonly [infer Name, unknown] ? Name : Field

/** Fields of a part in the order of their bits; does not compile while a field of the part is neither here nor left out. */
function part<Part>() {
  return <const Listed extends Fields<keyof Part & string>, const Left extends keyof Part = never>(
    listed: Exclude<keyof Part, NameIn<Listed[number]> | Left> extends never ? Listed : never,
    _left: readonly Left[] = [],
  ): readonly CodeField[] =>
    listed.map((field: string | readonly [string, Way]) =>
      typeof field === 'string' ? { name: field, way: 'as-it-is' } : { name: field[0], way: field[1] },
    )
}

export type PartName =
  | 'job'
  | 'spec'
  | 'grade'
  | 'gauge'
  | 'check'
  | 'study'
  | 'study-reading'
  | 'standard'
  | 'thermometer'
  | 'set-up'
  | 'bore'
  | 'wall'
  | 'port'
  | 'belt'
  | 'survey'
  | 'surface-finding'
  | 'ring-gap'
  | 'station'
  | 'scan'
  | 'piston'
  | 'piston-size'

/**
 * What a code carries of each part, in the order in which it is written. Codes are printed on paper, so what
 * stands here keeps its place for ever: a further field goes to the end of its list.
 */
export const codeParts: Readonly<Record<PartName, readonly CodeField[]>> = {
  job: part<Job>()(
    [
      'name',
      ['spec', { part: 'spec' }],
      ['gauges', { parts: 'gauge' }],
      ['standards', { parts: 'standard' }],
      ['thermometers', { parts: 'thermometer' }],
      ['setUps', { parts: 'set-up' }],
      ['bores', { parts: 'bore' }],
      'machine',
      'customer',
      'note',
      ['pistons', { parts: 'piston' }],
      'hoursPerWeek',
      'repeatsPerStation',
      'wantedDoubtUm',
      'shownIn',
      'invented',
    ],
    ['format', 'formatVersion', 'id', 'photographs', 'scans'],
  ),
  spec: part<Spec>()([
    'newMinMm',
    'newMaxMm',
    'wearLimitMm',
    'ovalityLimitMm',
    'ovalityRule',
    'taperLimitMm',
    'taperRule',
    ['grades', { parts: 'grade' }],
    'clearanceMinMm',
    'clearanceMaxMm',
    'clearanceLimitMm',
    'pistonHeightMm',
    'travelMm',
    'crownAtTopMm',
    'ringGapMinMm',
    'ringGapMaxMm',
    'ringGapLimitMm',
    'oversizesMm',
    'cleanUpMm',
    'ovalityAxesDegrees',
    'ovalityLimitPerMm',
    'taperLimitPerMmOfBore',
    'taperLimitPerMmOfTravel',
    'clearanceRule',
    'clearanceAtC',
    'oversizesAlike',
    'serviceIntervalHours',
  ]),
  grade: part<Grade>()(['name', 'minMm', 'maxMm']),
  gauge: part<Gauge>()(
    [
      'kind',
      'name',
      'turnValueUm',
      'markedIn',
      'stepUm',
      'calibratedOn',
      'repeatabilityUm',
      'repeatabilityDegreesOfFreedom',
      'settingUm',
      'scaleUm',
      'driftHalfWidthUm',
      'contactHalfWidthMm',
      'feetOffsetMm',
      'depthDoubtMm',
      'rockingUm',
      ['checks', { parts: 'check' }],
      ['crossedStudies', { parts: 'study' }],
    ],
    ['id'],
  ),
  check: part<GaugeCheck>()(['date', 'sizesMm', 'dialUm']),
  study: part<CrossedStudy>()(['date', ['readings', { parts: 'study-reading' }]]),
  'study-reading': part<CrossedReading>()(['person', 'part', 'sizesMm', 'dialUm']),
  standard: part<Standard>()(
    ['kind', 'name', 'errorUm', 'markedIn', 'doubtUm', 'expansionPerK', 'expansionDoubtPerK'],
    ['id'],
  ),
  thermometer: part<Thermometer>()(['name', 'doubtK'], ['id']),
  'set-up': part<SetUp>()(
    [
      ['gaugeId', { placeIn: 'gauges' }],
      ['standardId', { placeIn: 'standards' }],
      'entry',
      'settingSizeMm',
      'largerIs',
      'zeroOpenUm',
      'zeroCloseUm',
      'boreTemperatureC',
      'referenceTemperatureC',
      ['boreThermometerId', { placeIn: 'thermometers' }],
      ['referenceThermometerId', { placeIn: 'thermometers' }],
      'name',
      'soakedTogether',
      'referenceTemperatureCloseC',
      'settingAssumed',
      'gaugeWarmedK',
      'overContactsMm',
      'dialOverContactsUm',
    ],
    ['id'],
  ),
  bore: part<Bore>()(
    [
      'name',
      'role',
      'lengthMm',
      ['wall', { part: 'wall' }],
      ['ports', { parts: 'port' }],
      ['belts', { parts: 'belt' }],
      ['surveys', { parts: 'survey' }],
      'ringTravelMm',
      'grade',
      'oversizeMm',
      ['scans', { parts: 'scan' }],
    ],
    ['id'],
  ),
  wall: part<Wall>()([
    'kind',
    'platingUm',
    'liner',
    'mayBeBored',
    'mayBeHoned',
    'expansionPerK',
    'expansionDoubtPerK',
  ]),
  port: part<Port>()(['name', 'fromDepthMm', 'toDepthMm', 'fromDegrees', 'toDegrees'], ['id']),
  belt: part<Belt>()(['name', 'fromDepthMm', 'toDepthMm'], ['id']),
  survey: part<Survey>()(
    [
      ['setUpId', { placeIn: 'setUps' }],
      'levelsMm',
      'axesDegrees',
      ['readings', 'readings'],
      'hoursRun',
      'name',
      'date',
      'clamping',
      'restedHours',
      'measuredBy',
      'plateTorqueNm',
      'caliperMm',
      ['surfaceFindings', { parts: 'surface-finding' }],
      ['ringGaps', { parts: 'ring-gap' }],
      ['unreachable', { parts: 'station' }],
      'answered',
      'feelerDoubtUm',
      'contactChanged',
    ],
    ['id'],
  ),
  'surface-finding': part<SurfaceFinding>()(
    [
      'kind',
      'shape',
      'fromDepthMm',
      'toDepthMm',
      'fromDegrees',
      'toDegrees',
      'catchesNail',
      'note',
      'acrossMm',
      'alongMm',
      ['scanId', { placeIn: 'scans' }],
    ],
    ['id', 'photos'],
  ),
  'ring-gap': part<RingGap>()(['depthMm', 'gapMm']),
  station: part<UnreachableStation>()(['depthMm', 'axisDegrees']),
  scan: part<Scan>()(
    [
      ['hash', 'hash'],
      'levels',
      'angles',
      'values',
      'cleaning',
      ['gaugeId', { placeIn: 'gauges' }],
      ['tieSurveyId', { placeIn: 'surveys' }],
      'name',
      'date',
      'hoursRun',
      'clamping',
      'cutOffUndulations',
    ],
    ['id'],
  ),
  piston: part<Piston>()(
    [
      'state',
      ['boreId', { placeIn: 'bores' }],
      'grade',
      'readMm',
      'heightMm',
      'minMm',
      'maxMm',
      ['standardId', { placeIn: 'standards' }],
      'temperatureC',
      'micrometerTemperatureC',
      ['thermometerId', { placeIn: 'thermometers' }],
      'name',
      'oversizeMm',
      'crownHeightMm',
      'topRingHeightMm',
      'pinHeightMm',
      'readingDoubtUm',
      'expansionPerK',
      'expansionDoubtPerK',
      ['profile', { parts: 'piston-size' }],
    ],
    ['id'],
  ),
  'piston-size': part<PistonSize>()(['heightMm', 'readMm']),
}

/** Parts that are known by an id, which a code does not carry: they get a fresh one when it is read. */
export const partsWithId: ReadonlySet<PartName> = new Set<PartName>([
  'gauge',
  'standard',
  'thermometer',
  'set-up',
  'bore',
  'port',
  'belt',
  'survey',
  'surface-finding',
  'scan',
  'piston',
])
