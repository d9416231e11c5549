import { describe, expect, it } from 'vitest'
import type { StationFinding } from '../../../../src/core/findings'
import { ovalBoundMm } from '../../../../src/core/form/oval-bound'
import type { Measured, Survey } from '../../../../src/core/measured'
import { runCount } from '../../../proof/run-count'
import { type SeededRandom, seededRandom } from '../../../proof/seeded-random'
import { findingOf, first, measuredBore, onlyScaleDoubt } from '../measured-bore'

/** Readings of an oval bore: mean 80 mm, `ovalMm` from largest to smallest, larger across `toDegrees`. */
function stations(
  axesDegrees: readonly number[],
  ovalMm: number,
  toDegrees: number,
  uMm: number,
  random?: SeededRandom,
): StationFinding[] {
  const size = (axis: number) =>
    80 + (ovalMm / 2) * Math.cos((2 * (axis - toDegrees) * Math.PI) / 180) + (random?.normal(uMm) ?? 0)
  const table = { levelsMm: [10], axesDegrees, rows: [axesDegrees.map(size)] }
  return [...findingOf(measuredBore(table, onlyScaleDoubt(1000 * uMm))).stations]
}

describe('the most that an oval may be', () => {
  it('is not known from one axis, from two, or from two read again from the other side', () => {
    expect(ovalBoundMm(stations([0], 0.02, 0, 0.001))).toBeUndefined()
    expect(ovalBoundMm(stations([0, 90], 0.02, 0, 0.001))).toBeUndefined()
    const [one, other] = stations([0, 45], 0.02, 0, 0.001)
    if (!one || !other) throw new Error('two stations')
    expect(ovalBoundMm([one, other, { ...one, axisDegrees: 180 }])).toBeUndefined()
  })

  it('is the oval itself where the readings have no doubt, whatever its direction and the axes', () => {
    for (const axes of [
      [0, 60, 120],
      [0, 45, 90, 135],
      [0, 45, 90],
      [10, 33, 140],
    ]) {
      for (const direction of [0, 17, 45, 90, 161]) {
        expect(ovalBoundMm(stations(axes, 0.02, direction, 1e-12))).toBeCloseTo(0.02, 9)
      }
    }
  })

  it('adds 2·√5.99·u·√(2/n) for n axes evenly apart and a doubt that is known', () => {
    const bound = ovalBoundMm(stations([0, 45, 90, 135], 0, 0, 0.001))
    expect(bound).toBeCloseTo(2 * Math.sqrt(5.991465) * 0.001 * Math.sqrt(2 / 4), 8)
  })

  it('holds the oval in 95 of 100 simulated levels or more (seed 43)', () => {
    const random = seededRandom(43)
    const runs = runCount({ quick: 1000, full: 20_000 })
    for (const [axes, oval] of [
      [[0, 60, 120], 0.001],
      [[0, 45, 90], 0.004],
      [[0, 45, 90, 135], 0.012],
    ] as const) {
      let held = 0
      for (let run = 0; run < runs; run++) {
        const bound = ovalBoundMm(stations(axes, oval, 180 * random.even(), 0.002, random)) ?? 0
        if (bound >= oval) held += 1
      }
      expect(held / runs, `${axes}`).toBeGreaterThan(0.95 - 2 * Math.sqrt((0.95 * 0.05) / runs))
    }
  })
})

describe('a verdict from three contacts', () => {
  const spec = { wearLimitMm: 80.05 }
  const three = measuredBore(
    { levelsMm: [10, 40], axesDegrees: [0], rows: [[80.01], [80.01]] },
    { spec, gauge: { kind: 'three-contact-micrometer' }, setUp: { entry: 'direct' } },
  )
  const [bore] = three.bores
  const [survey] = bore?.surveys ?? []
  if (!bore || !survey) throw new Error('a bore with a survey')

  /** The same with a survey by two contacts before it. */
  function beside(sizes: readonly (readonly number[])[], change: Partial<Survey> = {}): Measured {
    const axesDegrees = [0, 45, 90]
    const other: Survey = {
      id: 'two',
      setUpId: 'two',
      levelsMm: [10.5, 40],
      axesDegrees,
      readings: sizes.flatMap((row, i) =>
        row.map((mm, j) => ({
          depthMm: [10.5, 40][i] ?? 0,
          axisDegrees: axesDegrees[j] ?? 0,
          sizesMm: [mm],
        })),
      ),
      ...change,
    }
    const [setUp] = three.setUps
    if (!setUp || !bore || !survey) throw new Error('a set-up')
    return {
      ...three,
      gauges: [...three.gauges, { id: 'two', kind: 'dial-0.001-micrometer' }],
      setUps: [...three.setUps, { ...setUp, id: 'two', gaugeId: 'two', entry: 'size' }],
      bores: [{ ...bore, surveys: [other, survey] }],
    }
  }
  const round = [80.011, 80.01, 80.009]
  const firm = (measured: Measured) => {
    const { verdict } = findingOf(measured)
    return verdict.known && verdict.verdict === 'inside' && verdict.firm
  }

  it('is firm only where two contacts bound the oval at every level', () => {
    expect(firm(three)).toBe(false)
    expect(firm(beside([round, round]))).toBe(true)
    expect(firm(beside([round]))).toBe(false)
    expect(firm(beside([round, round.slice(0, 2)]))).toBe(false)
  })

  it('is not where the oval would reach past the limit, though every reading is inside', () => {
    // Larger by 40 µm than the mean at 22.5°, where nobody read: 28 µm of that show at 0° and 45°.
    const oval = [80.038, 80.038, 79.982]
    expect(firm(beside([round, oval]))).toBe(false)
  })

  it('is not by readings of another occasion', () => {
    expect(firm(beside([round, round], { hoursRun: 20 }))).toBe(false)
    expect(firm(beside([round, round], { date: '2024-02-29' }))).toBe(false)
  })

  it('shows no oval and is in no difference from a bore read by two contacts', () => {
    const finding = findingOf(beside([round, round]))
    expect(first(finding.levels).ovality).toBeUndefined()
    expect(finding.ovality.every((shape) => !shape.known)).toBe(true)
  })
})
