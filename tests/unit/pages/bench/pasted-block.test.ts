import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readTable } from '../../../../src/formats/table-text'
import { hasStation, type PasteOnto, pastedBlock } from '../../../../src/pages/bench/pasted-block'
import type { SheetOfBore } from '../../../../src/pages/bench/pasted-heads'
import { runCount } from '../../../proof/run-count'

const levelsMm = [8, 25, 48]
const axesDegrees = [0, 45, 90]
const sheet = (name: string): SheetOfBore => ({
  boreId: `b${name}`,
  surveyId: `s${name}`,
  name,
  levelsMm,
  axesDegrees,
})
const [one, two, four] = [sheet('1'), sheet('2'), sheet('4')]
const start = { row: 0, column: 0 }
const oneBore = { sheets: [one], here: one, from: start }
/** Sizes of a bore of about 54 mm; dial readings could be any number. */
const ofSizes: PasteOnto = {
  ...oneBore,
  couldBeReading: (text) => Math.abs(Number(text.replace(',', '.')) - 54) < 10,
}
const ofDial: PasteOnto = { ...oneBore, couldBeReading: (text) => text !== '' && !/[^\d.,+-]/.test(text) }

/** Where each cell goes: bore, depth, axis and text, or why it goes nowhere. */
function meant(text: string, onto: PasteOnto): string[] {
  const read = readTable(text)
  if (!read.ok) throw new Error(read.why)
  return pastedBlock(read.rows, onto).cells.map(({ to, text }) =>
    hasStation(to)
      ? `${to.boreName}: ${to.place.depthMm}/${to.place.axisDegrees} ${text}`
      : `${to.code} ${to.text}: ${text}`,
  )
}

