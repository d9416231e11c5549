import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { textForCell, textFromCell } from '../../../src/formats/guarded-text'
import { readTable } from '../../../src/formats/table-text'
import { tableStyles, writeTable } from '../../../src/formats/write-table'
import { runCount } from '../../proof/run-count'

describe('a table that is written', () => {
  it('begins with a byte order mark, ends its lines as RFC 4180 has it, and quotes what must be', () => {
    expect(writeTable(['bore', 'size_mm'], [['1, left "A"', 54.012]], tableStyles.point)).toBe(
      '\uFEFFbore,size_mm\r\n"1, left ""A""",54.012\r\n',
    )
    expect(writeTable(['bore', 'dial_um'], [['1, left', -7.5]], tableStyles.comma)).toBe(
      '\uFEFFbore;dial_um\r\n"1, left";-7,5\r\n',
    )
  })

  /*
   * OWASP, "CSV Injection": cells that begin with =, +, -, @, tab or carriage return (and their full-width forms) are
   * to be quoted with an apostrophe in front. From memory.
   */
  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\uff1d1', "'=1"])(
    'lets a spreadsheet take no name for a formula: %j',
    (name) => {
      expect(textForCell(name)).toBe(`'${name}`)
      expect(textFromCell(textForCell(name))).toBe(name)
      expect(writeTable(['bore'], [[name]], tableStyles.comma)).toContain(`'${name}`)
    },
  )

  it('leaves negative numbers numbers, and every other name as it is', () => {
    expect(writeTable(['a'], [[-7], ["'7"], ['left']], tableStyles.point)).toBe(
      "\uFEFFa\r\n-7\r\n'7\r\nleft\r\n",
    )
  })

  it('gives every text back when it is read (seed 5)', () => {
    const text = fc.string({
      unit: fc.constantFrom('=', '+', '-', '@', "'", '"', ';', ',', '\t', '\n', 'a', '1', ' '),
    })
    fc.assert(
      fc.property(
        fc.array(text, { minLength: 1, maxLength: 4 }),
        fc.constantFrom(';', ',', '\t'),
        (texts, separator) => {
          const written = writeTable(['head', ...texts.map(() => 'x')], [['row', ...texts]], {
            decimal: 'point',
            separator,
          })
          const read = readTable(written, separator)
          expect(read.ok && read.rows[1]?.slice(1).map(textFromCell)).toEqual(texts)
        },
      ),
      { seed: 5, numRuns: runCount({ quick: 200, full: 5000 }) },
    )
  })
})
