import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { htmlBlocks } from '../../../src/formats/html-blocks'
import { element, escapedHtml, htmlText } from '../../../src/formats/html-text'
import { findingsOf } from '../../../src/job/selectors'
import { findingsPage } from '../../../src/words/findings-page'
import { hostileJob } from '../../browser/hostile-job'
import { scenario } from '../scenarios/scenario'

const seed = 20261126
const signs: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"' }

/** As a parser of HTML reads the four references that are written. */
function asRead(text: string): string {
  return text.replace(/&(amp|lt|gt|quot);/g, (_, name: string) => signs[name] ?? '')
}

describe('the text of a page', () => {
  it('holds what was written as text, whatever that is', () => {
    expect(htmlText(element('p', { 'aria-label': '"><b>' }, '<script>alert(1)</script> & more'))).toBe(
      '<p aria-label="&quot;&gt;&lt;b&gt;">&lt;script&gt;alert(1)&lt;/script&gt; &amp; more</p>',
    )
  })

  it(`has no tag and no quote of a text, and gives it back when it is read (seed ${seed})`, () => {
    const texts = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string({ unit: fc.constantFrom('<', '>', '&', '"', "'", ';', 'amp', 'script', '-->', '<!--') }),
    )
    fc.assert(
      fc.property(texts, (text) => {
        const written = escapedHtml(text)
        expect(written).not.toMatch(/[<>"]/)
        expect(asRead(written)).toBe(text)
      }),
      { seed },
    )
  })

  it('shows what would turn round or break what follows as a sign for the unknown', () => {
    expect(htmlText('a\u202eb\u2066c\u0000d\ud800e\r\nf')).toBe('a\ufffdb\ufffdc\ufffdd\ufffde\nf')
    expect(htmlText('\u05e2\u05d1\u05e8\u05d9\u05ea \u{1f468}\u200d\u{1f467}')).toBe(
      '\u05e2\u05d1\u05e8\u05d9\u05ea \u{1f468}\u200d\u{1f467}',
    )
  })

  it('refuses what runs, loads or links', () => {
    for (const tag of ['script', 'style', 'iframe', 'a', 'form', 'input', 'object', 'use', 'link']) {
      expect(() => htmlText(element(tag, {})), tag).toThrow(RangeError)
    }
    for (const name of ['onload', 'onclick', 'href', 'style', 'srcset', 'formaction', 'data-x onload']) {
      expect(() => htmlText(element('p', { [name]: 'x' })), name).toThrow(RangeError)
    }
    const addresses = [
      'https://example.org/a.png',
      '//a',
      'a.png',
      'data:image/svg+xml;base64,AAAA',
      'data:text/html,x',
    ]
    for (const src of addresses) {
      expect(() => htmlText(element('img', { src })), src).toThrow(RangeError)
      expect(() => htmlText(element('image', { href: src })), src).toThrow(RangeError)
    }
    expect(htmlText(element('img', { alt: '', src: 'data:image/png;base64,AAAA' }))).toBe(
      '<img alt="" src="data:image/png;base64,AAAA">',
    )
  })

  it('of the findings of a job full of hostile texts has no other element and no other attribute than those of the job as it was', () => {
    for (const file of ['A-two-stroke-single.json', 'B-four-cylinder-iron.json']) {
      const job = scenario(file)
      const page = (of: typeof job) =>
        htmlBlocks(findingsPage(of, findingsOf(of)), 3)
          .map(htmlText)
          .join('')
      const kinds = (html: string) => new Set([...html.matchAll(/<[^>]*>/g)].map(([tag]) => tag))
      const hostile = page(hostileJob(job))
      expect(hostile).toContain('&lt;script&gt;window.ran = true&lt;/script&gt;')
      const known = new Set([
        ...kinds(page(job)),
        '<h3 dir="auto">',
        '<h4 dir="auto">',
        '<ul>',
        '</ul>',
        '</h4>',
      ])
      expect([...kinds(hostile)].filter((tag) => !known.has(tag))).toEqual([])
    }
  })
})
