import { describe, expect, it } from 'vitest'
import type { Photograph, SurfaceFinding } from '../../../src/core/measured'
import { checkJob } from '../../../src/job/check-job'
import { photographHashes, withoutPhotographs, withPhotographs } from '../../../src/job/embedded-photographs'
import {
  addPhotograph,
  addSurfaceFinding,
  removePhotograph,
  removeSurfaceFinding,
  setSurfaceFinding,
  shapeOfPlace,
} from '../../../src/job/surface-commands'
import { sampleJob, spoilt } from './sample-job'

const at = { boreId: 'bore', surveyId: 'survey' }
const survey = ['bores', 0, 'surveys', 0] as const
const place = [...survey, 'surfaceFindings', 0] as const
const rust: SurfaceFinding = {
  id: 'rust',
  kind: 'rust',
  shape: 'patch',
  fromDepthMm: 50,
  toDepthMm: 60,
  fromDegrees: 0,
  toDegrees: 360,
}
const photo: Photograph = { hash: 'cd'.repeat(32), name: 'rust.jpg', widthPx: 800, heightPx: 600 }

function findingsOf(job: typeof sampleJob): readonly SurfaceFinding[] {
  return job.bores[0]?.surveys[0]?.surfaceFindings ?? []
}

describe('changes to surface findings', () => {
  it('add one at the end, change it, and take it out again, each leaving a job that a file may hold', () => {
    const added = addSurfaceFinding(sampleJob, at, rust)
    expect(findingsOf(added).map(({ id }) => id)).toEqual(['streak', 'rust'])
    const changed = setSurfaceFinding(added, at, 'rust', { catchesNail: false, acrossMm: 3 })
    expect(findingsOf(changed)[1]).toEqual({ ...rust, catchesNail: false, acrossMm: 3 })
    const notTried = setSurfaceFinding(changed, at, 'rust', { catchesNail: undefined })
    expect(findingsOf(notTried)[1]).toEqual({ ...rust, acrossMm: 3 })
    const removed = removeSurfaceFinding(notTried, at, 'rust')
    expect(removed).toEqual(sampleJob)
    for (const job of [added, changed, notTried]) expect(checkJob(job).ok).toBe(true)
  })

  it('leave no empty list behind', () => {
    const none = removeSurfaceFinding(sampleJob, at, 'streak')
    expect(none.bores[0]?.surveys[0]).not.toHaveProperty('surfaceFindings')
    expect(addSurfaceFinding(none, at, rust).bores[0]?.surveys[0]?.surfaceFindings).toEqual([rust])
  })

  it('give back the same job where nothing changes, and throw for a finding that is not there', () => {
    expect(setSurfaceFinding(sampleJob, at, 'streak', { kind: 'scratch' })).toBe(sampleJob)
    expect(() => removeSurfaceFinding(sampleJob, at, 'none')).toThrow(/No entry with the id "none"/)
    expect(() => setSurfaceFinding(sampleJob, { ...at, surveyId: 'x' }, 'streak', {})).toThrow(/"x"/)
  })

  it('add a photograph once, and take it off', () => {
    const with1 = addPhotograph(sampleJob, at, 'streak', photo)
    expect(findingsOf(with1)[0]?.photos).toHaveLength(2)
    expect(addPhotograph(with1, at, 'streak', { ...photo, name: 'again.jpg' })).toBe(with1)
    expect(removePhotograph(with1, at, 'streak', photo.hash)).toEqual(sampleJob)
    const bare = removePhotograph(sampleJob, at, 'streak', 'ab'.repeat(32))
    expect(findingsOf(bare)[0]).not.toHaveProperty('photos')
  })
})

describe('the shape of a mark', () => {
  it('is a streak from four times as long as wide on, and any line along the stroke', () => {
    const of = (depth: number, degrees: number) =>
      shapeOfPlace(
        { fromDepthMm: 0, toDepthMm: depth, fromDegrees: 350, toDegrees: 350 + degrees },
        360 / Math.PI,
      )
    expect(of(41, 10)).toBe('streak')
    expect(of(39, 10)).toBe('patch')
    expect(of(5, 0)).toBe('streak')
  })
})

describe('surface findings in a file', () => {
  it.each([
    ['past the end of the bore', [...place, 'toDepthMm'], 90, 'deeper-than-bore', 'toDepthMm'],
    ['upside down', [...place, 'fromDepthMm'], 50, 'low-above-high', 'fromDepthMm'],
    ['of a kind that is none', [...place, 'kind'], 'dent', 'not-one-of', 'kind'],
    ['at an angle that is none', [...place, 'toDegrees'], 361, 'out-of-range', 'toDegrees'],
    [
      'with a photograph of no hash',
      [...place, 'photos', 0, 'hash'],
      'photo.jpg',
      'not-a-hash',
      'photos[0].hash',
    ],
    ['with half a pixel', [...place, 'photos', 0, 'widthPx'], 0.5, 'wrong-kind', 'photos[0].widthPx'],
  ] as const)('are refused %s, with the place', (_, path, value, code, field) => {
    const checked = checkJob(spoilt([...path], value))
    const problems = checked.ok ? [] : checked.problems.map(({ problem }) => problem)
    expect(problems.map((problem) => [problem.code, problem.path])).toEqual([
      [code, `bores[0].surveys[0].surfaceFindings[0].${field}`],
    ])
  })

  it('of one id are refused', () => {
    const [first] = findingsOf(sampleJob)
    const checked = checkJob(spoilt([...survey, 'surfaceFindings', 1], first))
    expect(checked.ok ? [] : checked.problems.map(({ problem }) => problem.code)).toEqual(['duplicate-id'])
  })

  it('whose photographs are damaged are refused', () => {
    const checked = checkJob(spoilt(['photographs', 0, 'base64'], 'ö'))
    expect(checked.ok ? [] : checked.problems.map(({ problem }) => problem)).toEqual([
      { code: 'not-base64', path: 'photographs[0].base64' },
    ])
  })
})

describe('photographs in a file', () => {
  it('are those that its findings name, and stay behind when the job is taken out', () => {
    const { job, photographs } = withoutPhotographs(sampleJob)
    expect(job).not.toHaveProperty('photographs')
    expect(photographs).toHaveLength(1)
    expect(photographHashes(job)).toEqual(['ab'.repeat(32)])
    const stranger = { hash: photo.hash, type: 'image/jpeg', base64: 'AA==' } as const
    expect(withPhotographs(job, [...photographs, stranger])).toEqual(sampleJob)
    expect(withPhotographs(job, [stranger])).toBe(job)
    expect(withoutPhotographs(job)).toEqual({ job, photographs: [] })
  })
})
