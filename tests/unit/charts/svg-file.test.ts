import fc from 'fast-check'
import { expect, it } from 'vitest'
import { type SvgNode, svgText } from '../../../src/charts/svg-file'
import { runCount } from '../../proof/run-count'

const seed = 20251125
const numRuns = runCount({ quick: 500, full: 20_000 })

const text = (content: string): SvgNode => ({ tag: 'text', attributes: { x: 1 }, children: [content] })

it('a drawing is written as XML, elements without content closed at once', () => {
  const svg: SvgNode = {
    tag: 'svg',
    attributes: { width: 10 },
    children: [{ tag: 'path', attributes: { d: 'M0,0', 'stroke-width': 2 }, children: [] }, text('Bore 1')],
  }
  expect(svgText(svg)).toBe(
    '<?xml version="1.0" encoding="UTF-8"?>\n<svg width="10"><path d="M0,0" stroke-width="2"/><text x="1">Bore 1</text></svg>\n',
  )
})

it('a name that looks like markup stays a name, and what XML cannot hold is left out', () => {
  const written = svgText(text('a</text><script>x\u0000\u0008\ud800"&b'))
  expect(written).toContain('>a&lt;/text&gt;&lt;script&gt;x&quot;&amp;b</text>')
})

it('what runs, loads or links is refused', () => {
  expect(() => svgText({ tag: 'script', attributes: {}, children: [] })).toThrow(RangeError)
  expect(() => svgText({ tag: 'foreignObject', attributes: {}, children: [] })).toThrow(RangeError)
  for (const name of ['onload', 'xlink:href', 'href', 'x y']) {
    expect(() => svgText({ tag: 'path', attributes: { [name]: 'a' }, children: [] })).toThrow(RangeError)
  }
})

it(`whatever a text holds, it ends at its own end and holds XML's characters alone, seed ${seed}`, () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (content) => {
      const written = svgText(text(content))
      const inner = /<text x="1">([\s\S]*)<\/text>\n$/.exec(written)?.[1] ?? ''
      expect(inner).not.toMatch(/[<>"]|&(?!amp;|lt;|gt;|quot;)/)
      // XML 1.0 (Fifth Edition), 2.2, production [2] Char.
      expect(written).toMatch(/^[\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]*$/u)
    }),
    { seed, numRuns },
  )
})
