import { readFileSync } from 'node:fs'
import { crc32 as crc32OfNode, deflateRawSync } from 'node:zlib'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inspectJson } from '../../../src/cli/inspect-json'
import { inspect } from '../../../src/core/inspect'
import { carriedJob } from '../../../src/job/carried-job'
import { codeDictionary } from '../../../src/job/code-dictionary'
import { bytesOfDigits, crc32, digitsOfBytes, mostDigits } from '../../../src/job/code-digits'
import { codeDocument } from '../../../src/job/code-document'
import { codeOfJob, jobOfCode, mostUnpackedBytes } from '../../../src/job/code-of-job'
import type { Job } from '../../../src/job/schema'
import { findingsPage } from '../../../src/words/findings-page'
import { runCount } from '../../proof/run-count'
import { seededRandom } from '../../proof/seeded-random'
import { scenario, scenarioFiles } from '../scenarios/scenario'
import { arbitraryJob } from './arbitrary-job'
import { mutatedText } from './mutated-text'
import { sampleJob } from './sample-job'

function digitsOf(job: Job): string {
  const digits = codeOfJob(job)
  if (digits === undefined) throw new Error('larger than any code')
  return digits
}

function throughCode(job: Job): Job {
  const read = jobOfCode(digitsOf(job))
  if (!read.ok) throw new Error(JSON.stringify(read))
  return read.job
}

/** The job with the ids of another that has the same parts at the same places, and with what refers to them. */
function withIdsOf(job: Job, other: Job): unknown {
  const fresh = new Map<unknown, unknown>()
  const renamed = (value: unknown, there: unknown): unknown => {
    if (Array.isArray(value))
      return value.map((item, index) => renamed(item, Reflect.get(Object(there), index)))
    if (typeof value !== 'object' || value === null) return value
    const parts = Object.entries(value).map(([key, item]) => {
      const own: unknown = Reflect.get(Object(there), key)
      if (key !== 'id') return [key, renamed(item, own)]
      fresh.set(item, own)
      return [key, own]
    })
    return Object.fromEntries(parts)
  }
  const referring = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(referring)
    if (typeof value !== 'object' || value === null) return value
    const parts = Object.entries(value)
    return Object.fromEntries(
      parts.map(([key, item]) => [key, key.endsWith('Id') ? fresh.get(item) : referring(item)]),
    )
  }
  return referring(renamed(job, other))
}

/** Every number and every yes or no, in the order in which they come; ids are texts. */
function figuresIn(value: unknown): unknown[] {
  if (Array.isArray(value)) return value.flatMap(figuresIn)
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(figuresIn)
  return typeof value === 'string' ? [] : [value]
}

