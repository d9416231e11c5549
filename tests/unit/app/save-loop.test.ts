import { expect, test } from 'vitest'
import { createSaveLoop } from '../../../src/app/save-loop'
import { newJob } from '../../../src/job/new-job'
import type { Job } from '../../../src/job/schema'
import { ShelfError } from '../../../src/storage/shelf-error'

const noon = new Date('2026-03-09T12:00:00Z')

/** A job with a name, and a shelf whose saves end when the test says so. */
function slowShelf() {
  let count = 0
  const base = newJob(() => `id-${count++}`)
  const named = (name: string): Job => ({ ...base, name })
  const waiting: { readonly job: Job; readonly done: () => void; readonly fail: (error: Error) => void }[] =
    []
  const loop = createSaveLoop({
    now: () => noon,
    save: (job) => new Promise((done, fail) => waiting.push({ job, done, fail })),
  })
  /** Ends the oldest save that runs; the name of the job that was being saved. */
  const end = async (error?: Error) => {
    const save = waiting.shift()
    if (!save) throw new Error('Nothing is being saved')
    if (error) save.fail(error)
    else save.done()
    for (let turn = 0; turn < 5; turn += 1) await Promise.resolve()
    return save.job.name
  }
  return { loop, named, waiting, end }
}

test('a job is called saved only once its save has resolved', async () => {
  const { loop, named, end } = slowShelf()
  expect(loop.state.getState()).toEqual({ kind: 'nothing' })
  loop.put(named('first'))
  expect(loop.state.getState()).toEqual({ kind: 'saving' })
  await end()
  expect(loop.state.getState()).toEqual({ kind: 'saved', at: noon })
})

test('saves never overlap, and of the jobs that wait only the latest is saved', async () => {
  const { loop, named, waiting, end } = slowShelf()
  for (const name of ['one', 'two', 'three']) loop.put(named(name))
  expect(waiting).toHaveLength(1)
  expect(await end()).toBe('one')
  expect(loop.state.getState()).toEqual({ kind: 'saving' })
  expect(await end()).toBe('three')
  expect(waiting).toHaveLength(0)
  expect(loop.state.getState()).toEqual({ kind: 'saved', at: noon })
})

test('a change that is undone while it is being saved leaves the job before it on the shelf', async () => {
  const { loop, named, end } = slowShelf()
  const before = named('before')
  loop.put(before)
  await end()
  loop.put(named('after'))
  loop.put(before)
  expect(await end()).toBe('after')
  expect(loop.state.getState()).toEqual({ kind: 'saving' })
  expect(await end()).toBe('before')
  expect(loop.state.getState()).toEqual({ kind: 'saved', at: noon })
})

test('a failed save says why, and the next change or another try saves again', async () => {
  const { loop, named, end } = slowShelf()
  loop.put(named('one'))
  await end(new ShelfError('quota'))
  expect(loop.state.getState()).toEqual({ kind: 'failed', code: 'quota' })
  loop.retry()
  await end(new DOMException('no room', 'QuotaExceededError'))
  expect(loop.state.getState()).toEqual({ kind: 'failed', code: 'quota' })
  loop.put(named('two'))
  expect(await end()).toBe('two')
  expect(loop.state.getState()).toEqual({ kind: 'saved', at: noon })
})

test('a save that fails while a newer job waits does not stop the newer one', async () => {
  const { loop, named, end } = slowShelf()
  loop.put(named('one'))
  loop.put(named('two'))
  await end(new ShelfError('mismatch'))
  expect(await end()).toBe('two')
  expect(loop.state.getState()).toEqual({ kind: 'saved', at: noon })
})

test('what was opened from the shelf counts as saved and is not written again', async () => {
  const { loop, named, waiting } = slowShelf()
  const kept = named('kept')
  loop.take(kept, noon)
  loop.put(kept)
  expect(waiting).toHaveLength(0)
  expect(await loop.settled()).toEqual({ kind: 'saved', at: noon })
})

test('whoever waits for the saves learns how the last of them went', async () => {
  const { loop, named, end } = slowShelf()
  loop.put(named('one'))
  loop.put(named('two'))
  const settled = loop.settled()
  await end()
  await end(new ShelfError('unavailable'))
  expect(await settled).toEqual({ kind: 'failed', code: 'unavailable' })
})

test('going back to the job saved last while a newer one fails saves it again rather than trust the shelf', async () => {
  const { loop, named, end } = slowShelf()
  const before = named('before')
  loop.put(before)
  await end()
  loop.put(named('after'))
  loop.put(before)
  await end(new ShelfError('mismatch'))
  expect(await end()).toBe('before')
  expect(loop.state.getState()).toEqual({ kind: 'saved', at: noon })
})

test('a job that needs no saving leaves nothing to be said of the one before it', async () => {
  const { loop, named, end, waiting } = slowShelf()
  const first = named('first')
  loop.put(first)
  await end()
  loop.rest()
  expect(loop.state.getState()).toEqual({ kind: 'nothing' })
  loop.retry()
  expect(waiting).toHaveLength(0)
  loop.put(first)
  expect(await end()).toBe('first')
  expect(loop.state.getState()).toEqual({ kind: 'saved', at: noon })
})

test('a save that ends, well or badly, after there was nothing more to save leaves nothing to be said', async () => {
  const { loop, named, end } = slowShelf()
  for (const error of [undefined, new ShelfError('quota')]) {
    loop.put(named('late'))
    loop.rest()
    await end(error)
    expect(loop.state.getState()).toEqual({ kind: 'nothing' })
  }
})

test('a job that is found gone is not saved any more, and another try saves it again', async () => {
  const { loop, named, end } = slowShelf()
  loop.fail('gone')
  expect(loop.state.getState()).toEqual({ kind: 'nothing' })
  loop.put(named('one'))
  await end()
  loop.fail('gone')
  expect(loop.state.getState()).toEqual({ kind: 'failed', code: 'gone' })
  loop.retry()
  expect(await end()).toBe('one')
  expect(loop.state.getState()).toEqual({ kind: 'saved', at: noon })
})
