import * as z from 'zod/mini'
import { ovalityRules, taperRules } from '../core/measured'
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
  })
  .check(
    inOrder('newMinMm', 'newMaxMm'),
    z.describe('The limits of the service manual for this engine, and the rule each is judged by'),
  )
