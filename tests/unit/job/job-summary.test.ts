import { describe, expect, it } from 'vitest'
import {
  boreThumbnail,
  thumbnailColumns,
  thumbnailMark,
  thumbnailPattern,
  thumbnailRows,
} from '../../../src/job/bore-thumbnail'
import { boreMapsOf, folded, summaryOf } from '../../../src/job/job-summary'
import { isPastKeeping, listedJob } from '../../../src/job/listed-job'
import { newJob } from '../../../src/job/new-job'
import type { Job } from '../../../src/job/schema'
import { scenario } from '../scenarios/scenario'
import { countingIds, sampleJob } from './sample-job'

const block = scenario('B-four-cylinder-iron.json')
const saw = scenario('A-two-stroke-single.json')

describe('the summary of a job', () => {
  it('has the worst verdict of the engine, its latest day and how many stations were read', () => {
    expect(summaryOf(block)).toMatchObject({
      name: block.name,
      surveyedOn: '2025-03-08',
      readings: 80,
      bores: 4,
      judged: 4,
      place: 'above',
    })
    const [first] = block.bores
    if (!first) throw new Error('The block has no bore')
    expect(summaryOf({ ...block, bores: [first] })).toMatchObject({ bores: 1, judged: 1, place: 'inside' })
  })

  it('has no verdict while nothing was measured, and none from a bore for comparison', () => {
    const empty = newJob(countingIds())
    expect(summaryOf(empty)).toEqual({ name: '', readings: 0, bores: 1, judged: 0, marked: 0, sought: '' })
    const compared = block.bores.map((bore) => ({ ...bore, role: 'for-comparison' as const }))
    const summary = summaryOf({ ...block, bores: compared })
    expect(summary).toMatchObject({ readings: 80, bores: 0, judged: 0 })
    expect(summary).not.toHaveProperty('place')
    expect(summary).not.toHaveProperty('surveyedOn')
  })

  it('calls an engine inside only where every bore of it is judged to be', () => {
    const [first, second] = block.bores
    if (!first || !second) throw new Error('The block has no two bores')
    const unread = { ...second, surveys: second.surveys.map((survey) => ({ ...survey, readings: [] })) }
    const summary = summaryOf({ ...block, bores: [first, unread] })
    expect(summary).toMatchObject({ bores: 2, judged: 1 })
    expect(summary).not.toHaveProperty('place')
  })

  it('has the soonest next check of its bores, in hours, and as a day where the hours of a week are known', () => {
    const diesel = scenario('C-wet-liner-diesel.json')
    const { checkHours = Number.NaN, ...without } = summaryOf(diesel)
    expect(checkHours).toBeGreaterThan(13_600)
    expect(without).not.toHaveProperty('checkOn')
    // Surveyed on 6 October 2025 at 13,600 h: 700 h later at 70 in a week are ten weeks.
    const often = { ...diesel, hoursPerWeek: 70, spec: { ...diesel.spec, serviceIntervalHours: 700 } }
    expect(summaryOf(often)).toMatchObject({ checkHours: 14_300, checkOn: '2025-12-15' })
    const [bore] = often.bores
    if (!bore) throw new Error('The diesel has no bore')
    const again = bore.surveys.map((survey) => ({ ...survey, id: `other ${survey.id}`, date: '2025-10-01' }))
    const two = { ...often, bores: [bore, { ...bore, id: 'other', surveys: again }] }
    expect(summaryOf(two)).toMatchObject({ checkOn: '2025-12-10' })
  })

  it('is sought by name, machine, people and note, whatever their accents and capitals', () => {
    const [bore] = sampleJob.bores
    const [survey] = bore?.surveys ?? []
    if (!bore || !survey) throw new Error('The sample has no survey')
    const job: Job = {
      ...sampleJob,
      name: 'ÉTÉ',
      bores: [{ ...bore, surveys: [{ ...survey, measuredBy: 'Zoë' }] }],
    }
    expect(summaryOf(job).sought).toBe('ete\npump\nzoe\nline one\nline two')
    expect(folded('Ångström ½')).toBe('angstrom 1⁄2')
  })

  it('comes back from a stored entry as it was, and a damaged one is none', () => {
    const entry = { id: 'a', changedAt: '2026-01-01T00:00:00.000Z', ...summaryOf(block) }
    expect(listedJob({ version: 2, ...entry, later: true })).toEqual(entry)
    expect(listedJob({ version: 1, ...entry })).toBeUndefined()
    expect(listedJob({ version: 2, ...entry, readings: 'many' })).toBeUndefined()
    expect(listedJob({ version: 2, ...entry, place: 'beside' })).toBeUndefined()
    expect(listedJob(null)).toBeUndefined()
  })
})

