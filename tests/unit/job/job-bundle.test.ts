import { describe, expect, it } from 'vitest'
import { bundleParts, isBundle, readBundle } from '../../../src/job/job-bundle'
import { writeJob } from '../../../src/job/write-job'
import { sampleJob } from './sample-job'

const bytes = (text: string) => new TextEncoder().encode(text)
const bundle = (...texts: string[]) => bundleParts(texts).join('')
const sample = writeJob(sampleJob)
const other = writeJob({ ...sampleJob, id: 'other', name: 'Other' })

describe('a file of all jobs', () => {
  it('gives back every job that was written to it, equal in every part, and none from an empty one', () => {
    const read = readBundle(bytes(bundle(sample, other)))
    expect(read).toEqual({
      ok: true,
      jobs: [
        { ok: true, job: sampleJob },
        { ok: true, job: { ...sampleJob, id: 'other', name: 'Other' } },
      ],
      specs: [],
    })
    expect(readBundle(bundle())).toEqual({ ok: true, jobs: [], specs: [] })
    const kept = { id: 'a', name: 'Pump', typedOn: '2024-05-31', text: sample }
    expect(readBundle(bundleParts([sample], [JSON.stringify(kept)]).join(''))).toMatchObject({
      specs: [kept],
    })
  })

  it('is read as it was before it held limits, too', () => {
    const first = `{"format":"borewall-jobs","formatVersion":1,"jobs":[${sample}]}`
    expect(readBundle(first)).toMatchObject({ ok: true, jobs: [{ ok: true }], specs: [] })
  })

  it('is told from a file of one job, whatever a job is called', () => {
    expect(isBundle(bytes(bundle(sample)))).toBe(true)
    expect(isBundle(bytes(`\uFEFF  ${JSON.stringify(JSON.parse(bundle(sample)))}`))).toBe(true)
    expect(isBundle(bytes(sample))).toBe(false)
    expect(isBundle(bytes(writeJob({ ...sampleJob, name: '"format": "borewall-jobs"' })))).toBe(false)
    expect(isBundle(bytes(''))).toBe(false)
  })

  it('refuses one job with the place of what is wrong in it, and reads the others', () => {
    const broken = sample.replace('"wearLimitMm": 54.05', '"wearLimitMm": "54,05"')
    const read = readBundle(bundle(other, broken, '17'))
    expect(read).toMatchObject({
      ok: true,
      jobs: [
        { ok: true },
        {
          ok: false,
          name: 'Sample',
          problems: [{ code: 'wrong-kind', path: 'jobs[1].spec.wearLimitMm' }],
        },
        { ok: false, name: '', problems: [{ code: 'not-a-job', path: 'jobs[2]' }] },
      ],
    })
  })

  it('says of a job of a newer version that it is newer', () => {
    const read = readBundle(bundle(sample.replace('"formatVersion": 2', '"formatVersion": 9')))
    expect(read).toMatchObject({
      jobs: [{ problems: [{ code: 'newer-version', path: 'jobs[0].formatVersion', found: 9 }] }],
    })
  })

  it.each([
    ['cut off', bundle(sample).slice(0, 500), 'not-json', ''],
    ['of a newer format', bundle().replace(': 2', ': 3'), 'newer-version', 'formatVersion'],
    ['without a version', '{"format":"borewall-jobs","jobs":[]}', 'unknown-version', 'formatVersion'],
    ['without jobs', '{"format":"borewall-jobs","formatVersion":1}', 'missing', 'jobs'],
    [
      'with something else for its jobs',
      '{"format":"borewall-jobs","formatVersion":1,"jobs":{}}',
      'wrong-kind',
      'jobs',
    ],
    ['with a field nobody knows', bundle().replace('"jobs"', '"more": 1, "jobs"'), 'unknown-key', ''],
  ])('is refused whole, with the place, where it is %s', (_, text, code, path) => {
    const read = readBundle(text)
    expect(read.ok).toBe(false)
    expect(read.ok ? [] : read.problems).toMatchObject([{ code }])
    if (code !== 'not-json') expect(read).toMatchObject({ problems: [{ path }] })
  })
})
