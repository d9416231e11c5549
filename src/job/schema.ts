import * as z from 'zod/mini'
import {
  clampings,
  entries,
  gaugeKinds,
  type Measured,
  markings,
  ovalityRules,
  roles,
  standardKinds,
  surfaceKinds,
  surfaceShapes,
  taperRules,
  wallKinds,
} from '../core/measured'
import type { Flaw } from '../core/problem'
import { crossProblems } from './cross-checks'
import { type FieldRange, fieldRanges, type RangedField } from './field-ranges'
import { type EmbeddedPhotograph, photographTypes } from './photograph-record'

// The page forbids compiling code from text, which zod would otherwise try.
z.config({ jitless: true })

export const jobFormat = 'borewall-job'
export const jobFormatVersion = 1

/** The saved document: what was measured, with a name and a version. */
export interface Job extends Measured {
  readonly format: typeof jobFormat
  readonly formatVersion: typeof jobFormatVersion
  readonly id: string
  readonly name: string
  readonly machine?: string
  readonly note?: string
  /** The readings are made up, for a demonstration. */
  readonly invented?: boolean
  /** Only in files that take photographs along: see `embedded-photographs.ts`. */
  readonly photographs?: readonly EmbeddedPhotograph[]
  /** How many readings are to be taken at each station; absent: as many as were taken at any. */
  readonly repeatsPerStation?: number
  /** The doubt (95 %, µm) that the plan is to reach. */
  readonly wantedDoubtUm?: number
}

/** How many entries a list may have and how long a text may be: bounds on what a file can make us do. */
export const mostOf = {
  idLength: 64,
  nameLength: 120,
  noteLength: 10000,
  instruments: 50,
  setUps: 200,
  grades: 30,
  bores: 64,
  ports: 60,
  belts: 60,
  surveys: 200,
  levels: 400,
  axes: 180,
  readings: 20000,
  repeats: 50,
  oversizes: 20,
  checks: 50,
  checkReadings: 200,
  studyReadings: 1000,
  surfaceFindings: 200,
  photos: 20,
  photographs: 400,
  base64Length: 8_000_000,
} as const

function num(field: RangedField) {
  const { least, most, mostExcluded }: FieldRange = fieldRanges[field]
  return z.number().check(z.gte(least), mostExcluded ? z.lt(most) : z.lte(most))
}

const id = z.string().check(z.maxLength(mostOf.idLength), z.regex(/\S/), z.regex(/^\P{Cc}*$/u))
const name = z.string().check(z.maxLength(mostOf.nameLength), z.regex(/\S/), z.regex(/^\P{Cc}*$/u))
const line = z.string().check(z.maxLength(mostOf.nameLength), z.regex(/^\P{Cc}*$/u))
const note = z.string().check(z.maxLength(mostOf.noteLength), z.regex(/^[\P{Cc}\t\n\r]*$/u))

/** A field that may be left out, but not be null; the description goes into the JSON Schema. */
function optional<Schema extends z.ZodMiniType>(schema: Schema, description?: string) {
  const field = z.exactOptional(schema)
  return description === undefined ? field : field.check(z.describe(description))
}

interface Checked<T> {
  readonly value: T
  readonly issues: z.core.$ZodRawIssue[]
}

/** Adds a problem of our own; the path is below the object that is being checked. */
function refuse(checked: Checked<unknown>, path: PropertyKey[], flaw: Flaw): void {
  checked.issues.push({ code: 'custom', path, params: { flaw }, input: checked.value, continue: true })
}

function inOrder<Low extends string, High extends string>(low: Low, high: High) {
  return (checked: Checked<{ readonly [Field in Low | High]?: number }>) => {
    const from = checked.value[low]
    const to = checked.value[high]
    if (from === undefined || to === undefined || from <= to) return
    refuse(checked, [low], { code: 'low-above-high', lowField: low, low: from, highField: high, high: to })
  }
}

const gradeSchema = z
  .strictObject({ name, minMm: num('minMm'), maxMm: num('maxMm') })
  .check(
    inOrder('minMm', 'maxMm'),
    z.describe('A size grade: the smallest and the largest new diameter that carry its mark'),
  )

