import { describe, expect, it } from 'vitest'
import { jsonExpectations, problemCodes } from '../../../src/core/problem'
import { problemPlace, problemText } from '../../../src/words/findings'
import { sampleFlaws } from './sample-flaws'

describe('a problem', () => {
  it.each(problemCodes)('of the code %s says what is wrong and how to mend it', (code) => {
    const [flaw, sentence] = sampleFlaws[code]
    expect(problemText(flaw)).toBe(sentence)
  })

  it.each(jsonExpectations)('of JSON that expects %s is a sentence, also where the text ends', (expected) => {
    expect(problemText({ code: 'not-json', expected, found: 'x' })).toMatch(/^[A-Z].*; there is “x”\.$/)
    expect(problemText({ code: 'not-json', expected, found: '' })).toMatch(/Is the file complete\?$/)
  })

  it('hints at the decimal point where a number begins with a superfluous zero', () => {
    expect(problemText({ code: 'not-json', expected: 'no-leading-zero', found: '032' })).toMatch(
      /54\.032, not 54,032/,
    )
  })
})

describe('the place of a problem', () => {
  it.each([
    ['bores[0].name (line 12, column 5)', { path: 'bores[0].name', line: 12, column: 5 }],
    ['bores[0].name (line 12)', { path: 'bores[0].name', line: 12 }],
    ['bores[0].name', { path: 'bores[0].name' }],
    ['line 3, column 1', { path: '', line: 3, column: 1 }],
    ['the file', { path: '' }],
  ])('is %s', (text, place) => {
    expect(problemPlace({ code: 'text-blank', ...place })).toBe(text)
  })
})
