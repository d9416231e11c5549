import { readFileSync } from 'node:fs'
import { Ajv2020 } from 'ajv/dist/2020.js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ProblemCode } from '../../src/core/problem'
import { readJob } from '../../src/job/read-job'
import { runCount } from '../proof/run-count'
import { sampleJob, spoilt } from '../unit/job/sample-job'
import { scenarioFiles } from '../unit/scenarios/scenario'

// The validator is ajv, for JSON Schema draft 2020-12 (json-schema.org, 2022-06-16). In its strict mode it also
// refuses a schema with keywords that it does not know. Formats only annotate in that draft (Validation, 7.2.1,
// from memory), so a day has to be held by its pattern.
const isValid = new Ajv2020({ strict: true, allErrors: true, validateFormats: false }).compile(
  fileAt('public/job.schema.json'),
)

function fileAt(path: string) {
  return JSON.parse(readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8'))
}

/** As it would stand in a file. */
function broken(path: Path, value: unknown): unknown {
  return JSON.parse(JSON.stringify(spoilt([...path], value)))
}

function codesOf(document: unknown): ProblemCode[] {
  const read = readJob(JSON.stringify(document))
  return read.ok ? [] : read.problems.map(({ code }) => code)
}

/** What no schema can say: how fields stand to each other, and references between the parts of a job. */
const betweenFields: ReadonlySet<ProblemCode> = new Set<ProblemCode>([
  'duplicate-id',
  'duplicate-name',
  'duplicate-value',
  'unknown-reference',
  'unreachable-station',
  'low-above-high',
  'port-all-round',
  'deeper-than-bore',
  'duplicate-station',
  'off-level',
  'off-axis',
  'reading-values',
  'check-values',
  'study-values',
  'entry-does-not-fit',
])

type Path = readonly (string | number)[]

const firstReading: Path = ['bores', 0, 'surveys', 0, 'readings', 0]

describe('the published schema of the job file, by an independent validator', () => {
  it.each(scenarioFiles)('holds for the scenario %s', (name) => {
    isValid(fileAt(`scenarios/${name}`))
    expect(isValid.errors ?? []).toEqual([])
  })

  it('holds for a job with every field filled in', () => {
    isValid(sampleJob)
    expect(isValid.errors ?? []).toEqual([])
  })

  it.each<[string, Path, unknown]>([
    ['a text where a number belongs', ['setUps', 0, 'settingSizeMm'], '54.000'],
    ['a number where a text belongs', ['name'], 54],
    ['null for what was not recorded', ['setUps', 0, 'zeroCloseUm'], null],
    ['a field that a job does not have', ['spec', 'wearLimit'], 54.05],
    ['a field left out that must be there', ['setUps', 0, 'settingSizeMm'], undefined],
    ['a list left out that must be there', ['bores'], undefined],
    ['a list without the one entry it needs', ['bores', 0, 'surveys'], []],
    ['a size below the smallest bore', ['spec', 'wearLimitMm'], 0.054],
    ['a temperature beyond any bench', ['setUps', 0, 'boreTemperatureC'], 81],
    ['an axis entered at 180°', [...firstReading, 'axisDegrees'], 180],
    ['a kind of gauge that is none', ['gauges', 0, 'kind'], 'tape-measure'],
    ['a day that no month has', ['bores', 0, 'surveys', 0, 'date'], '2023-02-29'],
    ['a blank name', ['bores', 0, 'name'], '  '],
    ['a control character in a name', ['name'], 'saw\u0007'],
    ['another format', ['format'], 'workbook'],
  ])('refuses %s, as reading the file does', (_, path, value) => {
    const document = broken(path, value)
    expect(isValid(document)).toBe(false)
    expect(codesOf(document)).not.toEqual([])
  })

  it.each<[string, Path, unknown, ProblemCode]>([
    ['a reference to nothing', ['setUps', 0, 'gaugeId'], 'nowhere', 'unknown-reference'],
    ['a band upside down', ['spec', 'newMinMm'], 54.02, 'low-above-high'],
    ['a reading between the levels', [...firstReading, 'depthMm'], 9.5, 'off-level'],
  ])('cannot express what is checked between fields: %s', (_, path, value, code) => {
    const document = broken(path, value)
    isValid(document)
    expect(isValid.errors ?? []).toEqual([])
    expect(codesOf(document)).toEqual([code])
  })

  it('counts the characters of a text alike, also those outside the basic plane', () => {
    for (const [length, fits] of [
      [120, true],
      [121, false],
    ] as const) {
      const document = broken(['name'], '𝔅'.repeat(length))
      expect(isValid(document)).toBe(fits)
      expect(codesOf(document)).toEqual(fits ? [] : ['text-too-long'])
    }
  })

  const runs = runCount({ quick: 400, full: 20_000 })
  const seed = 20240607
  it(`agrees with reading the file, but for what is checked between fields, wherever one of its fields is spoilt (${runs} jobs, seed ${seed})`, () => {
    const spoilers = fc.oneof(
      fc.constantFrom<unknown>(null, undefined, '', ' ', 'x', true, false, [], {}),
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.integer({ min: -400, max: 21000 }),
    )
    const places = fc.constantFrom(...pathsOf(sampleJob))
    fc.assert(
      fc.property(places, spoilers, (path, value) => {
        const document = broken(path, value)
        const valid = isValid(document)
        const codes = codesOf(document)
        if (!valid) expect(codes).not.toEqual([])
        else expect(codes.filter((code) => !betweenFields.has(code))).toEqual([])
      }),
      { seed, numRuns: runs },
    )
  })
})

/** The path of every field and of every entry of a list. */
function pathsOf(value: unknown, path: Path = []): Path[] {
  const below = Array.isArray(value)
    ? value.flatMap((item, index) => pathsOf(item, [...path, index]))
    : typeof value === 'object' && value !== null
      ? Object.entries(value).flatMap(([key, item]) => pathsOf(item, [...path, key]))
      : []
  return path.length === 0 ? below : [path, ...below]
}