const specSchema = z
  .strictObject({
    newMinMm: optional(num('newMinMm'), 'Smallest diameter when new, mm'),
    newMaxMm: optional(num('newMaxMm'), 'Largest diameter when new, mm'),
    grades: optional(z.array(gradeSchema).check(z.maxLength(mostOf.grades))),
    wearLimitMm: optional(
      num('wearLimitMm'),
      'Largest diameter allowed in service, mm; where given, it alone is judged',
    ),
    oversizesMm: optional(
      z.array(num('oversizesMm')).check(z.minLength(1), z.maxLength(mostOf.oversizes)),
      'Oversizes that the manual allows, mm on the diameter over these sizes',
    ),
    ovalityLimitMm: optional(num('ovalityLimitMm'), 'Largest allowed difference of diameters at a level, mm'),
    ovalityLimitPerMm: optional(
      num('ovalityLimitPerMm'),
      'The same per mm of bore, as 0.001 for a thousandth of the diameter; of several limits the smallest is judged',
    ),
    ovalityRule: optional(z.enum(ovalityRules)),
    ovalityAxesDegrees: optional(
      z.strictObject({ x: num('x'), y: num('y') }),
      'The axes that the manual calls X and Y, for the rules that name them',
    ),
    taperLimitMm: optional(num('taperLimitMm'), 'Largest allowed difference of diameters along the bore, mm'),
    taperLimitPerMmOfBore: optional(num('taperLimitPerMmOfBore'), 'The same per mm of bore'),
    taperLimitPerMmOfTravel: optional(num('taperLimitPerMmOfTravel'), 'The same per mm of travelMm'),
    taperRule: optional(z.enum(taperRules)),
    travelMm: optional(num('travelMm'), 'Travel of the piston, mm'),
  })
  .check(
    inOrder('newMinMm', 'newMaxMm'),
    z.describe('The limits of the service manual for this engine, and the rule each is judged by'),
  )

const day = z.iso.date().check(z.describe('Year, month and day, as in 2024-05-31'))
const markedIn = z.enum(markings).check(z.describe('The unit that it is marked in; mm where left out'))

const checkSchema = z
  .strictObject({
    date: optional(day),
    sizesMm: optional(z.array(num('sizesMm')).check(z.minLength(1), z.maxLength(mostOf.checkReadings))),
    dialUm: optional(z.array(num('dialUm')).check(z.minLength(1), z.maxLength(mostOf.checkReadings))),
  })
  .check((checked) => {
    const { sizesMm, dialUm } = checked.value
    if (sizesMm && dialUm) refuse(checked, [], { code: 'check-values', found: 'both' })
    if (!sizesMm && !dialUm) refuse(checked, [], { code: 'check-values', found: 'none' })
  }, z.describe('One place read again and again, in order: sizesMm or dialUm'))

const crossedReadingSchema = z.strictObject({
  person: name,
  part: name,
  sizesMm: optional(z.array(num('sizesMm')).check(z.minLength(1), z.maxLength(mostOf.repeats))),
  dialUm: optional(z.array(num('dialUm')).check(z.minLength(1), z.maxLength(mostOf.repeats))),
})

const crossedStudySchema = z
  .strictObject({
    date: optional(day),
    readings: z.array(crossedReadingSchema).check(z.minLength(1), z.maxLength(mostOf.studyReadings)),
  })
  .check((checked) => {
    const { readings } = checked.value
    const isNone = readings.some(({ sizesMm, dialUm }) => !sizesMm && !dialUm)
    const isBoth = readings.some(({ sizesMm }) => sizesMm) && readings.some(({ dialUm }) => dialUm)
    if (isNone) refuse(checked, [], { code: 'study-values', found: 'none' })
    if (isBoth) refuse(checked, [], { code: 'study-values', found: 'both' })
  }, z.describe('Several people read several parts, each as often: sizesMm throughout, or dialUm'))

