import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dayAfter } from '../../../../src/core/outlook/day-after'
import { runCount } from '../../../proof/run-count'

const seed = 8001

describe('a day so many days after another', () => {
  it.each([
    // Leap years by the Gregorian rule: 2024 and 2000 have a 29 February, 2025 and 2100 none.
    ['2024-02-28', 1, '2024-02-29'],
    ['2025-02-28', 1, '2025-03-01'],
    ['2000-02-28', 1, '2000-02-29'],
    ['2100-02-28', 1, '2100-03-01'],
    ['2025-12-31', 1, '2026-01-01'],
    ['2026-11-25', 365, '2027-11-25'],
    ['2026-03-09', 0, '2026-03-09'],
    ['2026-03-09', 13.99, '2026-03-22'],
  ])('from %s, %s days on, is %s', (day, days, then) => {
    expect(dayAfter(day, days)).toBe(then)
  })

  it('is none past the year 9999, and no guess for what is no day', () => {
    expect(dayAfter('9999-12-30', 1)).toBe('9999-12-31')
    expect(dayAfter('9999-12-31', 1)).toBeUndefined()
    expect(dayAfter('2026-01-01', 1e300)).toBeUndefined()
    for (const no of ['2026-02-30', '2026-13-01', '26-01-01', 'today', '']) {
      expect(() => dayAfter(no, 1), no).toThrow(/year-month-day/)
    }
  })

  it(`is reached in two steps as in one, and never lies before it, seed ${seed}`, () => {
    const days = fc.integer({ min: 0, max: 200_000 })
    fc.assert(
      fc.property(days, days, (one, more) => {
        const between = dayAfter('1970-01-01', one) ?? ''
        const then = dayAfter(between, more) ?? ''
        expect(then).toBe(dayAfter('1970-01-01', one + more))
        expect(then >= between).toBe(true)
      }),
      { seed, numRuns: runCount({ quick: 300, full: 5000 }) },
    )
  })
})
