import { describe, expect, it } from 'vitest'
import { boreFactor } from '../../../src/core/conformity/bore-verdict'
import { canProveInside } from '../../../src/core/conformity/conformity'
import type { Contribution, SourceKind } from '../../../src/core/findings'
import { largestOfStationsFactor } from '../../../src/core/statistics/largest-of-stations'
import { studentQuantile } from '../../../src/core/statistics/student'
import { combine } from '../../../src/core/uncertainty/combine'
import { seededRandom } from '../../proof/seeded-random'
import { type Circumstances, findingOf, first, measuredBore } from './measured-bore'

/** Figures computed by ourselves beforehand with other programs; they watch for change, not for truth. */
const infinite = Number.POSITIVE_INFINITY

function temperatureDoubtUm(
  setUp: Circumstances['setUp'],
  thermometers: Circumstances['thermometers'],
): number[] {
  const finding = findingOf(
    measuredBore(
      { levelsMm: [40], axesDegrees: [0], rows: [[86]] },
      { setUp: { settingSizeMm: 86, ...setUp }, ...(thermometers ? { thermometers } : {}) },
    ),
  )
  const kinds: SourceKind[] = ['reference-temperature', 'bore-thermometer', 'temperature-difference']
  return kinds.map((kind) => {
    const parts: Contribution[] = first(finding.stations).contributions.filter((p) => p.kind === kind)
    return 1000 * combine([{ factor: 1, contributions: parts }]).standardUncertainty
  })
}

describe('doubt of the temperature at 86 mm, iron of 10.5 and steel of 11.5 per million (own computation)', () => {
  it('is 1.34 µm with two independent thermometers good to 1 K', () => {
    const [reference = 0, bore = 0, difference = 0] = temperatureDoubtUm(
      { boreThermometerId: 'a', referenceThermometerId: 'b' },
      [{ id: 'a' }, { id: 'b' }],
    )
    expect(Math.hypot(reference, bore)).toBeCloseTo(1.34, 2)
    expect(difference).toBe(0)
  })

  it('is 0.09 µm with one thermometer, and 0.28 µm with 0.3 K between bore and reference', () => {
    const [reference = 0, bore = 0, difference = 0] = temperatureDoubtUm(
      { boreThermometerId: 'a', referenceThermometerId: 'a' },
      [{ id: 'a' }],
    )
    expect(reference).toBeCloseTo(0.09, 2)
    expect(bore).toBe(0)
    expect(Math.hypot(reference, difference)).toBeCloseTo(0.28, 2)
  })
})

