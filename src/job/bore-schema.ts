import * as z from 'zod/mini'
import { clampings, roles, scanCleanings, surfaceKinds, surfaceShapes, wallKinds } from '../core/measured'
import { fieldRanges } from './field-ranges'
import { mostOf } from './most-of'
import { day, id, inOrder, line, name, note, num, optional, refuse } from './schema-parts'

const wallSchema = z.strictObject({
  kind: z.enum(wallKinds),
  platingUm: optional(num('platingUm'), 'Thickness of the plating on one wall, µm'),
  liner: optional(z.boolean(), 'It is a liner that can be taken out'),
  mayBeBored: optional(z.boolean(), 'What the manual says of boring, where it differs from the usual'),
  mayBeHoned: optional(z.boolean(), 'What the manual says of honing, where it differs from the usual'),
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

export const hash = z
  .string()
  .check(z.regex(/^[0-9a-f]{64}$/), z.describe('SHA-256 of its bytes, in hexadecimal'))
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
    scanId: optional(id, 'The scan in which it was found'),
  })
  .check(
    inOrder('fromDepthMm', 'toDepthMm'),
    z.describe(
      'What was seen or felt on the wall. Angles run clockwise, seen from the deck, and may cross 0°; a whole turn apart they go all round',
    ),
  )
const ringGapSchema = z.strictObject({ depthMm: num('depthMm'), gapMm: num('gapMm') })
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
    ringGaps: optional(
      z.array(ringGapSchema).check(z.maxLength(mostOf.levels)),
      'End gaps of a ring pushed into the bore, at some depths',
    ),
    feelerDoubtUm: optional(num('feelerDoubtUm'), 'Standard uncertainty of a gap by feeler, µm'),
    unreachable: optional(
      z.array(unreachableSchema).check(z.maxLength(mostOf.readings)),
      'Stations that the gauge could not reach: wall that nobody measured',
    ),
  })
  .check(z.describe('One occasion on which a bore was measured'))

const whole = (field: 'levels' | 'angles' | 'values') =>
  z.int().check(z.gte(fieldRanges[field].least), z.lte(fieldRanges[field].most))

const scanSchema = z
  .strictObject({
    id,
    name: optional(line),
    date: optional(day),
    hoursRun: optional(num('hoursRun')),
    clamping: optional(z.enum(clampings)),
    cleaning: optional(z.enum(scanCleanings), 'Taken before or after stuck metal was cleaned off'),
    gaugeId: optional(id),
    hash,
    levels: whole('levels'),
    angles: whole('angles'),
    values: whole('values').check(z.describe('Places with a value; the others are ports')),
    tieSurveyId: optional(id, 'The survey whose stations give it a size'),
    cutOffUndulations: optional(
      num('cutOffUndulations'),
      'Undulations per revolution that the filter passes half of',
    ),
  })
  .check(z.describe('A dense scan of radii; its values are kept apart, under the hash of their content'))

export const boreSchema = z.strictObject({
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
  scans: optional(z.array(scanSchema).check(z.maxLength(mostOf.scans))),
})
