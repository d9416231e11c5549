import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { mostOfTable, readTable, separatorOf } from '../../../src/formats/table-text'
import { runCount } from '../../proof/run-count'

function rowsOf(text: string): readonly (readonly string[])[] {
  const read = readTable(text)
  if (!read.ok) throw new Error(read.why)
  return read.rows
}

describe('a table of text', () => {
  /*
   * RFC 4180 (2005), section 2: rule 5 (fields may be in quotation marks), rule 6 (line ends and commas within
   * them) and rule 7 (a quotation mark within is doubled), with the examples printed there. From memory.
   */
  it.each([
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('is read as RFC 4180 prints it: %j', (text, rows) => {
    expect(rowsOf(text)).toEqual(rows)
  })

  it('keeps empty cells and empty rows where they stand, and makes no row of the last line end', () => {
    expect(rowsOf('a\t\tb\n\n\tc\t\n')).toEqual([['a', '', 'b'], [''], ['', 'c', '']])
  })

  it('takes an inch mark behind a number for what it is', () => {
    expect(rowsOf('2.1260"\t2.1262"')).toEqual([['2.1260"', '2.1262"']])
  })

  it.each([
    ['54,012\t54,013', '\t'],
    ['54,012;54,013', ';'],
    ['54.012,54.013', ','],
    ['"54,012","54,013"', ','],
    ['9, -7, 12', ','],
    ['+9,-7', ','],
    ['depth,0,90', ','],
    ['54.012', undefined],
    ['54,012', undefined],
    ['54,012 54,013\n54,014', undefined],
    ['54,012,54,013', 'unclear'],
    ['9,7,12', 'unclear'],
  ] as const)('%j is parted by %j', (text, separator) => {
    expect(separatorOf(text)).toBe(separator)
  })

  it('is refused where nobody can tell what its commas are', () => {
    expect(readTable('54,012,54,013')).toEqual({ ok: false, why: 'commas-only' })
    expect(readTable('9,7,12', ',')).toMatchObject({ ok: true, rows: [['9', '7', '12']] })
  })

  it('is refused while a quotation mark is open, empty, or longer than anybody measures', () => {
    expect(readTable('a\tb\n"c\td')).toMatchObject({ ok: false, why: 'quote-left-open' })
    expect(readTable(' \n')).toEqual({ ok: false, why: 'empty' })
    expect(readTable('9'.repeat(mostOfTable.characters + 1))).toEqual({ ok: false, why: 'too-large' })
    expect(readTable('\t'.repeat(mostOfTable.cells + 1).concat('9'))).toEqual({ ok: false, why: 'too-large' })
  })

  it('comes back as it was written with tabs and quotation marks, whatever its cells hold (seed 1)', () => {
    const cell = fc.string({ unit: fc.constantFrom('5', '4', ',', '.', ';', '\t', '\n', '"', ' ', '°', 'a') })
    const rows = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 5 })
    fc.assert(
      fc.property(rows, (table) => {
        const quoted = table.map((row) => row.map((text) => `"${text.replaceAll('"', '""')}"`).join('\t'))
        expect(rowsOf(quoted.join('\n'))).toEqual(table)
      }),
      { seed: 1, numRuns: runCount({ quick: 200, full: 5000 }) },
    )
  })

  it('never throws, whatever is pasted (seed 2)', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        expect(typeof readTable(text).ok).toBe('boolean')
      }),
      { seed: 2, numRuns: runCount({ quick: 300, full: 20000 }) },
    )
  })
})