describe('a job through a code', () => {
  it.each(scenarioFiles)('comes back from %s with every figure of inspect and every sentence', (file) => {
    const whole = scenario(file)
    const { job } = carriedJob(whole, true)
    const back = throughCode(job)
    expect(back).toEqual(withIdsOf(job, back))
    // What a scan says of itself is in its radii, which stay behind.
    const figures = (one: Job) => figuresIn({ ...inspectJson(one, inspect(one)), scans: [] })
    expect(figures(back)).toEqual(figures(whole))
    expect(findingsPage(back, inspect(back))).toEqual(findingsPage(whole, inspect(whole)))
  })

  it('comes back with one of every field, but for photographs and the radii of scans', () => {
    const { job, leftOut } = carriedJob(sampleJob, true)
    const back = throughCode(job)
    expect(back).toEqual(withIdsOf(job, back))
    expect(leftOut).toEqual({ photographs: 1, scans: 1, notes: 0 })
    expect(JSON.stringify(back)).not.toContain('photo')
  })

  it('is read from a code printed on 2026-11-26, whatever has been added since', () => {
    const frozen = (name: string) => readFileSync(new URL(`./frozen/${name}`, import.meta.url), 'utf8')
    const read = jobOfCode(frozen('code-1.txt').trim())
    expect(read).toEqual({ ok: true, job: JSON.parse(frozen('code-1.json')) })
  })

  it('comes back without its notes where they are left out, and says how many', () => {
    const { job, leftOut } = carriedJob(sampleJob, false)
    const back = throughCode(job)
    expect(leftOut.notes).toBe(2)
    expect(JSON.stringify(back)).not.toMatch(/"note"/)
    expect(back.bores[0]?.surveys[0]?.surfaceFindings?.[0]?.kind).toBe('scratch')
  })

  it('is the same job under the same id each time, and another job another', () => {
    expect(throughCode(sampleJob).id).toBe(throughCode(sampleJob).id)
    expect(throughCode(sampleJob).id).not.toBe(throughCode({ ...sampleJob, name: 'Other' }).id)
  })

  const asWritten = (job: unknown) => JSON.parse(JSON.stringify(job))
  const count = runCount({ quick: 60, full: 3000 })
  it(`comes back whatever it holds, ${count} jobs, seed 9100`, () => {
    fc.assert(
      fc.property(arbitraryJob, (job) => {
        const back = throughCode(carriedJob(job, true).job)
        // As written, for -0 is a number that a job may hold and that is written 0.
        expect(asWritten(back)).toEqual(asWritten(withIdsOf(carriedJob(job, true).job, back)))
      }),
      { seed: 9100, numRuns: count },
    )
  })

  const inspected = runCount({ quick: 15, full: 300 })
  it(`has the same findings whatever it holds, ${inspected} jobs, seed 9150`, () => {
    fc.assert(
      fc.property(arbitraryJob, (job) => {
        const back = throughCode(carriedJob(job, true).job)
        expect(figuresIn(inspect(back))).toEqual(figuresIn(inspect(job)))
      }),
      { seed: 9150, numRuns: inspected },
    )
  })

  it('is refused where it is larger than any code could be', () => {
    const note = Array.from({ length: 60 }, (_, index) => `${index} `.repeat(60)).join('')
    const [bore] = sampleJob.bores
    const [survey] = bore?.surveys ?? []
    const [finding] = survey?.surfaceFindings ?? []
    if (!bore || !survey || !finding) throw new Error('The sample has a finding')
    const surfaceFindings = Array.from({ length: 40 }, (_, index) => ({ ...finding, id: `f${index}`, note }))
    const large = { ...sampleJob, bores: [{ ...bore, surveys: [{ ...survey, surfaceFindings }] }] }
    expect(codeOfJob(large)).toBeUndefined()
  })
})

