import fc from 'fast-check'
import { afterEach, describe, expect, it } from 'vitest'
import { inspectCommand } from '../../../src/cli/inspect-command'
import { inspectJson, jsonText } from '../../../src/cli/inspect-json'
import { inspectText } from '../../../src/cli/inspect-text'
import { inspect } from '../../../src/core/inspect'
import { describeJob } from '../../../src/job/commands'
import { gridFigures } from '../../../src/pages/bench/grid-figures'
import { lengthMarks, micronMarks, sizeMarks } from '../../../src/pages/bench/marks'
import {
  inShownUnit,
  lengthUnit,
  mmPerInch,
  roundSizes,
  roundStepUm,
  writeLengthsIn,
  writtenIn,
} from '../../../src/words/length-unit'
import {
  amountWithDoubt,
  depth,
  differenceWithDoubt,
  differenceWithInterval,
  doubtFigure,
  doubtNeeded,
  inMicrons,
  inTenthsOfMicrons,
  length,
  microns,
  plusMinusMicrons,
  size,
  sizeWithDoubt,
  sizeWithUnit,
} from '../../../src/words/numbers'
import { problemText } from '../../../src/words/problems'
import { readNumber } from '../../../src/words/read-number'
import { spoken } from '../../../src/words/spoken'
import { scenario } from '../scenarios/scenario'

afterEach(() => writeLengthsIn('mm'))

// One inch is 25.4 mm exactly: international yard and pound agreement, 1959; ISO 31-1:1992, annex A.
describe('lengths in inches', () => {
  it.each([
    [() => size(54.0124), '2.12647'],
    [() => size(50.8), '2.0000'],
    [() => sizeWithUnit(50.8), '2.0000 in'],
    [() => sizeWithDoubt(54.0124, 0.005), '2.12647 ± 0.00020'],
    [() => sizeWithDoubt(54.0124, 0.0381), '2.1265 ± 0.0015'],
    [() => microns(0.0241, { sign: true }), '+0.00095'],
    [() => microns(-0.00001, { sign: true }), '0.00000'],
    [() => inMicrons(0.0254), '0.00100 in'],
    [() => inTenthsOfMicrons(-0.0035, { sign: true }), '−0.000138 in'],
    [() => plusMinusMicrons(0.00254), '± 0.00010 in'],
    [() => plusMinusMicrons(0.0026), '± 0.00011 in'],
    [() => plusMinusMicrons(0), '± 0.00000 in'],
    [() => differenceWithDoubt(-0.0241, 0.0037), '−0.00095 ± 0.00015 in'],
    [() => amountWithDoubt(0.0241, 0.0037), '0.00095 ± 0.00015 in'],
    [() => differenceWithInterval(0.013, 0.0072, 0.0188), '0.00051 in (0.00028 to 0.00074)'],
    [() => doubtNeeded(0.0026), '± 0.00010 in'],
    [() => doubtNeeded(0.0004), undefined],
    [() => depth(8), '0.315 in'],
    [() => depth(12.7), '0.50 in'],
    [() => length(0.25, 2), '0.01 in'],
  ])('are written as the trade reads them: %s', (write, written) => {
    expect(writtenIn('inch', write)).toBe(written)
    expect(lengthUnit()).toBe('mm')
  })

  it('never say less doubt than there is, and no more than a step above it (seed 254)', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-5, max: 2, noNaN: true }), (expandedMm) => {
        writeLengthsIn('inch')
        const said = Number(doubtFigure(expandedMm)) * mmPerInch
        const step = mmPerInch * 1e-5
        expect(said).toBeGreaterThanOrEqual(expandedMm - 0.051 * step)
        expect(said).toBeLessThan(expandedMm + Math.max(step, 1e-9))
        const besideSize = Number(sizeWithDoubt(54, expandedMm).split('± ')[1]) * mmPerInch
        expect(besideSize).toBeGreaterThanOrEqual(expandedMm - 0.051 * 10 * step)
      }),
      { seed: 254 },
    )
  })

  it('are said as words, decimals digit by digit', () => {
    expect(writtenIn('inch', () => spoken(sizeWithUnit(50.8)))).toBe('2 point 0 0 0 0 inches')
    expect(writtenIn('inch', () => spoken('19 in 20'))).toBe('19 in 20')
    expect(spoken('It lies 19 in front.')).toBe('It lies 19 in front.')
  })

  it('stand in what fields are called, and in no word that holds the letters', () => {
    expect(inShownUnit('Largest size when new, mm')).toBe('Largest size when new, mm')
    expect(writtenIn('inch', () => inShownUnit('Height, mm; hammer; ± 5 µm'))).toBe(
      'Height, in; hammer; ± 5 in',
    )
  })

  it('are round where scales and steps are: ten-thousandths, and sizes with few digits', () => {
    expect(roundStepUm()).toBe(1)
    expect(writtenIn('inch', roundStepUm)).toBeCloseTo(2.54, 12)
    expect(writtenIn('inch', () => roundSizes(() => [2, 2.0005]))).toEqual([50.8, 2.0005 * mmPerInch])
  })

  it('stand in a refusal as they were typed', () => {
    const flaw = { code: 'deeper-than-bore', depthMm: 127, lengthMm: 101.6 } as const
    expect(problemText(flaw)).toBe('127 mm is deeper than the bore is long (101.6 mm).')
    expect(writtenIn('inch', () => problemText(flaw))).toBe('5 in is deeper than the bore is long (4 in).')
  })
})

