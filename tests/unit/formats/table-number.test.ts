import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { decimalMarkOf, readTableNumber, writeTableNumber } from '../../../src/formats/table-number'
import { runCount } from '../../proof/run-count'

describe('a number in a table', () => {
  it.each([
    ['54.012', 'point', 54.012],
    [' 54,012 ', 'comma', 54.012],
    ['+7', undefined, 7],
    ['\u22127', 'point', -7],
    ['-0', 'point', 0],
    ['.5', 'point', 0.5],
  ] as const)('%j with a decimal %s is %s', (text, mark, value) => {
    expect(readTableNumber(text, mark)).toEqual({ ok: true, value })
  })

  it.each([
    ['54,012', 'point', 'other-mark'],
    ['4.200', 'comma', 'other-mark'],
    ['54.012', undefined, 'mark-open'],
    ['1.054,012', 'comma', 'both-marks'],
    ['1,054,012', 'comma', 'several-marks'],
    ['54 012', 'point', 'inner-space'],
    ['54.O12', 'point', 'letters'],
    ['54.012"', 'point', 'other-sign'],
    ['5-4', 'point', 'sign-place'],
    ['-', 'point', 'sign-place'],
    ['9'.repeat(25), 'point', 'too-long'],
    ['9999999999', 'point', 'too-large'],
  ] as const)('%j with a decimal %s is refused: %s', (text, mark, why) => {
    expect(readTableNumber(text, mark)).toEqual({ ok: false, why })
  })

  it('is read as it was written, with either mark and without an exponent (seed 3)', () => {
    const numbers = fc
      .double({ min: -1e6, max: 1e6, noNaN: true })
      .map((value) => Math.round(value * 1e9) / 1e9)
    fc.assert(
      fc.property(numbers, fc.constantFrom('point', 'comma'), (value, mark) => {
        const text = writeTableNumber(value, mark)
        expect(text).toMatch(/^-?\d+([.,]\d+)?$/)
        expect(readTableNumber(text, mark)).toEqual({ ok: true, value: value + 0 })
      }),
      { seed: 3, numRuns: runCount({ quick: 300, full: 20000 }) },
    )
  })
})

describe('the decimal mark of a table', () => {
  it('is the one that its cells hold, and open where some hold each', () => {
    expect(decimalMarkOf(['54,012', '8', 'a'])).toBe('comma')
    expect(decimalMarkOf(['54.012', '8', '31.05.2024'])).toBe('point')
    expect(decimalMarkOf(['8', ''])).toBe('point')
    expect(decimalMarkOf(['54.012', '4,2'])).toBeUndefined()
  })
})
