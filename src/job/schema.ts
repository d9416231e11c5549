import * as z from 'zod/mini'
import type { Marking, Measured } from '../core/measured'
import { boreSchema, hash } from './bore-schema'
import { crossProblems } from './cross-checks'
import { fieldRanges } from './field-ranges'
import { gaugeSchema, setUpSchema, standardSchema, thermometerSchema } from './instrument-schema'
import { mostOf } from './most-of'
import { type EmbeddedPhotograph, photographTypes } from './photograph-record'
import { pistonSchema } from './piston-schema'
import type { EmbeddedScan } from './scan-record'
import { id, line, markedIn, note, num, optional, refuse } from './schema-parts'
import { specSchema } from './spec-schema'

export const jobFormat = 'borewall-job'
export const jobFormatVersion = 2

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
  /** For whom the job is done. */
  readonly customer?: string
  /** What the owner and the report are shown sizes in; mm where absent. */
  readonly shownIn?: Marking
  /** Only in files that take scans along: see `embedded-scans.ts`. */
  readonly scans?: readonly EmbeddedScan[]
}

const photographSchema = z.strictObject({
  hash,
  type: z.enum(photographTypes),
  base64: z.string().check(z.maxLength(mostOf.base64Length), z.regex(/^[A-Za-z0-9+/]+={0,2}$/)),
})

const embeddedScanSchema = z.strictObject({
  hash,
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
    customer: optional(line, 'For whom the job is done'),
    shownIn: optional(markedIn),
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
    pistons: optional(z.array(pistonSchema).check(z.maxLength(mostOf.pistons))),
    hoursPerWeek: optional(num('hoursPerWeek'), 'How much the machine runs, to turn hours into a date'),
    scans: optional(
      z.array(embeddedScanSchema).check(z.maxLength(mostOf.scans)),
      'The scans that bores name, in a file that takes them along',
    ),
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