describe('what is typed in inches', () => {
  it('is kept in mm and comes back as it was typed, with a point or a comma (seed 127)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999_999 }), fc.boolean(), (millionths, isComma) => {
        const value = millionths / 1e6
        const typed = isComma ? `${value}`.replace('.', ',') : `${value}`
        const read = readNumber(typed)
        if (!read.ok) throw new Error(`${typed} is a number`)
        for (const marks of [sizeMarks('inch'), lengthMarks('inch')]) {
          if (!marks) throw new Error('Inches have marks')
          const kept = marks.kept(read.value)
          const again = readNumber(marks.written(kept))
          expect(again).toEqual({ ok: true, value })
          expect(marks.kept(again.ok ? again.value : Number.NaN)).toBe(kept)
        }
      }),
      { seed: 127 },
    )
  })

  it('is kept in µm where it is a doubt', () => {
    const marks = micronMarks('inch')
    expect(marks?.kept(0.0001)).toBe(2.54)
    expect(marks?.written(2.54)).toBe('0.0001')
    expect(micronMarks('mm')).toBeUndefined()
  })

  it('stays in mm for a gauge that is marked so, whatever the job is written in', () => {
    writeLengthsIn('inch')
    expect(gridFigures({ markedIn: 'mm' }).size(54.0124)).toBe('54.012')
    expect(gridFigures({ markedIn: 'mm' }).difference(0.0241)).toBe('24 µm')
    expect(gridFigures({ markedIn: 'mm' }).unit).toBe('mm')
    expect(gridFigures({ markedIn: 'inch' }).size(54.0124)).toBe('2.12647')
    expect(lengthUnit()).toBe('inch')
  })
})

describe('a job in inches', () => {
  const names = ['A-two-stroke-single.json', 'C-wet-liner-diesel.json', 'B-four-cylinder-iron.json'] as const

  it.each(names)('is told of without a length in mm, and is the same JSON in mm: %s', (name) => {
    // What a person wrote stays as it was written.
    const { note: _, machine: __, ...whole } = scenario(name)
    const pistons = whole.pistons?.map(({ name: ___, ...piston }) => piston)
    const job = { ...whole, ...(pistons ? { pistons } : {}) }
    const inches = describeJob(job, { shownIn: 'inch' })
    const findings = inspect(inches)
    const text = inspectText(inches, findings)
    expect(text).toMatch(/\d in\b/)
    // What is known in mm alone: a figure of the trade, and how far past the last level a bore is drawn.
    const known = text.replace(/honing takes off 10 µm|10 mm past/g, '').replace(/\s+/g, ' ')
    expect(known.match(/.{30}\d (mm|µm)\b.{10}/g) ?? []).toEqual([])
    for (const line of text.split('\n')) expect([...line].length).toBeLessThanOrEqual(78)
    expect(jsonText(inspectJson(inches, findings))).toBe(jsonText(inspectJson(job, inspect(job))))
    expect(lengthUnit()).toBe('mm')
  })

  it('does not change how the next one is written', () => {
    const inches = describeJob(scenario('A-two-stroke-single.json'), { shownIn: 'inch' })
    const mm = scenario('A-two-stroke-single.json')
    const before = inspectText(mm, inspect(mm))
    inspectText(inches, inspect(inches))
    expect(inspectText(mm, inspect(mm))).toBe(before)
    expect(inspectCommand(['nowhere.json'], '.').exitStatus).toBe(1)
  })
})
