import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { linesWithin } from '../../../src/app/send-hand'

/** As a typewriter: each character is 10 wide. */
const pen = { measureText: (text: string) => ({ width: 10 * [...text].length }) as TextMetrics }

describe('lines within a width', () => {
  it('break at spaces, and cut a word only where it is wider than the line', () => {
    expect(linesWithin(pen, 'inside the wear limit', 80)).toEqual(['inside', 'the wear', 'limit'])
    expect(linesWithin(pen, 'a verylongname b', 50)).toEqual(['a', 'veryl', 'ongna', 'me b'])
    expect(linesWithin(pen, '  ', 80)).toEqual([])
  })

  it('lose no letter and are never too wide (seed 51)', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), fc.integer({ min: 1, max: 20 }), (text, most) => {
        const lines = linesWithin(pen, text, 10 * most)
        expect(lines.join('').replace(/\s/g, '')).toBe(text.replace(/\s/g, ''))
        for (const line of lines) expect([...line].length).toBeLessThanOrEqual(most)
      }),
      { seed: 51, numRuns: 300 },
    )
  })
})
