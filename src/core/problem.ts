/**
 * What is wrong with a file or a field, as data: where, what was found and what was expected. The wording
 * is made elsewhere. It lives here because the parser of the job and the wording both need it.
 */

/** What a JSON text should have gone on with at the place where it stops being JSON. */
export const jsonExpectations = [
  'value',
  'key',
  'colon',
  'comma-or-end-of-list',
  'comma-or-end-of-object',
  'end-of-text',
  'end-of-string',
  'escape',
  'number',
  /** NaN, Infinity, undefined: JSON has no such values. */
  'finite-number',
  /** A number with zeros in front, or digits behind a comma: perhaps a decimal comma, as in 54,032. */
  'no-leading-zero',
  /** A comma with nothing after it. */
  'no-trailing-comma',
] as const
export type JsonExpectation = (typeof jsonExpectations)[number]

export const fileKinds = ['image', 'pdf', 'archive', 'web-page', 'table'] as const
export type FileKind = (typeof fileKinds)[number]

export const valueKinds = ['text', 'number', 'whole-number', 'true-or-false', 'list', 'object'] as const
export type ValueKind = (typeof valueKinds)[number]

export const units = ['mm', 'µm', '°C', 'K', '1/K', '°', 'h', 'N·m'] as const
export type Unit = (typeof units)[number]

/** The lists of a job that other parts refer to by id or by name. */
export type ReferredList =
  | 'setUps'
  | 'gauges'
  | 'standards'
  | 'thermometers'
  | 'spec.grades'
  | 'bores'
  | 'surveys'
  | 'scans'

/** What is wrong, without the place. */
export type Flaw =
  // the file as a whole
  | { readonly code: 'file-too-large'; readonly bytes: number; readonly mostBytes: number }
  | { readonly code: 'file-empty' }
  | { readonly code: 'saved-as-utf-16' }
  | { readonly code: 'not-utf-8' }
  | { readonly code: 'other-kind-of-file'; readonly kind: FileKind }
  /** `found` is the text at that place, at most 20 characters; empty where the text ended. */
  | { readonly code: 'not-json'; readonly expected: JsonExpectation; readonly found: string }
  | { readonly code: 'too-deep'; readonly most: number }
  | { readonly code: 'duplicate-key'; readonly key: string }
  | { readonly code: 'not-a-job' }
  | { readonly code: 'newer-version'; readonly found: number; readonly supported: number }
  | { readonly code: 'unknown-version'; readonly found: string; readonly supported: number }
  // one field
  | { readonly code: 'missing'; readonly field: string }
  | { readonly code: 'unknown-key'; readonly key: string; readonly nearest?: string }
  | { readonly code: 'wrong-kind'; readonly expected: ValueKind; readonly found: string }
  | { readonly code: 'not-one-of'; readonly options: readonly string[]; readonly found: string }
  | {
      readonly code: 'out-of-range'
      readonly found: number
      readonly least: number
      readonly most: number
      /** The most itself is already too much. */
      readonly mostExcluded: boolean
      readonly unit?: Unit
    }
  | { readonly code: 'text-blank' }
  | { readonly code: 'text-too-long'; readonly length: number; readonly most: number }
  | { readonly code: 'control-character' }
  | { readonly code: 'not-a-date'; readonly found: string }
  /** Not 64 hexadecimal digits; not base64. */
  | { readonly code: 'not-a-hash'; readonly found: string }
  | { readonly code: 'not-base64' }
  | { readonly code: 'list-too-short'; readonly least: number }
  /** Length 0: not counted to the end. */
  | { readonly code: 'list-too-long'; readonly length: number; readonly most: number }
  // fields that do not fit each other
  | { readonly code: 'duplicate-id'; readonly id: string }
  | { readonly code: 'duplicate-name'; readonly name: string }
  | { readonly code: 'duplicate-value'; readonly value: number; readonly unit: Unit }
  | {
      readonly code: 'unknown-reference'
      readonly list: ReferredList
      readonly found: string
      readonly known: readonly string[]
    }
  | {
      readonly code: 'low-above-high'
      readonly lowField: string
      readonly low: number
      readonly highField: string
      readonly high: number
    }
  | { readonly code: 'port-all-round' }
  | { readonly code: 'deeper-than-bore'; readonly depthMm: number; readonly lengthMm: number }
  | { readonly code: 'duplicate-station'; readonly depthMm: number; readonly axisDegrees: number }
  | { readonly code: 'off-level'; readonly depthMm: number; readonly levelsMm: readonly number[] }
  | { readonly code: 'off-axis'; readonly axisDegrees: number; readonly axesDegrees: readonly number[] }
  /** Out of reach, and yet it has a reading; or named as out of reach twice. */
  | {
      readonly code: 'unreachable-station'
      readonly found: 'read' | 'twice'
      readonly depthMm: number
      readonly axisDegrees: number
    }
  /** A reading without values, with both kinds, or with the kind that its set-up does not use. */
  | {
      readonly code: 'reading-values'
      readonly found: 'none' | 'both' | 'sizesMm' | 'dialUm'
      readonly expected: 'sizesMm' | 'dialUm'
    }
  /** A check of a gauge has sizes or dial readings, one of both. */
  | { readonly code: 'check-values'; readonly found: 'none' | 'both' }
  /** Every reading of a crossed study has sizes, or every one dial readings. */
  | { readonly code: 'study-values'; readonly found: 'none' | 'both' }
  /** Readings cannot come about this way with this gauge or standard. */
  | { readonly code: 'entry-does-not-fit'; readonly entry: 'reverse' | 'direct' }
  /** The job is being written in another tab, or an earlier state of it is only looked at. */
  | { readonly code: 'read-only' }
  /** There are more problems than are worth listing. */
  | { readonly code: 'more-problems'; readonly count: number }

/** `path` like `bores[0].surveys[0].readings[3].axisDegrees`, empty for the whole; lines count from 1. */
export type Problem = Flaw & { readonly path: string; readonly line?: number; readonly column?: number }

export type ProblemCode = Flaw['code']

export const problemCodes = [
  'file-too-large',
  'file-empty',
  'saved-as-utf-16',
  'not-utf-8',
  'other-kind-of-file',
  'not-json',
  'too-deep',
  'duplicate-key',
  'not-a-job',
  'newer-version',
  'unknown-version',
  'missing',
  'unknown-key',
  'wrong-kind',
  'not-one-of',
  'out-of-range',
  'text-blank',
  'text-too-long',
  'control-character',
  'not-a-date',
  'not-a-hash',
  'not-base64',
  'list-too-short',
  'list-too-long',
  'duplicate-id',
  'duplicate-name',
  'duplicate-value',
  'unknown-reference',
  'low-above-high',
  'port-all-round',
  'deeper-than-bore',
  'duplicate-station',
  'off-level',
  'off-axis',
  'unreachable-station',
  'reading-values',
  'check-values',
  'study-values',
  'entry-does-not-fit',
  'read-only',
  'more-problems',
] as const satisfies readonly ProblemCode[]
