import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import type { LanguageTable } from '../../../src/words/language'
import { languageFor, languageOf, languages } from '../../../src/words/languages'
import { english, languageProblems, leavesOf } from './text-table'

/** English with every text in brackets, as a language of its own. */
function bracketed(said: unknown): unknown {
  if (typeof said === 'string') return `[${said}]`
  if (typeof said === 'function') return (...figures: unknown[]) => bracketed(said(...figures))
  if (typeof said !== 'object' || said === null) return said
  if (Array.isArray(said)) return said.map(bracketed)
  return Object.fromEntries(Object.entries(said).map(([key, inner]) => [key, bracketed(inner)]))
}

describe('the languages', () => {
  it('begin with English and have each a code and a name of its own', () => {
    expect(languages[0]).toEqual({ code: 'en', name: 'English', isReviewed: true })
    expect(new Set(languages.map(({ code }) => code)).size).toBe(languages.length)
    expect(new Set(languages.map(({ name }) => name)).size).toBe(languages.length)
    for (const { code } of languages) expect(languageOf(code)?.code).toBe(code)
    expect(languageOf('xx')).toBeUndefined()
  })

  it('are chosen by what a browser asks for, whatever the region; English where there is none of them', () => {
    expect(languageFor([]).code).toBe('en')
    expect(languageFor(['xx-YY']).code).toBe('en')
    expect(languageFor(['xx', 'EN-us']).code).toBe('en')
    for (const { code, isReviewed } of languages) {
      expect(languageFor([`${code}-XX`, 'en']).code).toBe(isReviewed ? code : 'en')
    }
  })

  it.each(languages.filter(({ load }) => load))(
    'other than English have every text, every figure and every field that English has: $name',
    async ({ load, code }) => {
      const table = await load?.()
      expect(languageProblems(table)).toEqual([])
      expect(table?.words.language.locale.split('-')[0]).toBe(code)
    },
  )

  it('would be refused by this test with a text empty, a field lost, a figure lost, or a text too many', () => {
    expect(languageProblems(english)).toEqual([])
    const { words } = english
    const broken = {
      ...english,
      words: {
        ...words,
        extra: 'more',
        app: { ...words.app, close: '', title: () => 'Borewall' },
        bore: { ...words.bore, sentence: '{length} mm long.' },
      },
    }
    const problems = languageProblems(broken)
    expect(problems).toContain('words.extra is not in English')
    expect(problems).toContain('words.app.close is empty')
    expect(problems).toContain('words.bore.sentence has the fields length, not length, wall')
    expect(problems.some((one) => /^words\.app\.title\("⟨0⟩"\) leaves out ⟨0⟩/.test(one))).toBe(true)
  })
})

describe('the texts in use', () => {
  beforeEach(() => vi.resetModules())
  afterEach(() => vi.resetModules())

  it('are those of the language chosen before they were loaded, in every block', async () => {
    const { takeTextsFrom } = await import('../../../src/words/language')
    takeTextsFrom(bracketed(english) as LanguageTable)
    const { words } = await import('../../../src/words/words')
    const { ownerWords } = await import('../../../src/words/owner-words')
    const { scanFormWords } = await import('../../../src/words/scan-form-words')
    expect(words.app.close).toBe('[Close]')
    expect(words.app.title('Saw')).toBe('[Saw · Borewall]')
    expect(scanFormWords.title).toBe('[Form of the scan]')
    for (const { said } of leavesOf(ownerWords))
      if (typeof said === 'string') expect(said).toMatch(/^\[.*\]$/s)
  })

  it('cannot be changed any more once one was taken', async () => {
    const { takeTextsFrom } = await import('../../../src/words/language')
    await import('../../../src/words/words')
    expect(() => takeTextsFrom(undefined)).toThrow(/before texts are taken/)
  })
})
