import { describe, expect, it } from 'vitest'
import type { Measured } from '../../../../src/core/measured'
import { type Simulation, simulate, worstOf } from '../../../../src/core/simulation/simulate'
import { simulationTexts } from '../../../../src/words/simulation'
import { runCount } from '../../../proof/run-count'
import { first, measuredBore, onlyScaleDoubt, without } from '../measured-bore'

const table = {
  levelsMm: [10, 40],
  axesDegrees: [0, 90],
  rows: [
    [80.01, 80.012],
    [80.008, 80.009],
  ],
}
const trials = runCount({ quick: 20_000, full: 200_000 })

function run(measured: Measured, count = trials, seed = 5): { result: Simulation; reports: number[] } {
  const reports: number[] = []
  const steps = simulate(measured, count, seed)
  for (;;) {
    const step = steps.next()
    if (step.done) return { result: step.value, reports }
    reports.push(step.value)
  }
}

describe('simulated surveys, seed 5', () => {
  it('agree with the linear figures where all is recorded', () => {
    const { result } = run(measuredBore(table, { spec: { newMinMm: 80, newMaxMm: 80.02 } }))
    expect(result.stations).toHaveLength(4)
    const worst = worstOf(result)
    expect(worst?.apartMm).toBeLessThanOrEqual(worst?.station.toleranceMm ?? 0)
    for (const { inside } of result.stations) {
      expect(Math.abs((inside?.linear ?? 0) - (inside?.simulated ?? 1))).toBeLessThan(0.02)
    }
    expect(simulationTexts(result)[0]).toMatch(/agree with the ± of the diameters/)
  })

  it('have the interval of a normal error where there is no other: ± 1.95996 u', () => {
    const { result } = run(measuredBore(table, onlyScaleDoubt(2)))
    const { linear, simulated } = first(result.stations)
    expect(simulated.highMm - simulated.lowMm).toBeCloseTo(2 * 1.959964 * 0.002, 4)
    expect(simulated.highMm - simulated.lowMm).toBeCloseTo(linear.highMm - linear.lowMm, 4)
  })

  it('show that the linear interval is too wide where one rectangular error rules: 0.95 a for 1.13 a', () => {
    // Nothing known of the temperature, aluminium on steel, and hardly any other doubt: a = 5 K·(α_b − α_r)·D.
    const doubt = onlyScaleDoubt(0.01)
    const measured = without(
      measuredBore(table, {
        ...doubt,
        standard: { ...doubt.standard, expansionPerK: 11.5e-6 },
        bore: { wall: { kind: 'plated-aluminium', expansionPerK: 23e-6, expansionDoubtPerK: 0 } },
      }),
      'boreTemperatureC',
      'referenceTemperatureC',
    )
    const { result } = run(measured)
    const { linear, simulated } = first(result.stations)
    const half = 5 * 11.5e-6 * 80
    const differenceHalf = 1 * 23e-6 * 80
    const u = Math.hypot(half, differenceHalf) / Math.sqrt(3)
    expect((linear.highMm - linear.lowMm) / 2).toBeCloseTo(1.959964 * u, 4)
    // The sum of two rectangles of half-widths a > b: a trapezoid, whose upper 2.5 % begin at a + b − √(8·a·b·0.025).
    const exact = half + differenceHalf - Math.sqrt(8 * half * differenceHalf * 0.025)
    expect((simulated.highMm - simulated.lowMm) / 2).toBeCloseTo(exact, 4)
    expect(simulationTexts(result)[0]).toMatch(/do not agree/)
  })

  it('bear out the figures made of several stations, those of a clear oval among them', () => {
    const oval = (depth: number) =>
      [0, 45, 90, 135].map((axis) => 80.03 - depth / 5000 + 0.01 * Math.cos((axis * Math.PI) / 90))
    const levelsMm = [10, 30, 50]
    const measured = measuredBore(
      { levelsMm, axesDegrees: [0, 45, 90, 135], rows: levelsMm.map(oval) },
      { spec: { newMinMm: 80, newMaxMm: 80.02, wearLimitMm: 80.1 } },
    )
    const [bore] = measured.bores
    if (!bore) throw new Error('no bore')
    const other = { ...bore, id: 'other', name: 'New', role: 'for-comparison' as const }
    const others = other.surveys.map((survey) => ({ ...survey, id: 'other-survey' }))
    const { result } = run({ ...measured, bores: [bore, { ...other, surveys: others }] })
    const kinds = new Map(result.figures.map((figure) => [figure.name.kind, figure]))
    expect([...kinds.keys()].sort()).toEqual([
      'fitted-oval',
      'largest-difference',
      'level-mean',
      'mean-difference',
      'ovality',
      'taper',
    ])
    for (const { apartMm, toleranceMm, name } of result.figures) {
      expect(apartMm, JSON.stringify(name)).toBeLessThanOrEqual(toleranceMm)
    }
    // The pair that was chosen is drawn alone: its own interval is narrower than the one that allows for the choice.
    const range = kinds.get('ovality')
    expect((range?.simulated.highMm ?? 0) - (range?.simulated.lowMm ?? 0)).toBeLessThan(
      (range?.stated.highMm ?? 0) - (range?.stated.lowMm ?? 0),
    )
    expect(simulationTexts(result)[1]).toMatch(
      /^So do the ± .* level means, fitted ovals, out-of-round, taper/,
    )
  })

  it('name a figure that they do not bear out', () => {
    const { result } = run(measuredBore(table), 1000)
    const spoilt = result.figures.map((figure) => ({ ...figure, apartMm: 1 }))
    expect(simulationTexts({ ...result, figures: spoilt })[1]).toMatch(
      /^Mean at 10 mm \(bore bore\): stated 80/,
    )
  })

  it('are the same for the same seed, others for another, and tell how far they are', () => {
    const measured = measuredBore(table)
    const one = run(measured, 1000, 7)
    expect(run(measured, 1000, 7).result).toEqual(one.result)
    expect(run(measured, 1000, 8).result).not.toEqual(one.result)
    expect(one.reports).toEqual([500, 1000])
  })

  it('refuse to stand on too few trials', () => {
    expect(() => simulate(measuredBore(table), 10, 1).next()).toThrow(RangeError)
  })
})
