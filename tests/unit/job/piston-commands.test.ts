import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { removeBore } from '../../../src/job/bore-commands'
import { crossProblems } from '../../../src/job/cross-checks'
import { addStandard, removeInstrument } from '../../../src/job/instrument-list'
import {
  addPiston,
  addRingGap,
  measureByNewMicrometer,
  pistonsUsing,
  removePiston,
  removeRingGap,
  setPiston,
  setRingGap,
} from '../../../src/job/piston-commands'
import type { Job } from '../../../src/job/schema'
import { first } from '../core/measured-bore'
import { sampleJob } from './sample-job'

const { pistons: _, ...bare } = sampleJob
const start: Job = bare
const bore = first(start.bores)
const at = { boreId: bore.id, surveyId: first(bore.surveys).id }
const gapsOf = (job: Job) => first(first(job.bores).surveys).ringGaps
let next = 0
const ids = () => `new-${next++}`

describe('pistons of a job', () => {
  it('are added with the micrometer of the one before, changed, and taken out to nothing', () => {
    const one = addPiston(start, 'fitted', () => 'p1', bore.id)
    expect(one.pistons).toEqual([{ id: 'p1', state: 'fitted', boreId: bore.id }])
    const measured = measureByNewMicrometer(one, 'p1', () => 'm1')
    expect(measured.standards.at(-1)).toEqual({ id: 'm1', kind: 'micrometer' })
    const two = addPiston(
      addPiston(measured, 'at-hand', () => 'p2'),
      'obtainable',
      () => 'p3',
    )
    expect(two.pistons?.slice(1)).toEqual([
      { id: 'p2', state: 'at-hand', standardId: 'm1' },
      { id: 'p3', state: 'obtainable' },
    ])
    const sized = setPiston(two, 'p2', { readMm: 79.96, grade: 'A' })
    expect(sized.pistons?.[1]).toMatchObject({ readMm: 79.96, grade: 'A' })
    expect(setPiston(sized, 'p2', { readMm: 79.96 })).toBe(sized)
    expect(setPiston(sized, 'p2', { grade: undefined }).pistons?.[1]).not.toHaveProperty('grade')
    expect(['p1', 'p2', 'p3'].reduce(removePiston, sized)).not.toHaveProperty('pistons')
  })

  it('throw for one that is not there', () => {
    expect(() => setPiston(start, 'none', {})).toThrow('none')
    expect(() => removePiston(start, 'none')).toThrow('none')
  })

  it('stay when the bore that they ran in goes, and keep the job in order', () => {
    const two: Job = { ...start, bores: [bore, { ...bore, id: 'second', surveys: [] }] }
    const job = addPiston(
      addPiston(two, 'fitted', () => 'p1', bore.id),
      'fitted',
      () => 'p2',
      'second',
    )
    const left = removeBore(job, bore.id)
    expect(left.pistons).toEqual([
      { id: 'p1', state: 'fitted' },
      { id: 'p2', state: 'fitted', boreId: 'second' },
    ])
    expect(crossProblems(left).filter(({ path }) => path[0] === 'pistons')).toEqual([])
  })

  it('hold the micrometer that they were measured with', () => {
    const job = measureByNewMicrometer(
      addPiston(start, 'at-hand', () => 'p1'),
      'p1',
      () => 'm1',
    )
    expect(pistonsUsing(job, 'm1').map(({ id }) => id)).toEqual(['p1'])
    expect(() => removeInstrument(job, 'standards', 'm1')).toThrow('p1')
    const other = addStandard(job, 'micrometer', () => 'm2')
    expect(removeInstrument(other, 'standards', 'm2').standards).toEqual(job.standards)
  })
})

describe('ring gaps of a survey', () => {
  it('are added, changed and taken out to nothing', () => {
    const { ringGaps: __, ...survey } = first(bore.surveys)
    const empty: Job = { ...start, bores: [{ ...bore, surveys: [survey] }] }
    const one = addRingGap(empty, at, { depthMm: 20, gapMm: 0.4 })
    const two = addRingGap(one, at, { depthMm: 80, gapMm: 0.3 })
    expect(gapsOf(two)).toHaveLength(2)
    expect(gapsOf(setRingGap(two, at, 1, { gapMm: 0.35 }))?.[1]).toEqual({ depthMm: 80, gapMm: 0.35 })
    expect(setRingGap(two, at, 1, { gapMm: 0.3 })).toBe(two)
    expect(gapsOf(removeRingGap(removeRingGap(two, at, 0), at, 0))).toBeUndefined()
    expect(() => removeRingGap(two, at, 2)).toThrow('place 2')
  })
})

const seed = 20261127

describe(`pistons added, changed and removed in any order (seed ${seed})`, () => {
  it('never leave a reference to what is gone, nor two of one name', () => {
    const steps = fc.array(fc.tuple(fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 9 })), {
      maxLength: 25,
    })
    fc.assert(
      fc.property(steps, (all) => {
        const job = all.reduce<Job>((now, [kind, which]) => {
          const piston = now.pistons?.[which % (now.pistons.length || 1)]
          if (kind === 0 || !piston) return addPiston(now, which % 2 ? 'fitted' : 'at-hand', ids, bore.id)
          if (kind === 1) return removePiston(now, piston.id)
          if (kind === 2) return measureByNewMicrometer(now, piston.id, ids)
          if (kind === 3) return setPiston(now, piston.id, { heightMm: which })
          const free = now.standards.find(
            ({ id }) =>
              pistonsUsing(now, id).length === 0 && now.setUps.every((setUp) => setUp.standardId !== id),
          )
          return free ? removeInstrument(now, 'standards', free.id) : now
        }, start)
        expect(crossProblems(job)).toEqual(crossProblems(start))
      }),
      { seed, numRuns: 200 },
    )
  })
})