const gaugeSchema = z
  .strictObject({
    id,
    name: optional(line),
    kind: z.enum(gaugeKinds),
    markedIn: optional(markedIn),
    turnValueUm: optional(num('turnValueUm'), 'One whole turn of the needle, µm'),
    calibratedOn: optional(day),
    stepUm: optional(num('stepUm'), 'Step actually read, µm'),
    repeatabilityUm: optional(num('repeatabilityUm'), 'Standard deviation of repeats, µm'),
    repeatabilityDegreesOfFreedom: optional(num('repeatabilityDegreesOfFreedom')),
    settingUm: optional(
      num('settingUm'),
      'Standard uncertainty of the setting, without that of the standard, µm',
    ),
    scaleUm: optional(num('scaleUm'), 'Standard uncertainty of dial or scale, µm'),
    driftHalfWidthUm: optional(
      num('driftHalfWidthUm'),
      'Half-width of the drift to expect without a closing zero, µm',
    ),
    contactHalfWidthMm: optional(num('contactHalfWidthMm')),
    feetOffsetMm: optional(
      num('feetOffsetMm'),
      'From a contact to each foot of the centraliser beside it, mm along the wall; no feet where left out',
    ),
    depthDoubtMm: optional(num('depthDoubtMm'), 'Standard uncertainty of the depth, mm'),
    rockingUm: optional(
      num('rockingUm'),
      'Standard uncertainty from a tilt that rocking did not take out, µm; none where left out',
    ),
    checks: optional(
      z.array(checkSchema).check(z.maxLength(mostOf.checks)),
      'Times when one place was read again and again to see how the gauge repeats',
    ),
    crossedStudies: optional(
      z.array(crossedStudySchema).check(z.maxLength(mostOf.checks)),
      'Times when several people read several parts to see what gauge and people bring',
    ),
  })
  .check(z.describe('A gauge; what is left out is taken from the typical figures of its kind'))

const standardSchema = z
  .strictObject({
    id,
    name: optional(line),
    kind: z.enum(standardKinds),
    markedIn: optional(markedIn),
    errorUm: optional(
      num('errorUm'),
      'What a micrometer reads on its own standard less the certified size of that, µm',
    ),
    doubtUm: optional(num('doubtUm'), 'Its own standard uncertainty, µm'),
    expansionPerK: optional(num('expansionPerK'), 'Like 0.0000115 for steel, 1/K'),
    expansionDoubtPerK: optional(num('expansionDoubtPerK')),
  })
  .check(z.describe('What a gauge was set with'))

const thermometerSchema = z.strictObject({
  id,
  name: optional(line),
  doubtK: optional(num('doubtK'), 'Standard uncertainty, K'),
})

const setUpSchema = z
  .strictObject({
    id,
    name: optional(line),
    gaugeId: id,
    standardId: id,
    entry: z
      .enum(entries)
      .check(
        z.describe(
          'size: sizes in mm from a set gauge. deviation: its dial in µm. reverse: dial in µm of a gauge zeroed in the bore. direct: sizes in mm off an internal instrument',
        ),
      ),
    settingSizeMm: num('settingSizeMm').check(
      z.describe(
        'Size that the gauge was set to, as the standard shows it, mm; without a setting, roughly the size of the bore',
      ),
    ),
    settingAssumed: optional(
      z.boolean(),
      'Nobody wrote the setting size down: it only stands in until somebody does',
    ),
    overContactsMm: optional(
      num('overContactsMm'),
      'Reverse method: the gauge over its contacts, as the micrometer shows it, mm',
    ),
    dialOverContactsUm: optional(
      num('dialOverContactsUm'),
      'Reverse method: the dial while the micrometer held the gauge, clockwise positive, µm',
    ),
    largerIs: optional(
      z.enum(['clockwise', 'anticlockwise']),
      'Which way the needle goes for a larger bore, from the direction test',
    ),
    zeroOpenUm: optional(num('zeroOpenUm'), 'Dial on the standard before, clockwise positive, µm'),
    zeroCloseUm: optional(num('zeroCloseUm'), 'Dial on the standard afterwards, µm'),
    boreTemperatureC: optional(num('boreTemperatureC')),
    referenceTemperatureC: optional(num('referenceTemperatureC')),
    referenceTemperatureCloseC: optional(
      num('referenceTemperatureCloseC'),
      'Temperature of the standard at the closing zero',
    ),
    boreThermometerId: optional(id),
    referenceThermometerId: optional(id),
    soakedTogether: optional(
      z.boolean(),
      'Part and standard lay side by side long enough to be at one temperature',
    ),
    gaugeWarmedK: optional(num('gaugeWarmedK'), 'How much the gauge may have warmed since its setting, K'),
  })
  .check(z.describe('One setting of a gauge and its conditions. What is left out was not recorded'))

