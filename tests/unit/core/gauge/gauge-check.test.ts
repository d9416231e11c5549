import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inspect } from '../../../../src/core/inspect'
import type { Gauge, GaugeCheck, Spec } from '../../../../src/core/measured'
import { studentQuantile } from '../../../../src/core/statistics/student'
import { runCount } from '../../../proof/run-count'
import { seededRandom } from '../../../proof/seeded-random'
import { type Circumstances, findingOf, first, measuredBore } from '../measured-bore'

const table = { levelsMm: [10], axesDegrees: [0], rows: [[80.01]] }

function checked(check: GaugeCheck, given: Circumstances = {}, own: Partial<Gauge> = {}) {
  const { gaugeChecks } = inspect(
    measuredBore(table, { ...given, gauge: { ...given.gauge, ...own, checks: [check] } }),
  )
  return first(gaugeChecks)
}

/** Invented: mean 3, deviations −2 to 2. */
const five: GaugeCheck = { date: '2026-03-01', dialUm: [3, 1, 5, 2, 4] }

describe('the check of a gauge', () => {
  it('gives the standard deviation with its interval and the drift over the order', () => {
    const { scatter, drift, readings, date } = checked(five)
    expect([readings, date, scatter?.degreesOfFreedom]).toEqual([5, '2026-03-01', 4])
    expect(scatter?.standardDeviationUm).toBeCloseTo(Math.sqrt(10 / 4), 12)
    // s·√(4/11.143) and s·√(4/0.484): chi-squared of 4, NIST/SEMATECH e-Handbook, 1.3.6.7.4, from memory.
    expect(scatter?.lowUm).toBeCloseTo(Math.sqrt(10 / 11.143), 3)
    expect(scatter?.highUm).toBeCloseTo(Math.sqrt(10 / 0.4844), 2)
    // Σ(i − 2)(y − 3) = 3 over Σ(i − 2)² = 10; what is left over has 10 − 0.9 in squares and 3 degrees.
    expect(drift?.overCheckUm).toBeCloseTo(4 * 0.3, 12)
    expect(drift?.expandedUm).toBeCloseTo(4 * studentQuantile(0.975, 3) * Math.sqrt(9.1 / 3 / 10), 9)
    expect(drift?.standsOut).toBe(false)
  })

  it('needs two readings for a scatter and three for a drift', () => {
    expect(checked({ dialUm: [1] })).toEqual({
      gaugeId: 'gauge',
      index: 0,
      readings: 1,
      stepUm: 1,
      isInUse: false,
    })
    const two = checked({ dialUm: [1, 2] })
    expect(two.scatter?.degreesOfFreedom).toBe(1)
    expect(two.drift).toBeUndefined()
    // Σ(i − 1)(y − 5/3) = 1 over Σ(i − 1)² = 2, over two steps.
    expect(checked({ dialUm: [1, 2, 2] }).drift?.overCheckUm).toBeCloseTo(1, 12)
  })

  it('says where the step that is read hides the scatter, and lets no drift stand out for less than a step', () => {
    const alike = checked({ dialUm: [2, 2, 2, 2] })
    expect(alike.scatter).toMatchObject({ standardDeviationUm: 0, isBelowStep: true })
    expect(alike.drift?.expandedUm).toBeGreaterThan(0)
    expect(checked({ dialUm: [2, 2, 3, 3] }, {}, { stepUm: 1.9 }).scatter?.isBelowStep).toBe(false)
    expect(checked({ dialUm: [2, 2, 3, 3] }, {}, { stepUm: 5 }).scatter?.isBelowStep).toBe(true)
    expect(checked({ dialUm: [0, 1, 2, 3, 4, 5] }).drift?.standsOut).toBe(true)
    expect(checked({ dialUm: [0, 0.1, 0.2] }).drift?.standsOut).toBe(false)
  })

  it('is the same for sizes as for a dial, wherever its zero; turned round, the drift turns its sign (seed 64)', () => {
    const um = fc.integer({ min: -20, max: 20 })
    fc.assert(
      fc.property(fc.array(um, { minLength: 3, maxLength: 12 }), um, (dialUm, offset) => {
        const { drift, scatter } = checked({ dialUm })
        const moved = checked({ sizesMm: dialUm.map((value) => 80 + (value + offset) / 1000) })
        expect(moved.scatter?.standardDeviationUm).toBeCloseTo(scatter?.standardDeviationUm ?? Number.NaN, 8)
        expect(moved.drift?.overCheckUm).toBeCloseTo(drift?.overCheckUm ?? Number.NaN, 8)
        const turned = checked({ dialUm: dialUm.toReversed() })
        expect(turned.drift?.overCheckUm).toBeCloseTo(-(drift?.overCheckUm ?? Number.NaN), 9)
        expect(turned.drift?.expandedUm).toBeCloseTo(drift?.expandedUm ?? Number.NaN, 9)
      }),
      { seed: 64, numRuns: 60 },
    )
  })

  it('holds the true scatter in 95 of 100 checks, and finds a drift in 5 of 100 where there is none (seed 65)', () => {
    const random = seededRandom(65)
    const runs = runCount({ quick: 2000, full: 20_000 })
    let held = 0
    let drifts = 0
    for (let run = 0; run < runs; run++) {
      const dialUm = Array.from({ length: 8 }, () => random.normal(1.5))
      const { scatter, drift } = checked({ dialUm }, {}, { stepUm: 0.001 })
      if (scatter && scatter.lowUm <= 1.5 && scatter.highUm >= 1.5) held++
      if (drift?.standsOut) drifts++
    }
    const within = 4 * Math.sqrt((0.05 * 0.95) / runs)
    expect(Math.abs(held / runs - 0.95)).toBeLessThan(within)
    expect(Math.abs(drifts / runs - 0.05)).toBeLessThan(within)
  })
})

