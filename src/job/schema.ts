import { z } from 'zod'
import {
  clampings,
  entries,
  gaugeKinds,
  type Measured,
  markings,
  ovalityRules,
  roles,
  standardKinds,
  taperRules,
  wallKinds,
} from '../core/measured'
import type { Flaw } from '../core/problem'
import { crossProblems } from './cross-checks'
import { type FieldRange, fieldRanges, type RangedField } from './field-ranges'

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
} as const

function num(field: RangedField) {
  const { least, most, mostExcluded }: FieldRange = fieldRanges[field]
  return mostExcluded ? z.number().min(least).lt(most) : z.number().min(least).max(most)
}

const id = z
  .string()
  .max(mostOf.idLength)
  .regex(/\S/)
  .regex(/^\P{Cc}*$/u)
const name = z
  .string()
  .max(mostOf.nameLength)
  .regex(/\S/)
  .regex(/^\P{Cc}*$/u)
const line = z
  .string()
  .max(mostOf.nameLength)
  .regex(/^\P{Cc}*$/u)
const note = z
  .string()
  .max(mostOf.noteLength)
  .regex(/^[\P{Cc}\t\n\r]*$/u)

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
  .check(inOrder('minMm', 'maxMm'))
  .describe('A size grade: the smallest and the largest new diameter that carry its mark')

const specSchema = z
  .strictObject({
    newMinMm: num('newMinMm').exactOptional().describe('Smallest diameter when new, mm'),
    newMaxMm: num('newMaxMm').exactOptional().describe('Largest diameter when new, mm'),
    grades: z.array(gradeSchema).max(mostOf.grades).exactOptional(),
    wearLimitMm: num('wearLimitMm')
      .exactOptional()
      .describe('Largest diameter allowed in service, mm; where given, it alone is judged'),
    ovalityLimitMm: num('ovalityLimitMm')
      .exactOptional()
      .describe('Largest allowed difference of diameters at a level, mm'),
    ovalityRule: z.enum(ovalityRules).exactOptional(),
    ovalityAxesDegrees: z
      .strictObject({ x: num('x'), y: num('y') })
      .exactOptional()
      .describe('The axes that the manual calls X and Y, for the rules that name them'),
    taperLimitMm: num('taperLimitMm')
      .exactOptional()
      .describe('Largest allowed difference of diameters along the bore, mm'),
    taperRule: z.enum(taperRules).exactOptional(),
  })
  .check(inOrder('newMinMm', 'newMaxMm'))
  .describe('The limits of the service manual for this engine, and the rule each is judged by')

const day = z.iso.date().describe('Year, month and day, as in 2024-05-31')
const markedIn = z.enum(markings).describe('The unit that it is marked in; mm where left out')

const gaugeSchema = z
  .strictObject({
    id,
    name: line.exactOptional(),
    kind: z.enum(gaugeKinds),
    markedIn: markedIn.exactOptional(),
    turnValueUm: num('turnValueUm').exactOptional().describe('One whole turn of the needle, µm'),
    calibratedOn: day.exactOptional(),
    stepUm: num('stepUm').exactOptional().describe('Step actually read, µm'),
    repeatabilityUm: num('repeatabilityUm').exactOptional().describe('Standard deviation of repeats, µm'),
    repeatabilityDegreesOfFreedom: num('repeatabilityDegreesOfFreedom').exactOptional(),
    settingUm: num('settingUm')
      .exactOptional()
      .describe('Standard uncertainty of the setting, without that of the standard, µm'),
    scaleUm: num('scaleUm').exactOptional().describe('Standard uncertainty of dial or scale, µm'),
    driftHalfWidthUm: num('driftHalfWidthUm')
      .exactOptional()
      .describe('Half-width of the drift to expect without a closing zero, µm'),
    contactHalfWidthMm: num('contactHalfWidthMm').exactOptional(),
    depthDoubtMm: num('depthDoubtMm').exactOptional().describe('Standard uncertainty of the depth, mm'),
    rockingUm: num('rockingUm')
      .exactOptional()
      .describe('Standard uncertainty from a tilt that rocking did not take out, µm; none where left out'),
  })
  .describe('A gauge; what is left out is taken from the typical figures of its kind')

