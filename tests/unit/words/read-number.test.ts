import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plain, readNumber } from '../../../src/words/numbers'
import { readNumbers } from '../../../src/words/read-number'
import { words } from '../../../src/words/words'

describe('a typed number', () => {
  it.each([
    ['54.032', 54.032],
    ['54,032', 54.032],
    ['  54,032  ', 54.032],
    ['\u00a054.032\u00a0', 54.032],
    ['+24', 24],
    ['-3', -3],
    ['\u22123', -3],
    ['\u20133', -3],
    ['- 3', -3],
    ['+ 3,5', 3.5],
    ['.5', 0.5],
    [',5', 0.5],
    ['5.', 5],
    ['007', 7],
    ['1,234', 1.234],
  ])('is read from %j', (text, value) => {
    expect(readNumber(text)).toEqual({ ok: true, value })
  })

  it.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['1.234,5', 'both-marks'],
    ['1,234.5', 'both-marks'],
    ['1,234,567', 'several-marks'],
    ['1..5', 'several-marks'],
    ['NaN', 'letters'],
    ['Infinity', 'letters'],
    ['1e308', 'letters'],
    ['1E5', 'letters'],
    ['0x10', 'letters'],
    ['54.032 mm', 'letters'],
    ['24 µm', 'letters'],
    ['26 °C', 'letters'],
    ['∞', 'other-sign'],
    ['½', 'other-sign'],
    ["1'234", 'other-sign'],
    ['٣', 'other-sign'],
    ['.', 'other-sign'],
    ['±5', 'other-sign'],
    ['--5', 'sign-place'],
    ['+-5', 'sign-place'],
    ['5-', 'sign-place'],
    ['5-6', 'sign-place'],
    ['-', 'sign-place'],
    ['54 032', 'inner-space'],
    ['54. 032', 'inner-space'],
    ['1000000001', 'too-large'],
    ['9'.repeat(400), 'too-long'],
    [`0.${'0'.repeat(400)}1`, 'too-long'],
  ])('is refused with the reason: %j is %s', (text, why) => {
    expect(readNumber(text)).toEqual({ ok: false, why })
  })

  it('is never a negative zero', () => {
    const result = readNumber('-0,000')
    expect(result.ok && Object.is(result.value, 0)).toBe(true)
  })

  it('comes back from what was written, with either mark and either minus (seed 30)', () => {
    const value = fc.integer({ min: -20_000_000, max: 20_000_000 }).map((n) => n / 1000)
    fc.assert(
      fc.property(value, fc.boolean(), (number, comma) => {
        const text = comma ? plain(number, 3).replace('.', ',') : String(number)
        expect(readNumber(text)).toEqual({ ok: true, value: number })
      }),
      { seed: 30, numRuns: 2000 },
    )
  })

  it('is finite and within bounds, or refused with a known reason, whatever is typed (seed 31)', () => {
    const typed = fc.oneof(
      fc.string(),
      fc.string({ unit: fc.constantFrom(...'0123456789.,+-\u2212 e'), maxLength: 30 }),
    )
    fc.assert(
      fc.property(typed, (text) => {
        const result = readNumber(text)
        if (!result.ok) expect(words.number.refused[result.why]).toMatch(/\.$/)
        else {
          expect(Math.abs(result.value)).toBeLessThanOrEqual(1e9)
          expect(text).not.toMatch(/\..*,|,.*\./s)
        }
      }),
      { seed: 31, numRuns: 5000 },
    )
  })

  it('that could be read two ways is refused whatever its digits (seed 32)', () => {
    const digits = fc.string({ unit: fc.constantFrom(...'0123456789'), minLength: 1, maxLength: 4 })
    fc.assert(
      fc.property(digits, digits, digits, fc.boolean(), (a, b, c, pointFirst) => {
        const text = pointFirst ? `${a}.${b},${c}` : `${a},${b}.${c}`
        expect(readNumber(text)).toEqual({ ok: false, why: 'both-marks' })
      }),
      { seed: 32, numRuns: 500 },
    )
  })
})

describe('several numbers', () => {
  it('are read apart at spaces, line ends and semicolons, with a comma or a point each', () => {
    expect(readNumbers(' 54,012 54.013\n−1;2 ')).toEqual({ ok: true, values: [54.012, 54.013, -1, 2] })
  })

  it('are refused at the first that is none, which is named', () => {
    expect(readNumbers('54.012 54.o13 x')).toEqual({ ok: false, why: 'letters', piece: '54.o13' })
    expect(readNumbers('  ')).toEqual({ ok: false, why: 'empty', piece: '' })
  })
})
