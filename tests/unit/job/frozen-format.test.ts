import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { inspect } from '../../../src/core/inspect'
import { readJob } from '../../../src/job/read-job'
import { jobFormatVersion } from '../../../src/job/schema'
import { writeJob } from '../../../src/job/write-job'

const textOf = (path: string) => readFileSync(new URL(path, import.meta.url), 'utf8')
/** Every field that a schema allows, by its path: `.bores[].surveys[].readings[].depthMm`. */
function fieldsOf(schema: unknown, path = ''): string[] {
  if (typeof schema !== 'object' || schema === null) return []
  const own = Object.entries(Reflect.get(schema, 'properties') ?? {}).flatMap(([name, part]) => [
    `${path}.${name}`,
    ...fieldsOf(part, `${path}.${name}`),
  ])
  return [...own, ...fieldsOf(Reflect.get(schema, 'items'), `${path}[]`)]
}

function fieldsIn(value: unknown, path = ''): string[] {
  if (Array.isArray(value)) return value.flatMap((item) => fieldsIn(item, `${path}[]`))
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([name, part]) => [
    `${path}.${name}`,
    ...fieldsIn(part, `${path}.${name}`),
  ])
}

interface Frozen {
  readonly version: number
  readonly on: string
  readonly digest: string
  readonly schemaDigest: string
  /** How many stations each bore had in its latest survey, and in its earlier ones. */
  readonly stations: readonly number[]
  readonly earlier: readonly number[]
  /** The last station of the first bore, mm at 20 °C. */
  readonly lastMm: number
}

const frozenFormats: readonly Frozen[] = [
  {
    version: 1,
    on: '2026-11-25',
    digest: '7fccf0bc9b1834465ee0538da3ee664e91bb0d5c1539d673154d37468481a0cc',
    schemaDigest: '3c0f9e371b4180cec6c4b0dd8532e2157d757fcbd1c8f19f85e71b6c996e5164',
    stations: [6, 1],
    earlier: [6, 2],
    lastMm: 54.00615,
  },
  {
    version: 2,
    on: '2026-11-26',
    digest: '2364dd3f0e8a3214141446e14725d177e09ba8fe3f7e3239725dbfc9090033ca',
    schemaDigest: '42362339df62a8ca01a89d3619ee84522ba102cbe24f88f22e46e7c71e31ac3e',
    stations: [6, 1],
    earlier: [6, 2],
    lastMm: 54.00615,
  },
]

describe.each(frozenFormats)('format $version, frozen on $on', ({ version, ...frozen }) => {
  const file = textOf(`./frozen/format-${version}.json`)
  const schema = textOf(`./frozen/format-${version}.schema.json`)

  it('is the file that was frozen, to the byte', () => {
    expect(createHash('sha256').update(file).digest('hex')).toBe(frozen.digest)
    expect(createHash('sha256').update(schema).digest('hex')).toBe(frozen.schemaDigest)
  })

  it('has every field of the format in that file', () => {
    const inFile = new Set(fieldsIn(JSON.parse(file)))
    const missing = fieldsOf(JSON.parse(schema)).filter((field) => !inFile.has(field))
    expect(missing).toEqual(['.$schema'].filter((field) => missing.includes(field)))
  })

  it('is read whole by this Borewall, and its readings prove what they proved', () => {
    const read = readJob(file)
    if (!read.ok) throw new Error(JSON.stringify(read.problems))
    const { formatVersion: _, ...kept } = read.job
    const { formatVersion: __, ...written } = JSON.parse(file)
    expect(kept).toMatchObject(written)
    const again = readJob(writeJob(read.job))
    expect(again).toEqual(read)
    const { bores, earlier } = inspect(read.job)
    expect(bores.map(({ stations }) => stations.length)).toEqual(frozen.stations)
    expect(earlier.map(({ stations }) => stations.length)).toEqual(frozen.earlier)
    expect(bores[0]?.verdict).toMatchObject({ known: true, verdict: 'inside' })
    expect(bores[0]?.stations.at(-1)?.diameterMm).toBeCloseTo(frozen.lastMm, 5)
  })

  it('has every field of its own in the version that is written now', () => {
    const now = new Set(fieldsOf(JSON.parse(textOf('../../../public/job.schema.json'))))
    expect(jobFormatVersion).toBe(2)
    expect(fieldsOf(JSON.parse(schema)).filter((field) => !now.has(field))).toEqual([])
  })
})
