import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { inspect } from '../../../src/core/inspect'
import { readJob } from '../../../src/job/read-job'
import { jobFormatVersion } from '../../../src/job/schema'
import { writeJob } from '../../../src/job/write-job'

const textOf = (path: string) => readFileSync(new URL(path, import.meta.url), 'utf8')
const file = textOf('./frozen/format-1.json')
const frozenSchema = textOf('./frozen/format-1.schema.json')

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

describe('format 1, frozen on 2026-11-25', () => {
  it('is the file that was frozen, to the byte', () => {
    const digest = createHash('sha256').update(file).digest('hex')
    expect(digest).toBe('7fccf0bc9b1834465ee0538da3ee664e91bb0d5c1539d673154d37468481a0cc')
    expect(createHash('sha256').update(frozenSchema).digest('hex')).toBe(
      '3c0f9e371b4180cec6c4b0dd8532e2157d757fcbd1c8f19f85e71b6c996e5164',
    )
  })

  it('has every field of the format in that file', () => {
    const inFile = new Set(fieldsIn(JSON.parse(file)))
    const missing = fieldsOf(JSON.parse(frozenSchema)).filter((field) => !inFile.has(field))
    expect(missing).toEqual(['.$schema'].filter((field) => missing.includes(field)))
  })

  it('is read whole by this Borewall, and its readings prove what they proved', () => {
    const read = readJob(file)
    if (!read.ok) throw new Error(JSON.stringify(read.problems))
    const { formatVersion: _, ...kept } = read.job
    const { formatVersion: __, ...frozen } = JSON.parse(file)
    expect(kept).toMatchObject(frozen)
    const again = readJob(writeJob(read.job))
    expect(again).toEqual(read)
    const { bores, earlier } = inspect(read.job)
    expect(bores.map(({ stations }) => stations.length)).toEqual([6, 1])
    expect(earlier.map(({ stations }) => stations.length)).toEqual([6, 2])
    expect(bores[0]?.verdict).toMatchObject({ known: true, verdict: 'inside' })
    expect(bores[0]?.stations[2]?.diameterMm).toBeCloseTo(54.02315, 5)
  })

  it('has every field of its own in the version that is written now', () => {
    const now = new Set(fieldsOf(JSON.parse(textOf('../../../public/job.schema.json'))))
    expect(jobFormatVersion).toBe(2)
    expect(fieldsOf(JSON.parse(frozenSchema)).filter((field) => !now.has(field))).toEqual([])
  })
})