describe('the thumbnail of a bore', () => {
  const marks = boreThumbnail(saw, saw.bores[0]?.id ?? '')

  it('has a mark for every place, and none while there is no wall', () => {
    expect(marks).toHaveLength(thumbnailColumns * thumbnailRows)
    expect(marks).toMatch(thumbnailPattern)
    expect(boreThumbnail(newJob(countingIds()), 'id-5')).toBe('')
    expect('').toMatch(thumbnailPattern)
    expect(`${marks}0`).not.toMatch(thumbnailPattern)
  })

  it('is open at a port in front, and measured no further than a reading reaches', () => {
    const markAt = (shown: string, row: number, column: number) =>
      thumbnailMark(shown[row * thumbnailColumns + column] ?? '')
    // The exhaust runs from 29 to 55 of 88 mm, 45° to each side of the front.
    const exhaust = boreThumbnail(sampleJob, 'bore')
    expect(markAt(exhaust, 4, thumbnailColumns / 2)).toEqual({ kind: 'port' })
    expect(markAt(exhaust, 4, 0)).toMatchObject({ kind: 'step' })
    // A row is 14 mm: the first lies between levels at 4 and 10 mm, the last past that at 125 mm.
    const cylinder = boreThumbnail(block, 'cylinder-1')
    expect(markAt(cylinder, 0, 0)).toMatchObject({ kind: 'step', isMeasured: true })
    expect(markAt(cylinder, thumbnailRows - 1, 0)).toMatchObject({ kind: 'step', isMeasured: false })
  })

  it('shows what is proven out, however small', () => {
    const limit = (wearLimitMm: number): Job => ({ ...saw, spec: { ...saw.spec, wearLimitMm } })
    const bore = saw.bores[0]?.id ?? ''
    expect(boreThumbnail(limit(54.5), bore)).not.toContain('+')
    expect(boreThumbnail(limit(54.005), bore)).toContain('+')
  })

  it('is made of the first six bores of the engine', () => {
    const [first] = block.bores
    if (!first) throw new Error('The block has no bore')
    const many = Array.from({ length: 9 }, (_, index) => ({
      ...first,
      id: `bore-${index}`,
      name: `${index + 1}`,
      surveys: first.surveys.map((survey) => ({ ...survey, id: `survey-${index}` })),
    }))
    const maps = boreMapsOf({ ...block, bores: many })
    expect(maps.map(({ name }) => name)).toEqual(['1', '2', '3', '4', '5', '6'])
    expect(new Set(maps.map((map) => map.marks)).size).toBe(1)
  })
})

describe('a deleted job', () => {
  it('is kept for thirty days, and one that is not deleted for good', () => {
    const now = new Date('2026-03-31T12:00:00Z')
    expect(isPastKeeping({ deletedAt: '2026-03-01T13:00:00Z' }, now)).toBe(false)
    expect(isPastKeeping({ deletedAt: '2026-03-01T11:00:00Z' }, now)).toBe(true)
    expect(isPastKeeping({}, now)).toBe(false)
    expect(isPastKeeping({ deletedAt: 'some day' }, now)).toBe(false)
  })
})