const wallSchema = z.strictObject({
  kind: z.enum(wallKinds),
  platingUm: optional(num('platingUm'), 'Thickness of the plating on one wall, µm'),
  expansionPerK: optional(num('expansionPerK')),
  expansionDoubtPerK: optional(num('expansionDoubtPerK')),
})

const portSchema = z
  .strictObject({
    id,
    name,
    fromDepthMm: num('fromDepthMm'),
    toDepthMm: num('toDepthMm'),
    fromDegrees: num('fromDegrees'),
    toDegrees: num('toDegrees'),
  })
  .check(
    inOrder('fromDepthMm', 'toDepthMm'),
    (checked) => {
      const { fromDegrees, toDegrees } = checked.value
      if ((toDegrees - fromDegrees) % 360 === 0) refuse(checked, ['toDegrees'], { code: 'port-all-round' })
    },
    z.describe('An opening in the wall. Angles run clockwise, seen from the deck, and may cross 0°'),
  )

const beltSchema = z
  .strictObject({ id, name, fromDepthMm: num('fromDepthMm'), toDepthMm: num('toDepthMm') })
  .check(inOrder('fromDepthMm', 'toDepthMm'), z.describe('A band all round that nobody could measure'))

const readingSchema = z
  .strictObject({
    depthMm: num('depthMm'),
    axisDegrees: num('axisDegrees'),
    sizesMm: optional(z.array(num('sizesMm')).check(z.minLength(1), z.maxLength(mostOf.repeats))),
    dialUm: optional(z.array(num('dialUm')).check(z.minLength(1), z.maxLength(mostOf.repeats))),
    confirmed: optional(z.boolean(), 'Both contacts did stand on metal, though the ports say otherwise'),
  })
  .check(z.describe('Repeats at one level on one axis: sizesMm or dialUm, as the entry of the set-up says'))

const hash = z.string().check(z.regex(/^[0-9a-f]{64}$/), z.describe('SHA-256 of its bytes, in hexadecimal'))
const pixels = (field: 'widthPx' | 'heightPx') =>
  z.int().check(z.gte(fieldRanges[field].least), z.lte(fieldRanges[field].most))

const photoSchema = z
  .strictObject({ hash, name, widthPx: pixels('widthPx'), heightPx: pixels('heightPx') })
  .check(z.describe('A photograph by its content; the picture itself is kept apart from the job'))

const surfaceSchema = z
  .strictObject({
    id,
    kind: z.enum(surfaceKinds),
    shape: z.enum(surfaceShapes).check(z.describe('A streak runs along the stroke and is narrow')),
    fromDepthMm: num('fromDepthMm'),
    toDepthMm: num('toDepthMm'),
    fromDegrees: num('fromDegrees'),
    toDegrees: num('toDegrees'),
    catchesNail: optional(
      z.boolean(),
      'Whether a fingernail drawn across it catches; not tried where left out',
    ),
    acrossMm: optional(num('acrossMm'), 'Width around the bore as measured, mm; by its place where left out'),
    alongMm: optional(num('alongMm'), 'Length along the bore as measured, mm; by its place where left out'),
    note: optional(note),
    photos: optional(z.array(photoSchema).check(z.maxLength(mostOf.photos))),
  })
  .check(
    inOrder('fromDepthMm', 'toDepthMm'),
    z.describe(
      'What was seen or felt on the wall. Angles run clockwise, seen from the deck, and may cross 0°; a whole turn apart they go all round',
    ),
  )
const unreachableSchema = z.strictObject({ depthMm: num('depthMm'), axisDegrees: num('axisDegrees') })

