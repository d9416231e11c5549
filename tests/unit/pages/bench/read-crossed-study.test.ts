import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readCrossedStudy, studyTextOf } from '../../../../src/pages/bench/read-crossed-study'

const ada = { person: 'Ada', part: '1', values: [54.012, 54.013] }
const ben = { person: 'Ben', part: '1', values: [54.01, 54.011] }

describe('a table of a crossed study', () => {
  it.each([
    ['spaces', 'Ada 1 54.012 54.013\nBen 1 54.010 54.011'],
    ['spaces and decimal commas', 'Ada 1 54,012 54,013\nBen 1 54,010 54,011'],
    ['semicolons', 'Ada; 1; 54,012; 54,013\n\nBen; 1; 54.010; 54.011\n'],
    [
      'tabs, under headings',
      'Person\tPart\tReading 1\tReading 2\nAda\t1\t54.012\t54.013\r\nBen\t1\t54.010\t54.011',
    ],
    ['commas', 'Ada,1,54.012,54.013\nBen,1,54.010,54.011'],
    ['a line for each reading', 'Ada 1 54.012\nBen 1 54.010\nAda 1 54.013\nBen 1 54.011'],
    [
      'a line for each reading, counted and in any order',
      'who\tpart\tno.\tmm\nAda\t1\t2\t54.013\nBen\t1\t1\t54.010\nAda\t1\t1\t54.012\nBen\t1\t2\t54.011',
    ],
  ])('is read with %s', (_, text) => {
    const read = readCrossedStudy(text)
    expect(read.ok && read.lines.toSorted((a, b) => a.person.localeCompare(b.person))).toEqual([ada, ben])
  })

  it('takes dial readings that begin with 1 and 2 for readings where a person and part have one line', () => {
    const read = readCrossedStudy('Ada 1 1 3\nAda 2 2 4')
    expect(read.ok && read.lines.map(({ values }) => values)).toEqual([
      [1, 3],
      [2, 4],
    ])
  })

  it('keeps a name with spaces, and leaves an empty cell out', () => {
    expect(readCrossedStudy('Ada B.; cylinder 2; 1; ; 3')).toEqual({
      ok: true,
      lines: [{ person: 'Ada B.', part: 'cylinder 2', values: [1, 3] }],
    })
  })

  it.each([
    ['Ada 1 54.012 54.o13', 'Line 1: “54.o13”: Enter the number alone'],
    ['Ada front 54.o12', 'Line 1: “54.o12”: '],
    ['Ada 1 54.012\nBen 2', 'Line 2: It takes a person, a part and at least one reading.'],
    ['Ada;1;54.012\n;1;54.011', 'Line 2: The person or the part has no name.'],
    ['', 'Enter a person, a part and readings on each line.'],
    ['person part reading', 'Enter a person, a part and readings on each line.'],
    ['1,2,3', 'The commas can be read two ways.'],
    ['"Ada;1;2', 'Line 1: A quotation mark is left open.'],
  ])('is refused with a place: %s', (text, said) => {
    const read = readCrossedStudy(text)
    expect(read.ok ? '' : read.said).toContain(said)
  })

  it('is read back as it is written (seed 73)', () => {
    const name = fc.stringMatching(/^[A-Za-zäé][A-Za-z0-9 ]{0,8}[a-z]$/)
    const lines = fc.uniqueArray(
      fc.record({
        person: name,
        part: name,
        dialUm: fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 1, maxLength: 4 }),
      }),
      { minLength: 1, maxLength: 8, selector: ({ person, part }) => `${person}|${part}` },
    )
    fc.assert(
      fc.property(lines, (readings) => {
        const read = readCrossedStudy(studyTextOf(readings, String))
        expect(read).toEqual({
          ok: true,
          lines: readings.map(({ person, part, dialUm }) => ({ person, part, values: dialUm })),
        })
      }),
      { seed: 73, numRuns: 200 },
    )
  })
})
