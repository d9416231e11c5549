import { describe, expect, it } from 'vitest'
import type { Contribution } from '../../../../src/core/findings'
import { combine, expanded, isCommon } from '../../../../src/core/uncertainty/combine'

const infinite = Number.POSITIVE_INFINITY

function part(id: string, signedMm: number, degreesOfFreedom = infinite, estimate?: string): Contribution {
  return {
    kind: 'repeatability',
    id,
    scope: 'station',
    signedMm,
    degreesOfFreedom,
    ...(estimate ? { estimate } : {}),
    assumed: false,
  }
}

describe('combine', () => {
  it('adds independent errors in squares and shared ones with their signs', () => {
    expect(combine([{ factor: 1, contributions: [part('a', 3), part('b', -4)] }]).standardUncertainty).toBe(5)
    const shared = combine([
      { factor: 1, contributions: [part('a', 3), part('b', 4)] },
      { factor: -1, contributions: [part('a', 3), part('c', 4)] },
    ])
    expect(shared.standardUncertainty).toBeCloseTo(4 * Math.SQRT2, 12)
    expect(
      combine([
        { factor: 0.5, contributions: [part('a', 3)] },
        { factor: 0.5, contributions: [part('a', 3)] },
      ]).standardUncertainty,
    ).toBe(3)
  })

  it('counts the degrees of freedom of one estimate once, and truncates', () => {
    const apart = combine([{ factor: 1, contributions: [part('a', 1, 8), part('b', 1, 8)] }])
    expect(apart.degreesOfFreedom).toBe(16)
    const one = combine([{ factor: 1, contributions: [part('a', 1, 8, 's'), part('b', 1, 8, 's')] }])
    expect(one.degreesOfFreedom).toBe(8)
    // (1 + 1)²/(1/5) = 20 and (1 + 0.9)²/(1/5) = 18.05.
    expect(combine([{ factor: 1, contributions: [part('a', 1, 5), part('b', 1)] }]).degreesOfFreedom).toBe(20)
    expect(
      combine([{ factor: 1, contributions: [part('a', 1, 5), part('b', Math.sqrt(0.9))] }]).degreesOfFreedom,
    ).toBe(18)
  })

  it('has at least one degree of freedom, and infinitely many where nothing is estimated or left', () => {
    expect(combine([{ factor: 1, contributions: [part('a', 1, 0.5)] }]).degreesOfFreedom).toBe(1)
    expect(combine([{ factor: 1, contributions: [part('a', 1)] }]).degreesOfFreedom).toBe(infinite)
    expect(combine([])).toEqual({ standardUncertainty: 0, degreesOfFreedom: infinite })
    expect(expanded(combine([]))).toBe(0)
  })

  it('calls common what more than one station shares', () => {
    const of = (scope: Contribution['scope']) => isCommon({ ...part('a', 1), scope })
    expect((['job', 'standard', 'thermometer', 'set-up', 'bore'] as const).every(of)).toBe(true)
    expect((['station', 'repeat'] as const).some(of)).toBe(false)
  })
})
