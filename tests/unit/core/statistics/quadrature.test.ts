import { describe, expect, it } from 'vitest'
import {
  deviationOfEstimate,
  deviationOfLargeEstimate,
} from '../../../../src/core/statistics/deviation-of-estimate'
import { gaussHermite } from '../../../../src/core/statistics/gauss-hermite'
import { gaussLegendre } from '../../../../src/core/statistics/gauss-legendre'
import { largestOfStationsFactor } from '../../../../src/core/statistics/largest-of-stations'
import { quantileOfDistribution, risingRoot } from '../../../../src/core/statistics/root'
import { studentCdf, studentQuantile } from '../../../../src/core/statistics/student'
import {
  studentisedRangeCdf,
  studentisedRangeQuantile,
} from '../../../../src/core/statistics/studentised-range'

describe('Gauss–Legendre quadrature', () => {
  it.each([2, 5, 18, 36, 80, 128])('with %s nodes is exact for polynomials up to degree 2n − 1', (n) => {
    const { nodes, weights } = gaussLegendre(n, 0, 1)
    for (const degree of [0, 1, 2 * n - 2, 2 * n - 1]) {
      const sum = nodes.reduce((total, x, i) => total + (weights[i] ?? 0) * x ** degree, 0)
      expect(sum).toBeCloseTo(1 / (degree + 1), 13)
    }
  })

  it('refuses fewer than two nodes', () => {
    expect(() => gaussLegendre(1, 0, 1)).toThrow(RangeError)
  })
})

describe('Gauss–Hermite quadrature', () => {
  it('has the nodes and weights of Abramowitz & Stegun, table 25.10 (from memory, 5 nodes)', () => {
    const { nodes, weights } = gaussHermite(5)
    const table = [0, 0.958572464614, 2.020182870456]
    const tableWeights = [0.945308720483, 0.393619323152, 0.019953242059]
    for (const i of [0, 1, 2]) {
      expect((nodes[2 + i] ?? 0) / Math.SQRT2).toBeCloseTo(table[i] ?? 0, 11)
      expect((nodes[2 - i] ?? 0) / Math.SQRT2).toBeCloseTo(-(table[i] ?? 0), 11)
      expect((weights[2 + i] ?? 0) * Math.sqrt(Math.PI)).toBeCloseTo(tableWeights[i] ?? 0, 11)
    }
  })

  it.each([1, 2, 7, 12, 20])('with %s nodes has the moments of the normal up to degree 2n − 1', (n) => {
    const { nodes, weights } = gaussHermite(n)
    let moment = 1
    for (let degree = 0; degree <= 2 * n - 2; degree += 2) {
      const even = nodes.reduce((sum, z, i) => sum + (weights[i] ?? 0) * z ** degree, 0)
      expect(even / moment).toBeCloseTo(1, 11)
      const odd = nodes.reduce((sum, z, i) => sum + (weights[i] ?? 0) * z ** (degree + 1), 0)
      expect(odd / moment).toBeCloseTo(0, 10)
      moment *= degree + 1
    }
  })

  it('refuses a number of nodes that it cannot find', () => {
    for (const n of [0, 1.5, 21]) expect(() => gaussHermite(n)).toThrow(RangeError)
  })
})

describe('the spread of an estimated standard deviation', () => {
  it.each([1, 2, 5, 8, 20, 100, 1e5])('has with ν = %s the mean square 1 and weights that make 1', (nu) => {
    const { nodes, weights } = deviationOfEstimate(nu, 64)
    const mean = (power: number) => nodes.reduce((sum, w, i) => sum + (weights[i] ?? 0) * w ** power, 0)
    expect(mean(0)).toBeCloseTo(1, 12)
    expect(mean(2)).toBeCloseTo(1, 7)
    // E[w⁴] = 1 + 2/ν, from the variance of chi-squared.
    expect(mean(4)).toBeCloseTo(1 + 2 / nu, 5)
  })

  it.each([
    [16, 7],
    [30, 5],
    [100, 3],
  ])('has them with ν = %s in %s nodes too', (nu, points) => {
    const { nodes, weights } = deviationOfLargeEstimate(nu, points)
    const mean = (power: number) => nodes.reduce((sum, w, i) => sum + (weights[i] ?? 0) * w ** power, 0)
    expect(mean(0)).toBeCloseTo(1, 12)
    expect(mean(2)).toBeCloseTo(1, 4)
    expect(mean(4)).toBeCloseTo(1 + 2 / nu, 3)
    expect(() => deviationOfLargeEstimate(15, points)).toThrow(RangeError)
  })

  it('is one node for infinitely many degrees of freedom, and refuses none', () => {
    expect([...deviationOfEstimate(Number.POSITIVE_INFINITY, 18).nodes]).toEqual([1])
    expect([...deviationOfLargeEstimate(Number.POSITIVE_INFINITY, 3).nodes]).toEqual([1])
    expect(() => deviationOfEstimate(0, 18)).toThrow(RangeError)
  })
})

describe('roots', () => {
  it('finds where a rising function reaches a target, also a steep or a flat one', () => {
    expect(risingRoot((x) => x ** 3, 8, 0, 10, 1e-9)).toBeCloseTo(2, 8)
    expect(risingRoot((x) => Math.tanh(1000 * (x - 0.3)), 0, 0, 1, 1e-9)).toBeCloseTo(0.3, 8)
    expect(() => risingRoot((x) => x, 8, 0, 5, 1e-9)).toThrow(RangeError)
  })

  it('widens a bad guess of a quantile, either way', () => {
    const exponential = (x: number) => 1 - Math.exp(-x)
    expect(quantileOfDistribution(exponential, 0.95, 100, 200, 1e-9)).toBeCloseTo(-Math.log(0.05), 8)
    expect(quantileOfDistribution(exponential, 0.95, 0.001, 0.002, 1e-9)).toBeCloseTo(-Math.log(0.05), 8)
    expect(quantileOfDistribution((x) => exponential(x * 1e-12), 0.95, 2, 6, 1)).toBeCloseTo(2.9957e12, -9)
  })

  it('refuses a guess that is none, rather than search for ever', () => {
    for (const [low, high] of [
      [0, 1],
      [2, 1],
      [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY],
    ] as const) {
      expect(() => quantileOfDistribution((x) => x, 0.5, low, high, 1e-6)).toThrow(RangeError)
    }
  })
})

describe('our own mistakes', () => {
  it('throw with what was expected', () => {
    expect(() => studentCdf(1, 0)).toThrow(/degrees of freedom 0/)
    expect(() => studentQuantile(1, 5)).toThrow(/probability 1/)
    expect(() => studentQuantile(0.5, Number.NaN)).toThrow(/degrees of freedom NaN/)
    expect(() => studentisedRangeCdf(1, 1.5, 5)).toThrow(/1.5 values/)
    expect(() => largestOfStationsFactor([], 5)).toThrow(/no stations/)
  })

  it('are not made of one value, which has no range', () => {
    expect(studentisedRangeQuantile(0.95, 1, 5)).toBe(0)
    expect(studentisedRangeCdf(0, 4, 5)).toBe(0)
  })
})
