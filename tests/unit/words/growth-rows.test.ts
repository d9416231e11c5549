import { describe, expect, it } from 'vitest'
import { inspect } from '../../../src/core/inspect'
import type { Measured } from '../../../src/core/measured'
import { growthRows } from '../../../src/words/growth-rows'
import { first } from '../core/measured-bore'
import { spec, visited } from '../core/outlook/visited'

function rows(measured: Measured, today?: string) {
  const findings = inspect(measured)
  return growthRows(measured, findings, first(findings.bores), today)
}

const rowOf = (measured: Measured, id: string, today?: string) =>
  rows(measured, today).find((row) => row.id === id)

const surveyed = { date: '2026-03-09' }
const worn = (hoursPerWeek?: number): Measured => ({
  ...visited(
    [
      { hoursRun: 100, sizesMm: [80, 80] },
      { hoursRun: 600, sizesMm: [80.01, 80.02], survey: surveyed },
    ],
    {},
    { ...spec, serviceIntervalHours: 70.9 },
  ),
  ...(hoursPerWeek === undefined ? {} : { hoursPerWeek }),
})

describe('the row of the next check', () => {
  it('gives hours rounded down, why then, and the day where the hours of a week are known', () => {
    expect(rowOf(worn(), 'next-check')).toEqual({
      id: 'next-check',
      name: 'Next check',
      rank: 'main',
      figure: 'by 670 h run',
      detail: 'the service interval that the limits give',
    })
    // 70.9 h at 35 a week are two weeks and 0.18 of a day.
    expect(rowOf(worn(35), 'next-check')?.detail).toBe(
      'the service interval that the limits give · at 35 h a week on 23 March 2026',
    )
  })

  it('says that the day has come, only to those who know what day it is', () => {
    expect(rowOf(worn(35), 'next-check', '2026-03-22')?.detail).not.toContain('has come')
    expect(rowOf(worn(35), 'next-check', '2026-03-23')?.detail).toContain('that day has come')
  })

  it('counts from the survey where nobody wrote down the hours run', () => {
    const measured = visited([{ sizesMm: [80, 80] }], {}, { ...spec, serviceIntervalHours: 70 })
    expect(rowOf(measured, 'next-check')?.figure).toBe('after 70 h more')
  })

  it('is left out where the bore may be at its limit now: the row above says so', () => {
    const atLimit = visited(
      [
        { hoursRun: 100, sizesMm: [80, 80] },
        { hoursRun: 600, sizesMm: [80.049, 80.02] },
      ],
      {},
      { ...spec, serviceIntervalHours: 70 },
    )
    expect(rowOf(atLimit, 'outlook')?.figure).toBe('at its limit now')
    expect(rowOf(atLimit, 'next-check')).toBeUndefined()
  })
})
