import { describe, expect, it, vi } from 'vitest'
import { renameJob, setRepeats, setSpec } from '../../../src/job/commands'
import { createJobStore, mostUndone } from '../../../src/job/job-store'
import { newJob } from '../../../src/job/new-job'
import { countingIds, sampleJob } from './sample-job'

const place = { depthMm: 62, axisDegrees: 0 }
const typed = (size: number) => (job: typeof sampleJob) => setRepeats(job, 'bore', 'survey', place, [size])
const named = (name: string) => (job: typeof sampleJob) => renameJob(job, name)

function storeOfSample() {
  const store = createJobStore(sampleJob)
  return { store, now: () => store.getState() }
}

describe('the store of the job', () => {
  it('undoes and redoes to the very same documents', () => {
    const { now } = storeOfSample()
    now().perform('name', named('A'))
    const { job: one } = now()
    now().perform('name', named('B'))
    const { job: two } = now()
    now().undo()
    expect(now().job).toBe(one)
    now().undo()
    expect(now().job).toBe(sampleJob)
    now().undo()
    expect(now().job).toBe(sampleJob)
    now().redo()
    now().redo()
    now().redo()
    expect(now().job).toBe(two)
  })

  it('keeps the label of what can be undone and of what can be done again', () => {
    const { now } = storeOfSample()
    now().perform('first', named('A'))
    now().perform('second', named('B'))
    now().undo()
    expect(now().past.map(({ label }) => label)).toEqual(['first'])
    expect(now().future.map(({ label }) => label)).toEqual(['second'])
  })

  it('makes no entry of a change that changes nothing', () => {
    const { now } = storeOfSample()
    expect(now().perform('name', named('Sample'))).toEqual({ ok: true })
    expect(now()).toMatchObject({ job: sampleJob, past: [], revision: 0 })
  })

  it('takes typing in one cell as one entry', () => {
    const { now } = storeOfSample()
    for (const size of [5, 54, 54.01, 54.012]) now().perform('reading', typed(size), { merge: 'cell 62 0' })
    expect(now().past).toHaveLength(1)
    expect(now().revision).toBe(4)
    now().undo()
    expect(now().job).toBe(sampleJob)
  })

  it('takes typing in another cell, or after another change, as an entry of its own', () => {
    const { now } = storeOfSample()
    now().perform('reading', typed(54), { merge: 'cell' })
    now().perform('name', named('A'))
    now().perform('reading', typed(54.01), { merge: 'cell' })
    now().perform('reading', typed(54.02), { merge: 'other cell' })
    expect(now().past).toHaveLength(4)
  })

  it('takes typing after an undo or a redo as an entry of its own', () => {
    const { now } = storeOfSample()
    now().perform('reading', typed(54), { merge: 'cell' })
    const { job: typedOnce } = now()
    now().perform('name', named('A'))
    now().undo()
    now().perform('reading', typed(54.01), { merge: 'cell' })
    now().undo()
    expect(now().job).toBe(typedOnce)
    now().redo()
    now().perform('reading', typed(54.02), { merge: 'cell' })
    expect(now().past).toHaveLength(3)
  })

  it('forgets what was undone once something else is done', () => {
    const { now } = storeOfSample()
    now().perform('name', named('A'))
    now().undo()
    now().perform('name', named('B'))
    expect(now().future).toEqual([])
  })

  it(`undoes the last ${mostUndone} changes and no more`, () => {
    const { now } = storeOfSample()
    for (let n = 1; n <= mostUndone + 20; n += 1) now().perform('name', named(`${n}`))
    expect(now().past).toHaveLength(500)
    for (let n = 0; n < mostUndone + 20; n += 1) now().undo()
    expect(now().job.name).toBe('20')
  })

  it('refuses a change that no file may hold, says why, and keeps everything', () => {
    const { now } = storeOfSample()
    const problems = [
      {
        code: 'low-above-high',
        path: 'spec.newMinMm',
        lowField: 'newMinMm',
        low: 60,
        highField: 'newMaxMm',
        high: 54.012,
      },
    ]
    expect(now().perform('limit', (job) => setSpec(job, { newMinMm: 60 }))).toEqual({ ok: false, problems })
    expect(now()).toMatchObject({
      job: sampleJob,
      past: [],
      revision: 0,
      refused: { label: 'limit', problems },
    })
    now().perform('limits', (job) => setSpec(job, { newMinMm: 60, newMaxMm: 60.012 }))
    expect(now().refused).toBeUndefined()
  })

  it('opens another job with nothing to undo', () => {
    const { now } = storeOfSample()
    now().perform('name', named('A'))
    const other = newJob(countingIds())
    now().openJob(other)
    expect(now()).toMatchObject({ job: other, past: [], future: [], revision: 2 })
  })

  it('starts the page with an empty job whose ids are its own', async () => {
    // The store of the page is one for all tests that run in this process: this is one of its own.
    vi.resetModules()
    const { jobStore } = await import('../../../src/job/job-store')
    const { job } = jobStore.getState()
    const ids = [
      job.id,
      ...[job.gauges, job.standards, job.thermometers, job.setUps, job.bores].flat().map(({ id }) => id),
    ]
    expect(new Set(ids).size).toBe(6)
  })

  it('changes nothing while it is read only, says why, and goes on afterwards', () => {
    const { now } = storeOfSample()
    now().perform('first', named('A'))
    const { job, revision } = now()
    now().setReadOnly(true)
    const done = now().perform('second', named('B'))
    expect(done).toEqual({ ok: false, problems: [{ code: 'read-only', path: '' }] })
    now().undo()
    now().redo()
    expect(now()).toMatchObject({ job, revision })
    now().setReadOnly(false)
    now().undo()
    expect(now().job).toBe(sampleJob)
  })
})
