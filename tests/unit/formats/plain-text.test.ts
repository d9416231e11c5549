import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { columns, layOut, table, wrap } from '../../../src/formats/plain-text'

describe('a text laid out', () => {
  it('underlines headings, sets blank lines between blocks and ends with a line end', () => {
    const text = layOut([
      { kind: 'title', text: 'Findings' },
      { kind: 'heading', text: 'Bore 1' },
      { kind: 'subheading', text: 'Notes' },
      { kind: 'paragraph', text: 'Inside.' },
      { kind: 'list', items: ['one', 'two'] },
    ])
    expect(text).toBe('Findings\n========\n\nBore 1\n------\n\nNotes\n\nInside.\n\n- one\n- two\n')
  })

  it('leaves out blocks without content', () => {
    expect(
      layOut([
        { kind: 'paragraph', text: '' },
        { kind: 'list', items: [] },
        { kind: 'entries', entries: [] },
        { kind: 'table', head: [], rows: [] },
        { kind: 'title', text: '' },
      ]),
    ).toBe('')
  })

  it('wraps at 78 columns and hangs list items under their text', () => {
    const text = layOut([{ kind: 'list', items: [`${'word '.repeat(30)}end`] }])
    const lines = text.trimEnd().split('\n')
    expect(lines[0]).toMatch(/^- word/)
    for (const line of lines.slice(1)) expect(line).toMatch(/^ {2}\S/)
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(78)
  })

  it('lets a word that is too long stand whole', () => {
    const path = `/${'a'.repeat(100)}`
    expect(wrap(`see ${path} there`, 78)).toEqual(['see', path, 'there'])
  })

  it('shows control characters and turned writing as a mark instead of passing them on', () => {
    const text = layOut([{ kind: 'paragraph', text: 'a\u001b[31mred\u009b0m\u202eb\r\u0007' }])
    expect(text).toBe('a\ufffd[31mred\ufffd0m\ufffdb\ufffd\ufffd\n')
  })

  it('sets a tab, as a note may hold, as a space', () => {
    expect(layOut([{ kind: 'paragraph', text: 'ring\tgap' }])).toBe('ring gap\n')
  })

  it('counts a letter with a combining mark as one column', () => {
    expect(layOut([{ kind: 'title', text: 'e\u0301' }])).toBe('e\u0301\n=\n')
  })
})

describe('a table', () => {
  it('aligns every column to the right and may hold several lines in a cell', () => {
    expect(
      table(
        ['Depth', '0°'],
        [
          ['8 mm', '54.028\ninside'],
          ['16 mm', '–'],
        ],
      ),
    ).toEqual(['Depth      0°', ' 8 mm  54.028', '       inside', '16 mm       –'])
  })

  it('that is too wide goes on below with its first column again', () => {
    const head = ['Depth', ...Array.from({ length: 6 }, (_, i) => `${i * 30}°`)]
    const lines = table(head, [['8 mm', ...head.slice(1).map(() => '54.028 ± 0.005')]])
    expect(lines).toEqual([
      'Depth              0°             30°             60°             90°',
      ' 8 mm  54.028 ± 0.005  54.028 ± 0.005  54.028 ± 0.005  54.028 ± 0.005',
      '',
      'Depth            120°            150°',
      ' 8 mm  54.028 ± 0.005  54.028 ± 0.005',
    ])
  })

  it('keeps every cell, within 78 columns, whatever its size (seed 40)', () => {
    const cell = fc.integer({ min: 0, max: 999_999 }).map(String)
    const sizes = fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 0, max: 6 }))
    const tables = sizes.chain(([width, height]) =>
      fc.array(fc.array(cell, { minLength: width, maxLength: width }), {
        minLength: height + 1,
        maxLength: height + 1,
      }),
    )
    fc.assert(
      fc.property(tables, ([head = [], ...rows]) => {
        const lines = table(head, rows)
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(columns)
        const printed = lines.join(' ').split(/\s+/)
        for (const text of [head, ...rows].flat()) expect(printed).toContain(text)
      }),
      { seed: 40, numRuns: 300 },
    )
  })
})

describe('an entry', () => {
  it('stands at both ends of its line, with lines under it set in', () => {
    const text = layOut([
      { kind: 'entries', entries: [{ left: 'Taper', right: '16 µm', under: ['limit 25 µm'] }] },
    ])
    expect(text).toBe(`Taper${' '.repeat(68)}16 µm\n    limit 25 µm\n`)
  })

  it('breaks where both ends do not fit, and keeps its indent', () => {
    const left = 'a'.repeat(70)
    const text = layOut([{ kind: 'entries', entries: [{ left, right: '16 µm', under: [], indent: 4 }] }])
    expect(text).toBe(`    ${left}\n${' '.repeat(73)}16 µm\n`)
  })
})
