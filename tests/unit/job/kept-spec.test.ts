import { describe, expect, it } from 'vitest'
import { checkJob } from '../../../src/job/check-job'
import { hasLimits, type KeptSpec, keptSpecOf, takeKeptSpec, templateOf } from '../../../src/job/kept-spec'
import { newJob } from '../../../src/job/new-job'
import type { Job } from '../../../src/job/schema'
import { findingsOf } from '../../../src/job/selectors'
import { countingIds, sampleJob } from './sample-job'

const kept: KeptSpec = {
  id: 'kept',
  name: 'Pump, 54 mm',
  typedOn: '2026-05-31',
  template: templateOf(sampleJob, 'kept', 'Pump, 54 mm'),
}
const compared = { ...sampleJob.bores[0], id: 'new', role: 'for-comparison' as const }

describe('a kept spec', () => {
  it('is a job that any file may hold', () => {
    expect(checkJob(kept.template)).toEqual({ ok: true, job: kept.template })
  })

  it('holds the limits with their rules, the cylinder and how it is measured', () => {
    const { spec, bores, setUps, gauges } = kept.template
    expect(spec).toEqual(sampleJob.spec)
    expect(bores).toHaveLength(1)
    expect(bores[0]).toMatchObject({ name: '1', lengthMm: 88, ringTravelMm: { from: 6, to: 84 } })
    expect(bores[0]?.ports).toEqual(sampleJob.bores[0]?.ports)
    expect(bores[0]?.surveys).toEqual([
      { id: 'survey', setUpId: 'set-up', levelsMm: [8, 35, 62], axesDegrees: [0, 90], readings: [] },
    ])
    expect(setUps).toEqual([
      {
        id: 'set-up',
        gaugeId: 'gauge',
        standardId: 'micrometer',
        entry: 'size',
        settingSizeMm: 54,
        settingAssumed: true,
      },
    ])
    expect(gauges[0]).toMatchObject({ repeatabilityUm: 1.5 })
  })

  it('holds nothing of one engine or one day', () => {
    const { pistons, ...template } = kept.template
    expect(pistons).toEqual([
      { id: 'catalogue', state: 'obtainable', grade: 'B', minMm: 53.956, maxMm: 53.962 },
    ])
    const text = JSON.stringify(template)
    for (const field of [
      'date',
      'grade"',
      'boreTemperatureC',
      'zeroOpenUm',
      'largerIs',
      'checks',
      'crossedStudies',
      'errorUm',
      'note',
    ]) {
      expect(text).not.toContain(`"${field}`)
    }
    const beside = { ...sampleJob, bores: [compared, ...sampleJob.bores] } as typeof sampleJob
    expect(templateOf(beside, 'a', 'A').bores.map(({ id }) => id)).toEqual(['bore'])
  })

  it('makes an empty job one of its kind, which keeps its own id, name and note', () => {
    const empty = { ...newJob(countingIds()), name: 'The third', note: 'Came in a crate' }
    const taken = takeKeptSpec(empty, kept)
    expect(taken).toMatchObject({ id: empty.id, name: 'The third', note: 'Came in a crate', machine: 'Pump' })
    expect(taken.spec).toEqual(sampleJob.spec)
    expect(taken.setUps[0]?.settingSizeMm).toBe(54)
    expect(checkJob(taken).ok).toBe(true)
    expect(takeKeptSpec({ ...empty, machine: 'Saw' }, kept).machine).toBe('Saw')
  })

  it('brings a job with readings its limits alone, and moves no diameter', () => {
    const bare = { ...sampleJob, spec: {}, bores: sampleJob.bores.map(({ grade: _, ...bore }) => bore) }
    const taken = takeKeptSpec(bare, kept)
    expect(taken).toEqual({ ...bare, spec: sampleJob.spec })
    const sizes = (job: Job) => findingsOf(job).bores[0]?.stations.map((s) => s.diameterMm)
    expect(sizes(taken)).toEqual(sizes(bare))
    expect(takeKeptSpec(sampleJob, kept)).toBe(sampleJob)
  })

  it('brings a job without readings its limits alone, where the surface of a wall is recorded', () => {
    const [bore] = sampleJob.bores
    const [survey] = bore?.surveys ?? []
    if (!bore || !survey) throw new Error('no survey')
    const { grade: _, ...unstamped } = { ...bore, surveys: [{ ...survey, readings: [] }] }
    const unread = { ...sampleJob, spec: {}, bores: [unstamped] }
    expect(takeKeptSpec(unread, kept)).toEqual({ ...unread, spec: sampleJob.spec })
  })

  it('takes the stamp off a bore whose grade it does not have', () => {
    const { grades: _, ...ungraded } = sampleJob.spec
    const other = { ...kept, template: { ...kept.template, spec: ungraded } }
    const taken = takeKeptSpec(sampleJob, other)
    expect(taken.bores[0]).not.toHaveProperty('grade')
    expect(checkJob(taken).ok).toBe(true)
  })

  it('is found again by the limits of a job', () => {
    expect(keptSpecOf(sampleJob, [kept])).toBe(kept)
    const changed = { ...sampleJob, spec: { ...sampleJob.spec, wearLimitMm: 54.06 } }
    expect(keptSpecOf(changed, [kept])).toBeUndefined()
  })

  it('is worth keeping only where a limit was typed: a rule alone is none', () => {
    expect(hasLimits(sampleJob)).toBe(true)
    expect(hasLimits({ ...sampleJob, spec: { ovalityRule: 'pooled' } })).toBe(false)
  })
})
