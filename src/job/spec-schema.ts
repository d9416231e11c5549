import * as z from 'zod/mini'
import { clearanceRules, ovalityRules, taperRules } from '../core/measured'
import { mostOf } from './most-of'
import { inOrder, name, num, optional } from './schema-parts'

const gradeSchema = z
  .strictObject({ name, minMm: num('minMm'), maxMm: num('maxMm') })
  .check(
    inOrder('minMm', 'maxMm'),
    z.describe('A size grade: the smallest and the largest new diameter that carry its mark'),
  )

export const specSchema = z
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
    crownAtTopMm: optional(
      num('crownAtTopMm'),
      'How far the edge of the crown stands below the deck at the top of the stroke, mm; negative above it',
    ),
    clearanceMinMm: optional(num('clearanceMinMm'), 'Smallest piston clearance when new, mm on the diameter'),
    clearanceMaxMm: optional(num('clearanceMaxMm'), 'Largest piston clearance when new, mm'),
    clearanceLimitMm: optional(num('clearanceLimitMm'), 'Largest clearance allowed in service, mm'),
    clearanceRule: optional(
      z.enum(clearanceRules),
      'Which diameters of the running surface a clearance is taken from',
    ),
    clearanceAtC: optional(
      num('clearanceAtC'),
      'Temperature of bore and piston that the clearances hold at, °C; 20 where left out',
    ),
    pistonHeightMm: optional(
      num('pistonHeightMm'),
      'Height above the lower edge of the skirt at which the piston is measured, mm',
    ),
    ringGapMinMm: optional(num('ringGapMinMm'), 'Smallest end gap of a new ring, mm'),
    ringGapMaxMm: optional(num('ringGapMaxMm'), 'Largest end gap of a new ring, mm'),
    ringGapLimitMm: optional(num('ringGapLimitMm'), 'Largest end gap allowed in service, mm'),
    cleanUpMm: optional(
      num('cleanUpMm'),
      'What boring takes off at least until a worn wall is clean, mm on the diameter',
    ),
    oversizesAlike: optional(z.boolean(), 'Whether all cylinders go to one oversize; yes where left out'),
    serviceIntervalHours: optional(
      num('serviceIntervalHours'),
      'Hours after which the manual wants the bore looked at again',
    ),
  })
  .check(
    inOrder('newMinMm', 'newMaxMm'),
    inOrder('clearanceMinMm', 'clearanceMaxMm'),
    inOrder('ringGapMinMm', 'ringGapMaxMm'),
    z.describe('The limits of the service manual for this engine, and the rule each is judged by'),
  )