const surveySchema = z
  .strictObject({
    id,
    name: optional(line),
    date: optional(day),
    hoursRun: optional(num('hoursRun')),
    measuredBy: optional(line),
    clamping: optional(z.enum(clampings), 'What was bolted to the bore while it was measured'),
    plateTorqueNm: optional(num('plateTorqueNm'), 'To what the bolts of a torque plate were tightened, N·m'),
    restedHours: optional(
      num('restedHours'),
      'Hours since the part was last warm from running, washing or honing',
    ),
    caliperMm: optional(num('caliperMm'), 'The bore by caliper, mm'),
    answered: optional(
      z.array(name).check(z.maxLength(mostOf.readings)),
      'Questions about readings that were answered with "it is right"',
    ),
    contactChanged: optional(z.boolean(), 'A contact of the gauge was changed after its setting'),
    setUpId: id,
    levelsMm: z
      .array(num('levelsMm'))
      .check(z.maxLength(mostOf.levels), z.describe('Depths below the deck, mm')),
    axesDegrees: z
      .array(num('axesDegrees'))
      .check(
        z.maxLength(mostOf.axes),
        z.describe('Directions across the bore, degrees clockwise seen from the deck, from 0 to below 180'),
      ),
    readings: z.array(readingSchema).check(z.maxLength(mostOf.readings)),
    surfaceFindings: optional(z.array(surfaceSchema).check(z.maxLength(mostOf.surfaceFindings))),
    unreachable: optional(
      z.array(unreachableSchema).check(z.maxLength(mostOf.readings)),
      'Stations that the gauge could not reach: wall that nobody measured',
    ),
  })
  .check(z.describe('One occasion on which a bore was measured'))

const boreSchema = z.strictObject({
  id,
  name,
  role: z.enum(roles),
  grade: optional(name, 'Name of the size grade stamped on it'),
  oversizeMm: optional(num('oversizeMm'), 'Oversize that it was finished to, mm; 0 for the standard size'),
  lengthMm: optional(num('lengthMm')),
  ringTravelMm: optional(
    z.strictObject({ from: num('from'), to: num('to') }).check(inOrder('from', 'to')),
    'Depths between which the rings run, mm; the wall outside is land',
  ),
  wall: optional(wallSchema),
  ports: z.array(portSchema).check(z.maxLength(mostOf.ports)),
  belts: z.array(beltSchema).check(z.maxLength(mostOf.belts)),
  surveys: z.array(surveySchema).check(z.minLength(1), z.maxLength(mostOf.surveys)),
})

const photographSchema = z.strictObject({
  hash,
  type: z.enum(photographTypes),
  base64: z.string().check(z.maxLength(mostOf.base64Length), z.regex(/^[A-Za-z0-9+/]+={0,2}$/)),
})

/** The job file. Lengths in mm or µm, temperatures in °C, angles in degrees, as the field names say. */
export const jobSchema = z
  .strictObject({
    format: z.literal(jobFormat),
    formatVersion: z.literal(jobFormatVersion),
    id,
    name: line,
    machine: optional(line),
    note: optional(note),
    invented: optional(z.boolean(), 'The readings are made up, for a demonstration'),
    repeatsPerStation: optional(
      z.int().check(z.gte(fieldRanges.repeatsPerStation.least), z.lte(fieldRanges.repeatsPerStation.most)),
      'How many readings are to be taken at each station; as many as were taken at any where left out',
    ),
    wantedDoubtUm: optional(num('wantedDoubtUm'), 'The doubt that the plan is to reach (95 %), µm'),
    spec: specSchema,
    gauges: z.array(gaugeSchema).check(z.maxLength(mostOf.instruments)),
    standards: z.array(standardSchema).check(z.maxLength(mostOf.instruments)),
    thermometers: z.array(thermometerSchema).check(z.maxLength(mostOf.instruments)),
    setUps: z.array(setUpSchema).check(z.minLength(1), z.maxLength(mostOf.setUps)),
    bores: z.array(boreSchema).check(z.minLength(1), z.maxLength(mostOf.bores)),
    photographs: optional(
      z.array(photographSchema).check(z.maxLength(mostOf.photographs)),
      'The photographs that surface findings name, in a file that takes them along',
    ),
  })
  .check((checked) => {
    for (const { path, flaw } of crossProblems(checked.value)) refuse(checked, path, flaw)
  }, z.describe('A Borewall job: everything that was measured on one engine or machine, and its limits'))

type DeepReadonly<T> = T extends object ? { readonly [Key in keyof T]: DeepReadonly<T[Key]> } : T
type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false

/** Does not compile when the schema and the shapes of core have drifted apart in either direction. */
export const schemaMatchesCore: Same<DeepReadonly<z.infer<typeof jobSchema>>, DeepReadonly<Job>> = true
