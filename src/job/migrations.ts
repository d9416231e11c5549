import type { Flaw } from '../core/problem'
import { quotedValue } from './quotable'
import { jobFormat, jobFormatVersion } from './schema'

export type JsonObject = { readonly [key: string]: unknown }

/** One step from a format version to the next. It gets a document nobody has checked and must not trust it. */
export interface Migration {
  readonly from: number
  migrate(document: JsonObject): JsonObject
}

/** In order of their version. Version 2 adds pistons, ring gaps, scans and what decides; nothing changes its meaning. */
export const migrations: readonly Migration[] = [{ from: 1, migrate: (document) => document }]

export type Migrated =
  | { readonly ok: true; readonly document: JsonObject; readonly from: number }
  | { readonly ok: false; readonly path: string; readonly flaw: Flaw }

/** Brings a document of any known version to the current one; a newer one is refused, not damaged. */
export function migrateDocument(
  value: unknown,
  steps: readonly Migration[] = migrations,
  current: number = jobFormatVersion,
): Migrated {
  if (!isObject(value) || value.format !== jobFormat) {
    return { ok: false, path: '', flaw: { code: 'not-a-job' } }
  }
  const from = value.formatVersion
  if (from === undefined) {
    return { ok: false, path: 'formatVersion', flaw: { code: 'missing', field: 'formatVersion' } }
  }
  if (typeof from !== 'number' || !Number.isInteger(from) || from < 1) {
    const flaw: Flaw = { code: 'unknown-version', found: quotedValue(from), supported: current }
    return { ok: false, path: 'formatVersion', flaw }
  }
  if (from > current) {
    return {
      ok: false,
      path: 'formatVersion',
      flaw: { code: 'newer-version', found: from, supported: current },
    }
  }
  let document = value
  for (let version = from; version < current; version += 1) {
    const step = steps.find((each) => each.from === version)
    if (!step) throw new Error(`No migration from format version ${version}`)
    document = { ...step.migrate(document), formatVersion: version + 1 }
  }
  return { ok: true, document, from }
}

function isObject(value: unknown): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