describe('a pasted block', () => {
  it('is laid against the chosen cell, and says what lies past the grid', () => {
    const from = { row: 1, column: 1 }
    expect(meant('54.01\t54.02\t54.03\n54.04\t\n-\t54.05', { ...ofSizes, from })).toEqual([
      '1: 25/45 54.01',
      '1: 25/90 54.02',
      'past-the-grid : 54.03',
      '1: 48/45 54.04',
      'past-the-grid : 54.05',
    ])
  })

  it('finds its depths and axes in the sheet, whatever their order and wherever it is pasted', () => {
    const text = 'Depth, mm\t90°\t0°\n48\t54,01\t54,02\n8\t54,03\t54,04'
    const goes = ['1: 48/90 54,01', '1: 48/0 54,02', '1: 8/90 54,03', '1: 8/0 54,04']
    expect(meant(text, { ...ofSizes, from: { row: 2, column: 2 } })).toEqual(goes)
    expect(meant(text, ofDial)).toEqual(goes)
  })

  it('says which depth and which axis the sheet does not have', () => {
    expect(meant('\t0°\t30°\n8 mm\t54.01\t54.02\n9 mm\t54.03\t', ofSizes)).toEqual([
      '1: 8/0 54.01',
      'no-axis 30: 54.02',
      'no-level 9: 54.03',
    ])
  })

  it('needs no words where heads cannot be readings', () => {
    expect(meant('\t0\t90\n8\t54.01\t54.02', ofSizes)).toEqual(['1: 8/0 54.01', '1: 8/90 54.02'])
    expect(meant('0\t90\n54.01\t54.02', ofSizes)).toEqual(['1: 8/0 54.01', '1: 8/90 54.02'])
    expect(meant('8\t54.01\n48\t54.02', ofSizes)).toEqual(['1: 8/0 54.01', '1: 48/0 54.02'])
  })

  it('takes numbers for dial readings where nothing says that they are heads', () => {
    expect(meant('0\t45\n8\t9', ofDial)).toEqual(['1: 8/0 0', '1: 8/45 45', '1: 25/0 8', '1: 25/45 9'])
    expect(meant('\t0\t90\n8\t3\t-4', ofDial)).toEqual(['1: 8/0 3', '1: 8/90 -4'])
  })

  it('leaves out columns and rows that it has no use for, and says so', () => {
    expect(meant('\t0°\tMean\n8 mm\t54.01\t54.02\nMean\t54.03\t', ofSizes)).toEqual([
      '1: 8/0 54.01',
      'no-axis Mean: 54.02',
      'no-level Mean: 54.03',
    ])
  })

  it('sends columns that name bores to these bores', () => {
    const block = { ...ofSizes, sheets: [one, two, four], here: two, from: { row: 0, column: 2 } }
    expect(meant('Depth\tCyl 1\tCyl 4\n25\t54.01\t54.04', block)).toEqual([
      '1: 25/90 54.01',
      '4: 25/90 54.04',
    ])
    expect(meant('1\t2\t4\n54.01\t54.02\t54.04', block)).toEqual([
      '1: 8/90 54.01',
      '2: 8/90 54.02',
      '4: 8/90 54.04',
    ])
    expect(meant('\tBore 1\t\tBore 2\t\n\t0°\t90°\t0°\t90°\n8\t54.01\t54.02\t54.03\t54.04', block)).toEqual([
      '1: 8/0 54.01',
      '1: 8/90 54.02',
      '2: 8/0 54.03',
      '2: 8/90 54.04',
    ])
    expect(meant('Depth\tAxis\t1\t4\n8\t0\t54.01\t54.04\n\t90\t54.02\t54.05', block)).toEqual([
      '1: 8/0 54.01',
      '4: 8/0 54.04',
      '1: 8/90 54.02',
      '4: 8/90 54.05',
    ])
  })

  it('reads a list of depth, axis and reading, several columns being repeats', () => {
    expect(meant('Depth\tAxis\tFirst\tSecond\n8\t0\t3\t4\n8\t45\t5\t6', ofDial)).toEqual([
      '1: 8/0 3',
      '1: 8/0 4',
      '1: 8/45 5',
      '1: 8/45 6',
    ])
  })

  it('puts every number of a whole sheet where its heads say, in any order (seed 1)', () => {
    const order = <T>(values: readonly T[]) => fc.shuffledSubarray([...values], { minLength: 1 })
    fc.assert(
      fc.property(order(levelsMm), order(axesDegrees), fc.boolean(), (levels, axes, isDial) => {
        const at = (level: number, axis: number) => `${isDial ? '' : '54.'}${100 + level}${100 + axis}`
        const rows = levels.map((level) => [level, ...axes.map((axis) => at(level, axis))].join('\t'))
        const text = [['Depth', ...axes].join('\t'), ...rows].join('\n')
        expect(meant(text, isDial ? ofDial : ofSizes)).toEqual(
          levels.flatMap((level) => axes.map((axis) => `1: ${level}/${axis} ${at(level, axis)}`)),
        )
      }),
      { seed: 1, numRuns: runCount({ quick: 200, full: 5000 }) },
    )
  })

  it('loses no cell and invents none, whatever is pasted (seed 2)', () => {
    const cell = fc.constantFrom(
      '',
      '0',
      '45',
      '8',
      '8 mm',
      '90°',
      '54.01',
      '1',
      'Cyl 2',
      'Mean',
      '-',
      '?',
      '48',
    )
    const block = fc.array(fc.array(cell, { maxLength: 4 }), { maxLength: 5 })
    fc.assert(
      fc.property(block, fc.constantFrom(ofSizes, ofDial), (rows, onto) => {
        const { heads, cells } = pastedBlock(rows, { ...onto, sheets: [one, two] })
        const inside = rows.slice(heads.rows).flatMap((row) => row.slice(heads.columns))
        expect(cells.map(({ text }) => text)).toEqual(inside.filter((text) => text !== '' && text !== '-'))
        for (const { row, column, text } of cells) expect(rows[row]?.[column]).toBe(text)
      }),
      { seed: 2, numRuns: runCount({ quick: 500, full: 20000 }) },
    )
  })
})
