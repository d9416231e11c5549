import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Gauge, SetUp } from '../../../../src/core/measured'
import { dialMarks, sizeMarks } from '../../../../src/pages/bench/marks'
import { readRepeats } from '../../../../src/pages/bench/read-repeats'
import { typedText } from '../../../../src/pages/bench/typed-text'
import { words } from '../../../../src/words/words'
import { runCount } from '../../../proof/run-count'

describe('a figure as an instrument shows it', () => {
  it('is an inch for every 25.4 mm and a ten-thousandth for every 2.54 µm, exactly (the international inch)', () => {
    expect(sizeMarks('inch').kept(1)).toBe(25.4)
    expect(sizeMarks('inch').kept(2.1273)).toBe(54.03342)
    expect(dialMarks('inch').kept(10)).toBe(25.4)
    expect(dialMarks('inch').kept(-5)).toBe(-12.7)
  })

  it('stands with its decimals, and in the other unit beside it', () => {
    expect(sizeMarks().written(54)).toBe('54.000')
    expect(sizeMarks().echo(54)).toBe('2.12598 in')
    expect(sizeMarks('inch').written(50.8)).toBe('2.0000')
    expect(sizeMarks('inch').written(54.03342)).toBe('2.1273')
    expect(sizeMarks('inch').echo(50.8)).toBe('50.8 mm')
    expect(dialMarks().written(-12.5)).toBe('−12.5')
    expect(dialMarks().echo(12)).toBe('0.000472 in')
    expect(dialMarks('inch').written(25.4)).toBe('10')
    expect(dialMarks('inch').echo(25.4)).toBe('25.4 µm')
  })

  it('comes back as it was typed, in either unit, after it was kept (seed 45)', () => {
    const tenThousandths = fc.integer({ min: 5000, max: 60000 })
    fc.assert(
      fc.property(tenThousandths, fc.integer({ min: -4000, max: 4000 }), (size, halves) => {
        const inch = sizeMarks('inch')
        expect(Number(inch.written(inch.kept(size / 10000)))).toBe(size / 10000)
        const mm = sizeMarks()
        expect(Number(mm.written(mm.kept(size / 1000)))).toBe(size / 1000)
        const dial = dialMarks('inch')
        expect(Number(dial.written(dial.kept(halves / 2)).replace('−', '-'))).toBe(halves / 2)
      }),
      { seed: 45, numRuns: runCount({ quick: 300, full: 20_000 }) },
    )
  })
})

describe('readings typed for a gauge', () => {
  const gauge: Gauge = { id: 'g', kind: 'dial-0.001-micrometer', markedIn: 'inch' }
  const setUp: SetUp = { id: 's', gaugeId: 'g', standardId: 'r', entry: 'size', settingSizeMm: 50.8 }

  it('that is marked in inches are inches or ten-thousandths, and stand so again to be corrected', () => {
    const sizes = readRepeats('2.0012 2,0013', setUp, gauge)
    expect(sizes).toEqual({ ok: true, values: [50.83048, 50.83302] })
    expect(typedText(sizes.ok ? sizes.values : [], setUp, gauge)).toBe('2.0012 2.0013')
    const dial: SetUp = { ...setUp, entry: 'deviation' }
    const dials = readRepeats('12 −3.5', dial, gauge)
    expect(dials).toEqual({ ok: true, values: [30.48, -8.89] })
    expect(typedText(dials.ok ? dials.values : [], dial, gauge)).toBe('12 −3.5')
  })

  it('that are far from the setting are refused with the setting in the unit of the gauge', () => {
    const read = readRepeats('50.83', setUp, gauge)
    expect(read).toMatchObject({ ok: false, why: expect.stringContaining('2.0000 in') })
    const reverse: SetUp = { ...setUp, entry: 'reverse', settingSizeMm: 2, overContactsMm: 50.8 }
    expect(readRepeats('400', reverse, gauge)).toEqual({ ok: true, values: [1016] })
  })

  it('are no dial readings while nobody has entered the setting, and far sizes are told that it is only taken', () => {
    const dial: SetUp = { ...setUp, entry: 'deviation' }
    expect(readRepeats('12', dial, gauge, true)).toEqual({ ok: false, why: words.next.settingFirst })
    expect(readRepeats('2.0012', setUp, gauge, true)).toMatchObject({ ok: true })
    expect(readRepeats('50.83', setUp, gauge, true)).toEqual({
      ok: false,
      why: words.next.farFromTaken('50.83', '2.0000 in'),
    })
  })
})
