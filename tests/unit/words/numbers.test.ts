import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  chances,
  degrees,
  depth,
  differenceWithDoubt,
  differenceWithInterval,
  doubtInMicrons,
  doubtNeeded,
  inMicrons,
  microns,
  percent,
  placeText,
  plain,
  plusMinusMicrons,
  size,
  sizeWithDoubt,
  temperature,
} from '../../../src/words/numbers'

describe('figures', () => {
  it.each([
    [size(54), '54.000'],
    [size(54.0124), '54.012'],
    [size(-0.0001), '0.000'],
    [microns(0.0241), '24'],
    [microns(0.0241, { sign: true }), '+24'],
    [microns(-0.003, { sign: true }), '−3'],
    [microns(-0.0001), '0'],
    [microns(-0.0001, { sign: true }), '0'],
    [microns(0, { sign: true }), '0'],
    [inMicrons(0.015), '15 µm'],
    [plusMinusMicrons(0.0046), '± 5 µm'],
    [sizeWithDoubt(54.0121, 0.0049), '54.012 ± 0.005'],
    [sizeWithDoubt(54.0121, 0.012), '54.012 ± 0.012'],
    [differenceWithDoubt(0.0241, 0.0037), '+24 ± 4 µm'],
    [differenceWithDoubt(-0.0241, 0.0037), '−24 ± 4 µm'],
    [differenceWithInterval(0.013, 0.0072, 0.0188), '13 µm (7 to 19)'],
    [differenceWithInterval(0.003, 0, 0.0071), '3 µm (0 to 8)'],
    [differenceWithInterval(0.003, -0.002, 0.0081), '+3 µm (−2 to +9)'],
    [degrees(0), '0°'],
    [degrees(-0), '0°'],
    [degrees(22.5), '22.5°'],
    [depth(8), '8 mm'],
    [depth(12.5), '12.5 mm'],
    [depth(100), '100 mm'],
    [depth(12.345), '12.35 mm'],
    [temperature(26), '26 °C'],
    [temperature(-3.5), '−3.5 °C'],
    [percent(0.524), '52 %'],
    [plain(0.5, 2), '0.5'],
    [placeText({ depthMm: 8, axisDegrees: 0 }), '8 mm, 0°'],
  ])('are written as people read them: %s', (written, expected) => {
    expect(written).toBe(expected)
  })

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e300])(
    'that are no measurement (%s) throw and are never written',
    (value) => {
      for (const write of [size, microns, plusMinusMicrons, degrees, depth, temperature, percent]) {
        expect(() => write(value)).toThrow(RangeError)
      }
      expect(() => sizeWithDoubt(54, value)).toThrow(RangeError)
      expect(() => doubtNeeded(value)).toThrow(RangeError)
      expect(() => chances(value)).toThrow(RangeError)
    },
  )

  it('never show a signed zero, an exponent or NaN (seed 20)', () => {
    const length = fc.double({ min: -2000, max: 2000, noNaN: true })
    fc.assert(
      fc.property(length, (mm) => {
        for (const text of [size(mm), microns(mm, { sign: true }), depth(mm), degrees(mm)]) {
          expect(text).not.toMatch(/[eN]|^[−+-]0(\.0+)?(?![.\d])/)
        }
      }),
      { seed: 20, numRuns: 2000 },
    )
  })
})

describe('a doubt', () => {
  it('is rounded up, as GUM (JCGM 100:2008) 7.2.6 rounds 10.47 to 11 and, with common sense, 28.05 to 28', () => {
    expect(doubtInMicrons(0.01047)).toBe(11)
    expect(doubtInMicrons(0.02805)).toBe(28)
  })

  it('is 1 µm at least, and 0 only where there is none', () => {
    expect(doubtInMicrons(0.00001)).toBe(1)
    expect(doubtInMicrons(0)).toBe(0)
  })

  it('cannot be negative', () => {
    expect(() => doubtInMicrons(-0.001)).toThrow(RangeError)
  })

  it('is never shown more than a twentieth of a micron smaller than it is (seed 21)', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (mm) => {
        const shown = doubtInMicrons(mm)
        expect(shown).toBeGreaterThanOrEqual(mm * 1000 - 0.05 - 1e-6)
        expect(shown).toBeLessThan(Math.max(1, mm * 1000) + 1)
      }),
      { seed: 21, numRuns: 2000 },
    )
  })

  it.each([
    [0.00169, '± 1.6 µm'],
    [0.002, '± 2 µm'],
    [0.0127, '± 12 µm'],
    [0.00051, '± 0.5 µm'],
    [0.00049, undefined],
  ])('that is needed is rounded down, and left out where no gauge reaches it: %s', (mm, expected) => {
    expect(doubtNeeded(mm)).toBe(expected)
  })
})

describe('the ends of an interval', () => {
  it('are rounded outwards, so that what is shown holds what was computed (seed 22)', () => {
    const positive = fc.double({ min: 0, max: 0.5, noNaN: true })
    fc.assert(
      fc.property(positive, positive, positive, (low, more, rest) => {
        const text = differenceWithInterval(low + more, low, low + more + rest)
        const [, from, to] = /\((\d+) to (\d+)\)/.exec(text) ?? []
        expect(Number(from)).toBeLessThanOrEqual(low * 1000 + 0.05 + 1e-6)
        expect(Number(to)).toBeGreaterThanOrEqual((low + more + rest) * 1000 - 0.05 - 1e-6)
      }),
      { seed: 22, numRuns: 2000 },
    )
  })
})

describe('chances', () => {
  it.each([
    [0.75, '3 chances in 4'],
    [0.73, '3 chances in 4'],
    [0.66, '2 chances in 3'],
    [0.6, '3 chances in 5'],
    [0.9, '9 chances in 10'],
    [0.949, '9 chances in 10'],
    [0.95, '19 chances in 20'],
    [0.98, '49 chances in 50'],
    [0.989, '99 chances in 100'],
    [0.995, 'more than 99 chances in 100'],
    [1, 'more than 99 chances in 100'],
    [0.5, 'about even'],
    [0.45, 'about even'],
    [0.55, 'about even'],
    [0.4, '2 chances in 5'],
    [0.25, '1 chance in 4'],
    [0.05, '1 chance in 20'],
    [0.051, '1 chance in 10'],
    [0, 'less than 1 chance in 100'],
  ])('of %s are said as %s', (probability, expected) => {
    expect(chances(probability)).toBe(expected)
  })

  it('never say 19 in 20 or better of what is not proven, nor less of what is (seed 23)', () => {
    const asShare = (text: string) => {
      const [, of, all] = /(\d+) chances? in (\d+)/.exec(text) ?? []
      return of && all ? Number(of) / Number(all) : 0.5
    }
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (p) => {
        const share = asShare(chances(p))
        expect(share >= 0.95).toBe(p >= 0.95)
        expect(Math.abs(share - p)).toBeLessThan(0.06)
      }),
      { seed: 23, numRuns: 2000 },
    )
  })
})
