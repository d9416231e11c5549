import fc from 'fast-check'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { languages } from '../../../src/words/languages'

beforeEach(() => vi.resetModules())
afterEach(() => vi.resetModules())

/** Modules with texts as they are in a language. */
async function inLanguage(code: string) {
  const { languageOf, speakIn } = await import('../../../src/words/languages')
  const language = languageOf(code)
  if (!language) throw new Error(`No language ${code}`)
  await speakIn(language)
  return {
    ...(await import('../../../src/words/words')),
    ...(await import('../../../src/words/numbers')),
    ...(await import('../../../src/words/day-text')),
    ...(await import('../../../src/words/spoken')),
    ...(await import('../../../src/words/simulation')),
  }
}

describe.each(languages)('figures in $name', ({ code }) => {
  it('have the decimal mark and the names of months that Unicode has for it (CLDR, by way of Intl)', async () => {
    const { words, plain, dayText } = await inLanguage(code)
    const { locale, decimalMark } = words.language
    const parts = new Intl.NumberFormat(locale).formatToParts(1.5)
    expect(decimalMark).toBe(parts.find(({ type }) => type === 'decimal')?.value)
    expect(plain(1.5, 3)).toBe(`1${decimalMark}5`)
    const long = new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' })
    for (let month = 0; month < 12; month += 1) {
      const day = new Date(Date.UTC(2026, month, 9))
      expect(dayText(day.toISOString().slice(0, 10))).toBe(long.format(day))
    }
  })

  it('are read back as what they were, typed as they are written (seed 26)', async () => {
    const { plain, withDecimals, readNumber } = await inLanguage(code)
    fc.assert(
      fc.property(fc.integer({ min: -999_999_999, max: 999_999_999 }), (millionths) => {
        const value = millionths / 1e6
        expect(readNumber(plain(value, 6))).toEqual({ ok: true, value: value === 0 ? 0 : value })
        expect(readNumber(withDecimals(value, 3, 6))).toEqual({ ok: true, value: value === 0 ? 0 : value })
      }),
      { seed: 26 },
    )
  })

  it('say every digit behind the mark, and no sign as it is written', async () => {
    const { words, spoken, sizeWithDoubt } = await inLanguage(code)
    const said = spoken(`${sizeWithDoubt(54.0124, 0.0046)} mm`)
    expect(said).toContain(`54 ${words.spoken.point} 0 1 2`)
    expect(said).toContain(words.spoken.plusMinus)
    expect(said).toContain(words.spoken.millimetres)
    expect(said).not.toMatch(/[±µ.,]|\bmm\b/)
  })
})

describe('German', () => {
  it('has a comma before decimals, a point in thousands, and a day before its month', async () => {
    const { size, sizeWithDoubt, differenceWithInterval, depth, countText, dayText, degrees } =
      await inLanguage('de')
    expect(size(54.0124)).toBe('54,012')
    expect(sizeWithDoubt(54.0121, 0.0049)).toBe('54,012 ± 0,005')
    expect(differenceWithInterval(0.003, -0.002, 0.0081)).toBe('+3 µm (−2 bis +9)')
    expect(depth(12.5)).toBe('12,5 mm')
    expect(degrees(22.5)).toBe('22,5°')
    expect(countText(20_000)).toBe('20.000')
    expect(dayText('2026-03-09')).toBe('9. März 2026')
  })

  it('has one of a thing, two and none', async () => {
    const { words } = await inLanguage('de')
    const { table, surface, problems } = words
    expect([0, 1, 2].map((count) => table.readings(count))).toEqual([
      '0 Ablesungen',
      '1 Ablesung',
      '2 Ablesungen',
    ])
    expect([1, 2].map((count) => surface.photographs(count))).toEqual(['ein Foto', '2 Fotos'])
    expect([1, 2].map((count) => problems['more-problems']({ code: 'more-problems', count }))).toEqual([
      'Es gibt noch einen weiteren Fehler.',
      'Es gibt noch 2 weitere Fehler.',
    ])
    expect(words.app.and(['Auslass', 'Spülkanal', 'Einlass'])).toBe('Auslass, Spülkanal und Einlass')
  })
})