const standardSchema = z
  .strictObject({
    id,
    name: line.exactOptional(),
    kind: z.enum(standardKinds),
    markedIn: markedIn.exactOptional(),
    errorUm: num('errorUm')
      .exactOptional()
      .describe('What a micrometer reads on its own standard less the certified size of that, µm'),
    doubtUm: num('doubtUm').exactOptional().describe('Its own standard uncertainty, µm'),
    expansionPerK: num('expansionPerK').exactOptional().describe('Like 0.0000115 for steel, 1/K'),
    expansionDoubtPerK: num('expansionDoubtPerK').exactOptional(),
  })
  .describe('What a gauge was set with')

const thermometerSchema = z.strictObject({
  id,
  name: line.exactOptional(),
  doubtK: num('doubtK').exactOptional().describe('Standard uncertainty, K'),
})

const setUpSchema = z
  .strictObject({
    id,
    name: line.exactOptional(),
    gaugeId: id,
    standardId: id,
    entry: z
      .enum(entries)
      .describe(
        'size: sizes in mm from a set gauge. deviation: its dial in µm. reverse: dial in µm of a gauge zeroed in the bore. direct: sizes in mm off an internal instrument',
      ),
    settingSizeMm: num('settingSizeMm').describe(
      'Size that the gauge was set to, as the standard shows it, mm; without a setting, roughly the size of the bore',
    ),
    overContactsMm: num('overContactsMm')
      .exactOptional()
      .describe('Reverse method: the gauge over its contacts, as the micrometer shows it, mm'),
    dialOverContactsUm: num('dialOverContactsUm')
      .exactOptional()
      .describe('Reverse method: the dial while the micrometer held the gauge, clockwise positive, µm'),
    largerIs: z
      .enum(['clockwise', 'anticlockwise'])
      .exactOptional()
      .describe('Which way the needle goes for a larger bore, from the direction test'),
    zeroOpenUm: num('zeroOpenUm')
      .exactOptional()
      .describe('Dial on the standard before, clockwise positive, µm'),
    zeroCloseUm: num('zeroCloseUm').exactOptional().describe('Dial on the standard afterwards, µm'),
    boreTemperatureC: num('boreTemperatureC').exactOptional(),
    referenceTemperatureC: num('referenceTemperatureC').exactOptional(),
    referenceTemperatureCloseC: num('referenceTemperatureCloseC')
      .exactOptional()
      .describe('Temperature of the standard at the closing zero'),
    boreThermometerId: id.exactOptional(),
    referenceThermometerId: id.exactOptional(),
    soakedTogether: z
      .boolean()
      .exactOptional()
      .describe('Part and standard lay side by side long enough to be at one temperature'),
    gaugeWarmedK: num('gaugeWarmedK')
      .exactOptional()
      .describe('How much the gauge may have warmed since its setting, K'),
  })
  .describe('One setting of a gauge and its conditions. What is left out was not recorded')