describe('a code that is no job', () => {
  const digits = digitsOf(carriedJob(sampleJob, true).job)

  const count = runCount({ quick: 1500, full: 50_000 })
  it(`is refused with a reason after any change, ${count} of them, seeds from 9200`, () => {
    for (let index = 0; index < count; index += 1) {
      const random = seededRandom(9200 + index)
      const at = Math.floor(random.even() * digits.length)
      const digit = String(Math.floor(random.even() * 10))
      const changes = [
        digits.slice(0, at) + digit + digits.slice(at + 1),
        digits.slice(0, at) + digit + digits.slice(at),
        digits.slice(0, at) + digits.slice(at + 1),
        digits.slice(0, at),
        digits.slice(0, at) + digits.slice(at).split('').reverse().join(''),
        digits + digit,
      ]
      const changed = changes[Math.floor(random.even() * changes.length)] ?? ''
      if (changed === digits) continue
      const read = jobOfCode(changed)
      expect(read.ok, changed).toBe(false)
      if (!read.ok) expect(['damaged', 'newer']).toContain(read.why)
    }
  })

  it.each(['', 'x', '1', '12', '-1', '１２３', '1e9', ' 1', '1.5', '%31', '10', '11'.repeat(5)])(
    'is refused as damaged: "%s"',
    (text) => {
      expect(jobOfCode(text)).toEqual({ ok: false, why: 'damaged' })
    },
  )

  it('is refused as one of a newer Borewall where it begins otherwise', () => {
    expect(jobOfCode(`2${digits.slice(1)}`)).toEqual({ ok: false, why: 'newer' })
  })

  /** A code with its check sum right, whatever it holds. */
  const made = (text: string, numbers: readonly number[] = []) => {
    const dictionary = Buffer.from(codeDictionary)
    const packed = deflateRawSync(text, { dictionary, level: 9 })
    const bytes = Uint8Array.of(numbers.length >> 8, numbers.length & 255, ...numbers, ...packed)
    return `1${digitsOfBytes(bytes)}`
  }

  const spoilt = runCount({ quick: 400, full: 20_000 })
  it(`is a job or refused with a reason whatever somebody wrote into it, ${spoilt} codes, seeds from 9300`, () => {
    const { text, numbers } = codeDocument(carriedJob(sampleJob, true).job)
    const whys = new Set<string>()
    for (let index = 0; index < spoilt; index += 1) {
      const random = seededRandom(9300 + index)
      const some = [...numbers].slice(0, Math.floor(random.even() * (numbers.length + 1)))
      const read = jobOfCode(
        made(mutatedText(JSON.stringify(text), random), random.even() < 0.3 ? some : [...numbers]),
      )
      whys.add(read.ok ? 'job' : read.why)
      if (!read.ok && read.why === 'no-job') expect(read.problems.length).toBeGreaterThan(0)
    }
    expect([...whys].sort()).toEqual(['damaged', 'job', 'newer', 'no-job'])
  })

  it('is refused unread where it has more digits than any code', () => {
    const long = made(JSON.stringify(Array.from({ length: 4000 }, (_, index) => Math.sin(index))))
    expect(long.length).toBeGreaterThan(mostDigits)
    expect(jobOfCode(long)).toEqual({ ok: false, why: 'damaged' })
  })

  it('is stopped where a few digits unpack to more than any job that a code carries', () => {
    const bomb = made(' '.repeat(2_500_000))
    expect(bomb.length).toBeLessThan(mostDigits)
    expect(jobOfCode(bomb)).toEqual({ ok: false, why: 'too-large' })
    expect(jobOfCode(made(`[${' '.repeat(mostUnpackedBytes - 2)}]`)).ok).toBe(false)
  })

  it.each([
    ['no JSON', '{'],
    ['nested without end', '['.repeat(5000)],
    ['a number too large for a double', '[2,1,1e999]'],
  ])('is refused with what is wrong where it holds %s', (_, text) => {
    const read = jobOfCode(made(text))
    expect(read).toMatchObject({ ok: false, why: 'no-job' })
  })

  it.each([
    ['an object', '{"format":"borewall-job"}'],
    ['fewer fields than it says', '[2,127,"A"]'],
    ['a list for a part', '[2,127,"A",[],[],[],[],{},[]]'],
    ['a negative number for its fields', '[2,-1]'],
    ['half a field', '[2,0.5]'],
    ['places that are no numbers', '[2,127,"A",[0],[],[],[],[[3,"x",0]],[]]'],
    ['readings without stations', '[2,127,"A",[0],[],[],[],[],[[64,[[8,"s3,1,3,54000,4"]]]]]'],
    ['fewer values than stations', '[2,127,"A",[0],[],[],[],[],[[64,[[14,[8],[0],"s3,1,3,54000,400"]]]]]'],
    [
      'more stations than any survey',
      '[2,127,"A",[0],[],[],[],[],[[64,[[14,[8],[0],"s3,1,0,54000,99999"]]]]]',
    ],
  ])('is refused as damaged where it holds %s', (_, text) => {
    expect(jobOfCode(made(text))).toMatchObject({ ok: false, why: 'damaged' })
  })

  it('is refused by the schema where its parts are right and its job is not', () => {
    const read = jobOfCode(made('[2,127,"A",[3,55,54],[],[],[],[],[]]'))
    expect(read).toMatchObject({ ok: false, why: 'no-job' })
    const missing = jobOfCode(made('[2,1,"A"]'))
    if (missing.ok || missing.why !== 'no-job') throw new Error('taken for a job')
    expect(missing.problems.map(({ code }) => code)).toContain('missing')
  })

  it('is one of a newer Borewall where it names fields or a format that are not known here', () => {
    expect(jobOfCode(made(`[2,${2 ** 30},1]`))).toEqual({ ok: false, why: 'newer' })
    expect(jobOfCode(made('[3,1,"A"]'))).toEqual({ ok: false, why: 'newer' })
  })

  it('has the check sum of gzip, as zlib works it out', () => {
    for (const text of ['', '123456789', 'Bohrung 1 °']) {
      const bytes = new TextEncoder().encode(text)
      expect(crc32(bytes)).toBe(crc32OfNode(bytes))
    }
  })

  it('gives bytes back as they were, zeros in front too', () => {
    for (const bytes of [[], [0], [0, 0, 7], [255, 0, 255]]) {
      expect(bytesOfDigits(digitsOfBytes(Uint8Array.from(bytes)))).toEqual(Uint8Array.from(bytes))
    }
  })
})
