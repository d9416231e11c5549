import { describe, expect, it } from 'vitest'
import { budgetOf } from '../../../../src/core/uncertainty/budget'
import { findingOf, first, measuredBore, without } from '../measured-bore'

const table = {
  levelsMm: [10, 40],
  axesDegrees: [0, 90],
  rows: [
    [80.01, 80.01],
    [80.01, 80.01],
  ],
}

function budgetFor(measured: Parameters<typeof findingOf>[0]) {
  const station = first(findingOf(measured).stations)
  return { station, budget: budgetOf(station, first(measured.standards).kind) }
}

describe('the budget of a station', () => {
  it('has parts whose squares add up to u, the largest first, and shares that add up to one', () => {
    const { station, budget } = budgetFor(measuredBore(table))
    const squares = budget.parts.reduce((sum, { u }) => sum + u * u, 0)
    expect(Math.sqrt(squares)).toBeCloseTo(station.standardUncertaintyMm, 12)
    expect(budget.parts.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12)
    expect([...budget.parts].sort((a, b) => b.u - a.u)).toEqual(budget.parts)
    expect(budget.expandedMm).toBe(station.expandedMm)
  })

  it('has for each input that is no length a sensitivity: what the diameter changes for one unit of it', () => {
    const warm = measuredBore(table, { setUp: { boreTemperatureC: 31, referenceTemperatureC: 25 } })
    const { station, budget } = budgetFor(warm)
    const kinds = budget.parts.filter(({ input }) => input).map(({ kind }) => kind)
    expect(new Set(kinds)).toEqual(
      new Set(['wall-expansion', 'standard-expansion', 'reference-temperature', 'temperature-difference']),
    )
    // D·(T_b − 20): what an expansion coefficient moves, by the model of the diameter (JCGM 100:2008, 5.1.3).
    const wall = budget.parts.find(({ kind }) => kind === 'wall-expansion')
    expect((wall?.u ?? 0) / (wall?.input?.u ?? 1)).toBeCloseTo(station.diameterMm * 11, 6)
    const reference = budget.parts.find(({ kind }) => kind === 'standard-expansion')
    expect((reference?.u ?? 0) / (reference?.input?.u ?? 1)).toBeCloseTo(station.diameterMm * 5, 6)
  })

  it('says what a ring would be worth, as a survey set by a ring shows it', () => {
    const { budget } = budgetFor(measuredBore(table))
    const byRing = budget.improvements.find(({ kind }) => kind === 'set-by-ring')
    const ring = budgetFor(
      measuredBore(table, {
        gauge: { kind: 'dial-0.001-micrometer', settingUm: 0.75 },
        standard: { kind: 'ring', doubtUm: 0.5 },
      }),
    )
    expect(byRing?.expandedMm).toBeCloseTo(ring.budget.expandedMm, 9)
    // Nothing is gained by a ring where there is one already, however much its setting is doubted.
    const doubted = budgetFor(
      measuredBore(table, { gauge: { kind: 'dial-0.001-ring', settingUm: 4 }, standard: { kind: 'ring' } }),
    )
    expect(doubted.budget.improvements.map(({ kind }) => kind)).not.toContain('set-by-ring')
  })

  it('says what two more repeats would be worth, as such a survey shows it', () => {
    const coarse = { gauge: { kind: 'dial-0.01-simple' } } as const
    // Two stations only: three repeats at each leave too little for a scatter of the survey's own.
    const small = { levelsMm: [10], axesDegrees: [0, 90], rows: [[80.01, 80.01]] }
    const { budget } = budgetFor(measuredBore(small, coarse))
    const more = budget.improvements.find(({ kind }) => kind === 'more-repeats')
    const rows = small.rows.map((row) => row.map((size) => [size, size, size]))
    const three = budgetFor(measuredBore({ ...small, rows }, coarse))
    expect(more?.expandedMm).toBeCloseTo(three.budget.expandedMm, 9)
  })

  it('says what recording the temperatures would be worth, as such a survey shows it', () => {
    const { budget } = budgetFor(
      without(
        measuredBore(table, { bore: { wall: { kind: 'plated-aluminium' } } }),
        'boreTemperatureC',
        'referenceTemperatureC',
      ),
    )
    const recorded = budgetFor(measuredBore(table, { bore: { wall: { kind: 'plated-aluminium' } } }))
    const after = budget.improvements.find(({ kind }) => kind === 'record-what-is-missing')
    expect(after?.expandedMm).toBeCloseTo(recorded.budget.expandedMm, 4)
    expect(budget.parts.some(({ assumed }) => assumed)).toBe(true)
  })
})
