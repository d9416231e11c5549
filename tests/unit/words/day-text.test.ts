import { describe, expect, it } from 'vitest'
import { dayText } from '../../../src/words/day-text'

describe('a day', () => {
  it.each([
    ['2026-03-09', '9 March 2026'],
    ['2024-02-29', '29 February 2024'],
    ['1999-12-31', '31 December 1999'],
  ])('kept as %s is written %s', (kept, written) => expect(dayText(kept)).toBe(written))

  it.each(['', '2026', '2026-13-01', 'yesterday'])('that is %j is refused', (kept) =>
    expect(() => dayText(kept)).toThrow(RangeError),
  )
})
