import fc from 'fast-check'
import { expect, test } from 'vitest'
import { mostVersions, versionsToDrop } from '../../../src/storage/thinned-versions'

const hour = 3_600_000
const day = 24 * hour
const now = Date.UTC(2026, 2, 9, 12)

const agesOf = (ages: readonly number[]) => ages.map((age, key) => ({ key, at: now - age }))

test('every version of the last two hours stays', () => {
  const every10 = Array.from({ length: 12 }, (_, n) => n * 600_000)
  expect(versionsToDrop(agesOf(every10), now)).toEqual([])
})

test('of an hour of yesterday, and of a day of last month, only the last version stays', () => {
  const yesterday = [30.1, 30.2, 30.9].map((hours) => hours * hour)
  expect(versionsToDrop(agesOf(yesterday), now)).toEqual([1, 2])
  const lastMonth = [31.6, 31.9, 32.6].map((days) => days * day)
  expect(versionsToDrop(agesOf(lastMonth), now)).toEqual([1])
})

test('the newest always stays, never more than the most stay, and thinning again drops nothing, 300 sets of ages (seed 7)', () => {
  const ages = fc.array(fc.integer({ min: 0, max: 400 * day }), { minLength: 1, maxLength: 120 })
  fc.assert(
    fc.property(ages, (some) => {
      const versions = agesOf(some)
      const dropped = new Set(versionsToDrop(versions, now))
      const kept = versions.filter(({ key }) => !dropped.has(key))
      expect(kept.length).toBeLessThanOrEqual(mostVersions)
      expect(Math.max(...kept.map(({ at }) => at))).toBe(Math.max(...versions.map(({ at }) => at)))
      expect(versionsToDrop(kept, now)).toEqual([])
    }),
    { seed: 7, numRuns: 300 },
  )
})
