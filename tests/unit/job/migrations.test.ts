import { expect, it } from 'vitest'
import { type Migration, migrateDocument, migrations } from '../../../src/job/migrations'
import { jobFormatVersion } from '../../../src/job/schema'

const made: Migration[] = [
  // Out of order on purpose: each is found by its version.
  { from: 2, migrate: ({ title, ...rest }) => ({ ...rest, name: `${title}!` }) },
  { from: 1, migrate: ({ heading, ...rest }) => ({ ...rest, title: heading }) },
]
const job = (formatVersion: unknown, rest: object = {}) => ({
  format: 'borewall-job',
  formatVersion,
  ...rest,
})

it('brings an old document to the current version one step at a time', () => {
  expect(migrateDocument(job(1, { heading: 'Saw' }), made, 3)).toEqual({
    ok: true,
    document: job(3, { name: 'Saw!' }),
    from: 1,
  })
  expect(migrateDocument(job(2, { title: 'Saw' }), made, 3)).toEqual({
    ok: true,
    document: job(3, { name: 'Saw!' }),
    from: 2,
  })
})

it('leaves a document of the current version as it is', () => {
  const document = job(3, { name: 'Saw' })
  expect(migrateDocument(document, made, 3)).toEqual({ ok: true, document, from: 3 })
})

it('does not change the document it was given', () => {
  const document = Object.freeze(job(1, { heading: 'Saw' }))
  migrateDocument(document, made, 3)
  expect(document).toEqual(job(1, { heading: 'Saw' }))
})

it('refuses a newer version, naming both', () => {
  const flaw = { code: 'newer-version', found: 4, supported: 3 }
  expect(migrateDocument(job(4), made, 3)).toEqual({ ok: false, path: 'formatVersion', flaw })
})

it('refuses a version that never was', () => {
  for (const [version, found] of [
    [0, '0'],
    [-1, '-1'],
    [1.5, '1.5'],
    ['1', '"1"'],
    [null, 'null'],
  ]) {
    const flaw = { code: 'unknown-version', found, supported: 3 }
    expect(migrateDocument(job(version), made, 3)).toEqual({ ok: false, path: 'formatVersion', flaw })
  }
  const missing = { code: 'missing', field: 'formatVersion' }
  expect(migrateDocument(job(undefined), made, 3)).toEqual({
    ok: false,
    path: 'formatVersion',
    flaw: missing,
  })
})

it('throws when a step was forgotten, which is our own mistake', () => {
  expect(() => migrateDocument(job(1), [], 3)).toThrow('No migration from format version 1')
})

it('has one step from each past version of the real format', () => {
  const past = Array.from({ length: jobFormatVersion - 1 }, (_, index) => index + 1)
  expect(migrations.map(({ from }) => from)).toEqual(past)
})
