import { expect, test } from 'vitest'
import { reminderOf } from '../../../src/app/copy-reminder'
import { sampleJob } from '../job/sample-job'

const { invented: _, ...own } = sampleJob
const at = (hour: number) => new Date(Date.UTC(2026, 2, 9, hour)).toISOString()
const now = Date.UTC(2026, 2, 9, 12)
const changed = { id: own.id, changedAt: at(10), mark: {} }

test('a job with readings that stands in no file is reminded of, and one changed since it was written to one', () => {
  expect(reminderOf(changed, own, now)).toBe('never-copied')
  expect(reminderOf({ ...changed, mark: { copiedAt: at(9) } }, own, now)).toBe('changed-since')
  expect(reminderOf({ ...changed, mark: { copiedAt: at(11) } }, own, now)).toBeUndefined()
})

test('nothing is reminded of an example, a job without readings, one that nobody changed, or another job', () => {
  expect(reminderOf(changed, sampleJob, now)).toBeUndefined()
  expect(reminderOf(changed, { ...own, bores: [] }, now)).toBeUndefined()
  expect(reminderOf({ mark: {} }, own, now)).toBeUndefined()
  expect(reminderOf(changed, { ...own, id: 'other' }, now)).toBeUndefined()
})

test('a reminder that was put away comes again a day later', () => {
  const mark = { dismissedAt: at(11) }
  expect(reminderOf({ ...changed, mark }, own, now)).toBeUndefined()
  expect(reminderOf({ ...changed, mark }, own, now + 24 * 3_600_000)).toBe('never-copied')
})
