import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { textPieces } from '../../../../src/pages/report/text-pieces'

describe('a long text in pieces', () => {
  it('is broken at a space, and between letters where there is none', () => {
    expect(textPieces('one two three', 8)).toEqual(['one two ', 'three'])
    expect(textPieces('onetwothree', 4)).toEqual(['onet', 'woth', 'ree'])
  })

  it('is the text again, in pieces that are no longer than asked, with no letter cut in two (seed 20260315)', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 300 }),
        fc.integer({ min: 1, max: 80 }),
        (text, most) => {
          const pieces = textPieces(text, most)
          expect(pieces.join('')).toBe(text)
          for (const piece of pieces) {
            expect([...piece].length).toBeLessThanOrEqual(most)
            expect(piece).not.toMatch(/\p{Cs}/u)
          }
        },
      ),
      { seed: 20260315, numRuns: 300 },
    )
  })
})