describe('the factor for the largest of 16 stations (own computation)', () => {
  it.each([
    [1, infinite, 2.58],
    [1, 42, 2.64],
    [1, 16, 2.75],
    [1, 8, 2.96],
    [2, infinite, 2.32],
    [2, 42, 2.34],
    [2, 16, 2.39],
    [2, 8, 2.49],
  ])('is at a shared part of %s to 1 and ν = %s the tabulated one', (common, nu, factor) => {
    const stations = Array.from({ length: 16 }, () => ({ common, individual: 1 }))
    expect(largestOfStationsFactor(stations, nu)).toBeCloseTo(factor, 2)
  })

  // Solved by brute force with numpy and scipy 1.17.1: 16,001 points over the shared error.
  it.each([
    [0.5, infinite, 2.69829],
    [1, infinite, 2.58343],
    [2, infinite, 2.31645],
    [4, infinite, 2.03902],
    [8, infinite, 1.85499],
    [16, infinite, 1.75276],
    [50, infinite, 1.67994],
    [1, 8, 2.96046],
    [8, 8, 1.88443],
  ])('keeps three decimals up to a shared part of %s to 1, ν = %s', (common, nu, factor) => {
    const stations = Array.from({ length: 16 }, () => ({ common, individual: 1 }))
    expect(Math.abs(largestOfStationsFactor(stations, nu) - factor)).toBeLessThan(1e-3)
  })

  // Solved by adaptive quadrature over both errors with scipy 1.17.1.
  it.each([
    [16, 20, 0, 3.19618],
    [16, 20, 1.3, 2.68288],
    [16, 100, 0, 3.88641],
    [30, 20, 0, 3.0037],
    [30, 20, 1.3, 2.61632],
    [30, 100, 0, 3.59864],
    [100, 20, 0, 2.85883],
    [100, 20, 1.3, 2.56935],
    [100, 100, 0, 3.37622],
    [400, 20, 0, 2.81398],
    [400, 20, 1.3, 2.55535],
    [400, 100, 0, 3.30643],
  ])('is with ν = %s for %s stations of %s × u shared %s to 1e-3', (nu, count, common, factor) => {
    const stations = Array.from({ length: count }, () => ({ common, individual: 1 }))
    expect(Math.abs(largestOfStationsFactor(stations, nu) - factor)).toBeLessThan(1e-3)
  })

  it('falls to that of one station where all doubt is shared, and needs no own part at all', () => {
    const stations = Array.from({ length: 16 }, () => ({ common: 2, individual: 0 }))
    expect(largestOfStationsFactor(stations, infinite)).toBeCloseTo(1.64485, 3)
  })

  it('does not depend on the unit, nor on the order of the stations', () => {
    const stations = [1, 2, 3, 0.5].map((common, i) => ({ common, individual: 1 + i / 2 }))
    const k = largestOfStationsFactor(stations, 20)
    expect(
      largestOfStationsFactor(
        stations.map((s) => ({ common: s.common / 1000, individual: s.individual / 1000 })),
        20,
      ),
    ).toBeCloseTo(k, 6)
    expect(largestOfStationsFactor(stations.toReversed(), 20)).toBeCloseTo(k, 6)
  })
})

describe('the narrowest band that can be proven (own computation)', () => {
  it.each([
    [8, 4.61],
    [infinite, 3.92],
  ])('is at ν = %s as many times u as twice t_0.975', (nu, widths) => {
    expect(2 * studentQuantile(0.975, nu)).toBeCloseTo(widths, 2)
    expect(canProveInside(1, nu, widths + 0.01)).toBe(true)
    expect(canProveInside(1, nu, widths - 0.01)).toBe(false)
  })
})

describe('16 stations exactly at the limit (own computation, seed 41)', () => {
  const trials = 20_000
  it.each([
    [2, 1, 0.18],
    [1, 1, 0.31],
    [1, 2, 0.45],
  ])(
    'shared to own doubt %s to %s: the rule for one station errs far too often',
    (common, individual, share) => {
      const random = seededRandom(41)
      const u = Math.hypot(common, individual)
      const factor = largestOfStationsFactor(
        Array.from({ length: 16 }, () => ({ common, individual })),
        infinite,
      )
      let one = 0
      let any = 0
      let bore = 0
      for (let i = 0; i < trials; i++) {
        const z = random.normal(common)
        const errors = Array.from({ length: 16 }, () => (z + random.normal(individual)) / u)
        const most = Math.max(...errors)
        if ((errors[0] ?? 0) >= 1.644854) one += 1 / trials
        if (most >= 1.644854) any += 1 / trials
        if (most >= factor) bore += 1 / trials
      }
      expect(Math.abs(one - 0.05)).toBeLessThan(0.007)
      expect(Math.abs(any - share)).toBeLessThan(0.015)
      expect(Math.abs(bore - 0.05)).toBeLessThan(0.007)
    },
  )
})

it('takes for one station its own t, at the degrees of freedom of its whole doubt', () => {
  const [station] = findingOf(
    measuredBore({ levelsMm: [40], axesDegrees: [0], rows: [[80]] }, { spec: { wearLimitMm: 80.1 } }),
  ).stations
  if (!station) throw new Error('no station')
  expect(boreFactor([station])).toBe(studentQuantile(0.95, station.degreesOfFreedom))
})
