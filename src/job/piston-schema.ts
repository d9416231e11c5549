import * as z from 'zod/mini'
import { pistonStates } from '../core/measured'
import { mostOf } from './most-of'
import { id, inOrder, line, name, num, optional } from './schema-parts'

const pistonSizeSchema = z.strictObject({ heightMm: num('heightMm'), readMm: num('readMm') })

export const pistonSchema = z
  .strictObject({
    id,
    name: optional(line),
    state: z
      .enum(pistonStates)
      .check(z.describe('It ran in a bore of this engine, it lies here, or it can be had')),
    boreId: optional(id, 'The bore that it ran in'),
    grade: optional(name),
    oversizeMm: optional(num('oversizeMm'), 'Oversize that it belongs to, mm; 0 for the standard size'),
    readMm: optional(num('readMm'), 'Across the skirt as the micrometer showed it, mm'),
    minMm: optional(num('minMm'), 'Where nobody measured it: the smallest that it may be at 20 °C, mm'),
    maxMm: optional(num('maxMm'), 'Where nobody measured it: the largest that it may be at 20 °C, mm'),
    heightMm: optional(num('heightMm'), 'Height above the lower edge of the skirt where it was measured, mm'),
    standardId: optional(id, 'The micrometer that it was measured with'),
    readingDoubtUm: optional(num('readingDoubtUm'), 'Standard uncertainty of reading it, µm'),
    temperatureC: optional(num('temperatureC')),
    micrometerTemperatureC: optional(num('micrometerTemperatureC')),
    thermometerId: optional(id),
    expansionPerK: optional(num('expansionPerK')),
    expansionDoubtPerK: optional(num('expansionDoubtPerK')),
    crownHeightMm: optional(
      num('crownHeightMm'),
      'From the lower edge of the skirt to the edge of the crown, mm',
    ),
    pinHeightMm: optional(
      num('pinHeightMm'),
      'From the lower edge of the skirt to the middle of the pin, mm',
    ),
    topRingHeightMm: optional(num('topRingHeightMm'), 'From the lower edge of the skirt to the top ring, mm'),
    profile: optional(
      z.array(pistonSizeSchema).check(z.maxLength(mostOf.pistonSizes)),
      'Sizes at other heights, for the drawing alone',
    ),
  })
  .check(
    inOrder('minMm', 'maxMm'),
    z.describe('A piston, measured across its skirt or known by the sizes that its grade may have'),
  )
