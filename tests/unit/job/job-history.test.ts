import { describe, expect, it } from 'vitest'
import { renameJob, setRepeats } from '../../../src/job/commands'
import { longestHistory, readHistory, writeHistory } from '../../../src/job/job-history'
import { createJobStore, mostUndone } from '../../../src/job/job-store'
import type { Job } from '../../../src/job/schema'
import { sampleJob } from './sample-job'

function storeAfter(changes: readonly ((job: Job) => Job)[]) {
  const store = createJobStore(sampleJob)
  for (const [index, change] of changes.entries()) store.getState().perform(`change ${index}`, change)
  return store
}

const reading = (size: number) => (job: Job) =>
  setRepeats(job, 'bore', 'survey', { depthMm: 62, axisDegrees: 0 }, [size])
const named = (name: string) => (job: Job) => renameJob(job, name)

/** A store that took up the job and its history from their texts, as after a reload. */
function reloaded(store: ReturnType<typeof createJobStore>) {
  const { job, past, future } = store.getState()
  const text = writeHistory(job, { past, future })
  const again = createJobStore(sampleJob)
  const read: Job = JSON.parse(JSON.stringify(job))
  again.getState().openJob(read, readHistory(text, read))
  return again
}

describe('the history of a job', () => {
  it('undoes and redoes after a reload to what the documents were before it', () => {
    const before = storeAfter([named('A'), reading(54.02), reading(54.021), named('B')])
    before.getState().undo()
    const after = reloaded(before)
    for (const step of ['undo', 'undo', 'undo', 'undo', 'redo', 'redo', 'redo', 'redo', 'redo'] as const) {
      before.getState()[step]()
      after.getState()[step]()
      expect(after.getState().job).toEqual(before.getState().job)
      expect(after.getState().past.map(({ label }) => label)).toEqual(
        before.getState().past.map(({ label }) => label),
      )
    }
    expect(after.getState().job.name).toBe('B')
  })

  it('takes the change of one reading for a few dozen characters', () => {
    const { job, past, future } = storeAfter([reading(54.02), reading(54.021)]).getState()
    expect(writeHistory(job, { past, future }).length).toBeLessThan(400)
  })

  it('lets go of what was longest ago where it would grow too long, and of nothing else', () => {
    const store = storeAfter(Array.from({ length: 60 }, (_, n) => named(`name ${n}`)))
    const long = { ...store.getState().job, note: 'x'.repeat(9000) }
    const past = store
      .getState()
      .past.map(({ label, job }, n) => ({ label, job: { ...job, note: `${n}${'y'.repeat(9000)}` } }))
    const text = writeHistory(long, { past, future: [] })
    expect(text.length).toBeLessThan(longestHistory + 100)
    const kept = readHistory(text, long).past
    expect(kept.length).toBeGreaterThan(20)
    expect(kept.map(({ job }) => job)).toEqual(past.slice(-kept.length).map(({ job }) => job))
  })

  it('holds as many entries as can be undone', () => {
    const store = storeAfter(Array.from({ length: mostUndone + 20 }, (_, n) => named(`${n}`)))
    const after = reloaded(store).getState()
    expect(after.past).toHaveLength(mostUndone)
    expect(after.past[0]?.job.name).toBe('19')
  })
})

describe('a history that is damaged', () => {
  it.each([
    ['no JSON', '{"past":['],
    ['another shape', '{"past":[{"label":1,"difference":[]}],"future":[]}'],
    ['a list of steps', '[]'],
    ['empty', ''],
  ])('is no history where it is %s', (_, text) => {
    expect(readHistory(text, sampleJob)).toEqual({ past: [], future: [] })
  })

  it('is kept up to the first step that does not fit', () => {
    const { job, past } = storeAfter([named('A'), named('B'), named('C')]).getState()
    const text = writeHistory(job, { past, future: [] })
    const spoilt = text.replace('"path":"/name","value":"A"', '"path":"/nam","value":"A"')
    expect(spoilt).not.toBe(text)
    expect(readHistory(spoilt, job).past.map((entry) => entry.job.name)).toEqual(['B'])
  })

  it('leaves the job as it is where a step leads to what is no job, and offers nothing further back', () => {
    const { job, past } = storeAfter([named('A'), named('B')]).getState()
    const text = writeHistory(job, { past, future: [] }).replace('"value":"A"', '"value":17')
    const store = createJobStore(sampleJob)
    store.getState().openJob(job, readHistory(text, job))
    expect(store.getState().past).toHaveLength(2)
    store.getState().undo()
    expect(store.getState().job).toBe(job)
    expect(store.getState().past).toEqual([])
  })
})