const wallSchema = z.strictObject({
  kind: z.enum(wallKinds),
  platingUm: num('platingUm').exactOptional().describe('Thickness of the plating on one wall, µm'),
  expansionPerK: num('expansionPerK').exactOptional(),
  expansionDoubtPerK: num('expansionDoubtPerK').exactOptional(),
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
  .check(inOrder('fromDepthMm', 'toDepthMm'))
  .check((checked) => {
    const { fromDegrees, toDegrees } = checked.value
    if ((toDegrees - fromDegrees) % 360 === 0) refuse(checked, ['toDegrees'], { code: 'port-all-round' })
  })
  .describe('An opening in the wall. Angles run clockwise, seen from the deck, and may cross 0°')

const beltSchema = z
  .strictObject({ id, name, fromDepthMm: num('fromDepthMm'), toDepthMm: num('toDepthMm') })
  .check(inOrder('fromDepthMm', 'toDepthMm'))
  .describe('A band all round that nobody could measure')

const readingSchema = z
  .strictObject({
    depthMm: num('depthMm'),
    axisDegrees: num('axisDegrees'),
    sizesMm: z.array(num('sizesMm')).min(1).max(mostOf.repeats).exactOptional(),
    dialUm: z.array(num('dialUm')).min(1).max(mostOf.repeats).exactOptional(),
    confirmed: z
      .boolean()
      .exactOptional()
      .describe('Both contacts did stand on metal, though the ports say otherwise'),
  })
  .describe('Repeats at one level on one axis: sizesMm or dialUm, as the entry of the set-up says')

const surveySchema = z
  .strictObject({
    id,
    name: line.exactOptional(),
    date: day.exactOptional(),
    hoursRun: num('hoursRun').exactOptional(),
    measuredBy: line.exactOptional(),
    clamping: z.enum(clampings).exactOptional().describe('What was bolted to the bore while it was measured'),
    plateTorqueNm: num('plateTorqueNm')
      .exactOptional()
      .describe('To what the bolts of a torque plate were tightened, N·m'),
    restedHours: num('restedHours')
      .exactOptional()
      .describe('Hours since the part was last warm from running, washing or honing'),
    caliperMm: num('caliperMm').exactOptional().describe('The bore by caliper, mm'),
    contactChanged: z
      .boolean()
      .exactOptional()
      .describe('A contact of the gauge was changed after its setting'),
    setUpId: id,
    levelsMm: z.array(num('levelsMm')).max(mostOf.levels).describe('Depths below the deck, mm'),
    axesDegrees: z
      .array(num('axesDegrees'))
      .max(mostOf.axes)
      .describe('Directions across the bore, degrees clockwise seen from the deck, from 0 to below 180'),
    readings: z.array(readingSchema).max(mostOf.readings),
  })
  .describe('One occasion on which a bore was measured')

const boreSchema = z.strictObject({
  id,
  name,
  role: z.enum(roles),
  grade: name.exactOptional().describe('Name of the size grade stamped on it'),
  lengthMm: num('lengthMm').exactOptional(),
  ringTravelMm: z
    .strictObject({ from: num('from'), to: num('to') })
    .check(inOrder('from', 'to'))
    .exactOptional()
    .describe('Depths between which the rings run, mm; the wall outside is land'),
  wall: wallSchema.exactOptional(),
  ports: z.array(portSchema).max(mostOf.ports),
  belts: z.array(beltSchema).max(mostOf.belts),
  surveys: z.array(surveySchema).min(1).max(mostOf.surveys),
})

/** The job file. Lengths in mm or µm, temperatures in °C, angles in degrees, as the field names say. */
export const jobSchema = z
  .strictObject({
    format: z.literal(jobFormat),
    formatVersion: z.literal(jobFormatVersion),
    id,
    name: line,
    machine: line.exactOptional(),
    note: note.exactOptional(),
    invented: z.boolean().exactOptional().describe('The readings are made up, for a demonstration'),
    spec: specSchema,
    gauges: z.array(gaugeSchema).max(mostOf.instruments),
    standards: z.array(standardSchema).max(mostOf.instruments),
    thermometers: z.array(thermometerSchema).max(mostOf.instruments),
    setUps: z.array(setUpSchema).min(1).max(mostOf.setUps),
    bores: z.array(boreSchema).min(1).max(mostOf.bores),
  })
  .check((checked) => {
    for (const { path, flaw } of crossProblems(checked.value)) refuse(checked, path, flaw)
  })
  .describe('A Borewall job: everything that was measured on one engine or machine, and its limits')

type DeepReadonly<T> = T extends object ? { readonly [Key in keyof T]: DeepReadonly<T[Key]> } : T
type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false

/** Does not compile when the schema and the shapes of core have drifted apart in either direction. */
export const schemaMatchesCore: Same<DeepReadonly<z.infer<typeof jobSchema>>, DeepReadonly<Job>> = true
