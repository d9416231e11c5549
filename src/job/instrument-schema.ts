import * as z from 'zod/mini'
import { entries, gaugeKinds, standardKinds } from '../core/measured'
import { mostOf } from './most-of'
import { day, id, line, markedIn, name, num, optional, refuse } from './schema-parts'

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

export const gaugeSchema = z
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

export const standardSchema = z
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

export const thermometerSchema = z.strictObject({
  id,
  name: optional(line),
  doubtK: optional(num('doubtK'), 'Standard uncertainty, K'),
})

export const setUpSchema = z
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
