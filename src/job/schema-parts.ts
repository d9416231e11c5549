import * as z from 'zod/mini'
import { markings } from '../core/measured'
import type { Flaw } from '../core/problem'
import { type FieldRange, fieldRanges, type RangedField } from './field-ranges'
import { mostOf } from './most-of'

// The page forbids compiling code from text, which zod would otherwise try.
z.config({ jitless: true })

export function num(field: RangedField) {
  const { least, most, mostExcluded }: FieldRange = fieldRanges[field]
  return z.number().check(z.gte(least), mostExcluded ? z.lt(most) : z.lte(most))
}

export const id = z.string().check(z.maxLength(mostOf.idLength), z.regex(/\S/), z.regex(/^\P{Cc}*$/u))
export const name = z.string().check(z.maxLength(mostOf.nameLength), z.regex(/\S/), z.regex(/^\P{Cc}*$/u))
export const line = z.string().check(z.maxLength(mostOf.nameLength), z.regex(/^\P{Cc}*$/u))
export const note = z.string().check(z.maxLength(mostOf.noteLength), z.regex(/^[\P{Cc}\t\n\r]*$/u))

/** A field that may be left out, but not be null; the description goes into the JSON Schema. */
export function optional<Schema extends z.ZodMiniType>(schema: Schema, description?: string) {
  const field = z.exactOptional(schema)
  return description === undefined ? field : field.check(z.describe(description))
}

interface Checked<T> {
  readonly value: T
  readonly issues: z.core.$ZodRawIssue[]
}

/** Adds a problem of our own; the path is below the object that is being checked. */
export function refuse(checked: Checked<unknown>, path: PropertyKey[], flaw: Flaw): void {
  checked.issues.push({ code: 'custom', path, params: { flaw }, input: checked.value, continue: true })
}

export function inOrder<Low extends string, High extends string>(low: Low, high: High) {
  return (checked: Checked<{ readonly [Field in Low | High]?: number }>) => {
    const from = checked.value[low]
    const to = checked.value[high]
    if (from === undefined || to === undefined || from <= to) return
    refuse(checked, [low], { code: 'low-above-high', lowField: low, low: from, highField: high, high: to })
  }
}

export const day = z.iso.date().check(z.describe('Year, month and day, as in 2024-05-31'))
export const markedIn = z.enum(markings).check(z.describe('The unit that it is marked in; mm where left out'))