describe('what a checked gauge can answer', () => {
  const spec: Spec = { newMinMm: 80, newMaxMm: 80.02 }
  const own = { repeatabilityUm: 1.581, repeatabilityDegreesOfFreedom: 4 }

  it('is what a reading in the middle of the limits is worth once the figures are the gauge’s own', () => {
    const { answer, isInUse } = checked(five, { spec })
    const taken = measuredBore(table, { spec, gauge: { ...own, checks: [five] } })
    expect(isInUse).toBe(false)
    expect(first(inspect(taken).gaugeChecks).isInUse).toBe(true)
    expect(answer?.expandedMm).toBeCloseTo(first(findingOf(taken).stations).expandedMm, 9)
    expect(answer).toMatchObject({ boreId: 'bore', repeats: 1, about: 'band' })
    expect(answer?.bandMm).toBeCloseTo(0.02, 9)
    expect(answer?.shareOfBand).toBeCloseTo((6 * 0.001581) / 0.02, 9)
    // A reading just within the margin is proven inside by its own rule, one just beyond it is not.
    const proven = (offMm: number) => {
      const rows = [[80 + (answer?.marginMm ?? 0) + offMm]]
      const bore = measuredBore({ ...table, rows }, { spec, gauge: own })
      return first(findingOf(bore).stations).conformity?.verdict
    }
    expect([proven(2e-6), proven(-2e-6)]).toEqual(['inside', 'too-close'])
  })

  it('is nothing in a band that no reading could be proven inside', () => {
    const { answer } = checked({ dialUm: [0, 12, -9, 14, -13] }, { spec })
    expect(answer?.about).toBe('band')
    expect(answer?.marginMm).toBeUndefined()
  })

  it('is about the wear limit where there is one, with the share of the new band', () => {
    const { answer } = checked(five, { spec: { ...spec, wearLimitMm: 80.1 } })
    expect(answer?.about).toBe('wear')
    expect(answer?.bandMm).toBeCloseTo(0.02, 9)
    expect(answer?.marginMm).toBeLessThan(answer?.expandedMm ?? 0)
    expect(checked(five, { spec: { newMaxMm: 80.02 } }).answer).toMatchObject({ about: 'one-limit' })
    expect(checked(five).answer).toMatchObject({ about: 'nothing' })
  })

  it('is left out while the gauge measured no bore of this engine', () => {
    expect(checked(five, { bore: { role: 'for-comparison' } }).answer).toBeUndefined()
  })

  it('goes by as many repeats as most stations of the survey have', () => {
    const rows = [[[80, 80, 80], [80, 80, 80], [80]]]
    const bore = { levelsMm: [10], axesDegrees: [0, 45, 90], rows }
    const { gaugeChecks } = inspect(measuredBore(bore, { gauge: { checks: [five] } }))
    expect(first(gaugeChecks).answer?.repeats).toBe(3)
  })
})
