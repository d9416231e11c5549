import type * as z from 'zod/mini'
import type { Flaw, Problem, ValueKind } from '../core/problem'
import { rangeOf } from './field-ranges'
import { nearestField } from './nearest-field'
import { pathText } from './path-text'
import { quotable, quotedValue } from './quotable'
import { type Job, jobSchema } from './schema'

export type CheckResult =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly problems: readonly PlacedProblem[] }

/** A problem whose path is also kept in parts, to find its place in a text. */
export interface PlacedProblem {
  readonly problem: Problem
  readonly keys: readonly PropertyKey[]
}

/** More than these nobody reads through; the rest are only counted. */
const mostListed = 200

/** Parses any value as a job of the current version. */
export function checkJob(value: unknown): CheckResult {
  const result = parsed(value)
  if (result === undefined) return { ok: false, problems: [moreProblems(tooManyToGather)] }
  if (result.success) return { ok: true, job: result.data }
  const { issues } = result.error
  const listed: PlacedProblem[] = []
  for (const issue of issues) {
    if (listed.length >= mostListed) break
    listed.push(...placedProblems(issue, value))
  }
  const count = issues.reduce((sum, issue) => sum + problemsIn(issue), 0) - listed.length
  return { ok: false, problems: count > 0 ? [...listed, moreProblems(count)] : listed }
}

function moreProblems(count: number): PlacedProblem {
  return { problem: { code: 'more-problems', count, path: '' }, keys: [] }
}

/** From about so many on, an engine may fail to hand them from one list to the next in one call. */
const tooManyToGather = 65536

/** Undefined where a value has more problems than could be gathered. */
function parsed(value: unknown): ReturnType<typeof jobSchema.safeParse> | undefined {
  try {
    return jobSchema.safeParse(value)
  } catch (error) {
    // zod appends the problems of a part to those of the whole as arguments of one call.
    if (error instanceof RangeError) return undefined
    throw error
  }
}

function problemsIn(issue: z.core.$ZodIssue): number {
  return issue.code === 'unrecognized_keys' ? issue.keys.length : 1
}

function placedProblems(issue: z.core.$ZodIssue, value: unknown): PlacedProblem[] {
  const path = pathText(issue.path)
  if (issue.code !== 'unrecognized_keys') {
    return [{ problem: { ...flawOf(issue, value), path }, keys: issue.path }]
  }
  return issue.keys.map((key) => {
    const nearest = nearestField(jobSchema, issue.path, key)
    const flaw: Flaw = { code: 'unknown-key', key: quotable(key), ...(nearest ? { nearest } : {}) }
    return { problem: { ...flaw, path }, keys: [...issue.path, key] }
  })
}

function flawOf(issue: z.core.$ZodIssue, value: unknown): Flaw {
  const found = valueAt(value, issue.path)
  switch (issue.code) {
    case 'invalid_type':
      return kindFlaw(issue.expected, issue.path, found)
    case 'invalid_value':
      if (found === undefined) return { code: 'missing', field: lastField(issue.path) }
      return { code: 'not-one-of', options: issue.values.map(String), found: quotedValue(found) }
    case 'too_small':
    case 'too_big':
      return boundFlaw(issue, found)
    case 'invalid_format':
      return formatFlaw(issue, found)
    case 'custom':
      return ownFlaw(issue.params)
    default:
      throw new Error(`The schema of the job raised an issue without a code of ours: ${issue.code}`)
  }
}

function kindFlaw(expected: string, path: readonly PropertyKey[], found: unknown): Flaw {
  if (found === undefined) return { code: 'missing', field: lastField(path) }
  const kinds: Record<string, ValueKind> = {
    string: 'text',
    number: 'number',
    int: 'whole-number',
    boolean: 'true-or-false',
    array: 'list',
    object: 'object',
  }
  const kind = kinds[expected]
  if (kind === undefined) throw new Error(`The schema of the job expects an unknown kind: ${expected}`)
  // Numbers too large for a double become infinite when the text is parsed.
  const range = rangeOf(lastField(path))
  if (typeof found === 'number' && kind === 'number' && range) return rangeFlaw(found, range)
  return { code: 'wrong-kind', expected: kind, found: quotedValue(found) }
}

function boundFlaw(issue: z.core.$ZodIssueTooBig | z.core.$ZodIssueTooSmall, found: unknown): Flaw {
  if (typeof found === 'number') {
    const range = rangeOf(lastField(issue.path))
    if (range) return rangeFlaw(found, range)
  }
  const length = typeof found === 'string' || Array.isArray(found) ? found.length : 0
  if (issue.code === 'too_small') return { code: 'list-too-short', least: Number(issue.minimum) }
  const most = Number(issue.maximum)
  return { code: issue.origin === 'string' ? 'text-too-long' : 'list-too-long', length, most }
}

function rangeFlaw(found: number, range: NonNullable<ReturnType<typeof rangeOf>>): Flaw {
  const { least, most, mostExcluded = false, unit } = range
  return { code: 'out-of-range', found, least, most, mostExcluded, ...(unit ? { unit } : {}) }
}

function formatFlaw({ format, path }: z.core.$ZodIssueInvalidStringFormat, found: unknown): Flaw {
  if (lastField(path) === 'hash') return { code: 'not-a-hash', found: quotedValue(found) }
  if (lastField(path) === 'base64') return { code: 'not-base64' }
  if (format === 'date') return { code: 'not-a-date', found: quotedValue(found) }
  const blank = typeof found === 'string' && found.trim() === ''
  return blank ? { code: 'text-blank' } : { code: 'control-character' }
}

function ownFlaw(params: Record<string, unknown> | undefined): Flaw {
  if (!params || !('flaw' in params)) throw new Error('A check of the schema raised an issue without a flaw')
  return params.flaw as Flaw
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (at, key) =>
      typeof at === 'object' && at !== null && Object.hasOwn(at, key) ? Reflect.get(at, key) : undefined,
    value,
  )
}

/** The last name in the path: the field itself, or the list that an entry stands in. */
function lastField(path: readonly PropertyKey[]): string {
  return String(path.findLast((key) => typeof key === 'string') ?? '')
}
