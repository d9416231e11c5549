import { describe, expect, it } from 'vitest'
import { noncentralChiSquared2 } from '../../src/core/statistics/noncentral-chi-squared'
import { squaredLengthQuantile } from '../../src/core/statistics/squared-length'

/** Values of `scipy.stats.ncx2.cdf(x, 2, λ)`, SciPy 1.17.1 (general reference library). */
const byScipy = [
  [4, 1, 0.73098793996409],
  [9, 4, 0.7856379118373507],
  [12.25, 9, 0.6343197991136439],
  [25, 36, 0.1374851637699673],
  [1, 4, 0.08189230363059402],
  [100, 64, 0.9740583370455846],
] as const

describe('the noncentral chi-squared distribution with two degrees of freedom', () => {
  it.each(byScipy)('at %d with noncentrality %d is that of SciPy', (x, lambda, p) => {
    expect(noncentralChiSquared2(x, lambda)).toBeCloseTo(p, 12)
  })

  it('is 1 − e^(−x/2) without noncentrality: 5.991 leaves 5 % (printed in tables of chi-squared as 5.991)', () => {
    expect(1 - noncentralChiSquared2(5.991, 0)).toBeCloseTo(0.05, 4)
  })

  it('meets the identity Q(a, a) = (1 + e^(−a²)·I₀(a²))/2 of the Marcum function at a = 1, I₀(1) = 1.2660658778', () => {
    const q = (1 + Math.exp(-1) * 1.2660658778) / 2
    expect(1 - noncentralChiSquared2(1, 1)).toBeCloseTo(q, 9)
  })

  it('refuses what it cannot compute', () => {
    expect(() => noncentralChiSquared2(-1, 1)).toThrow(RangeError)
    expect(() => noncentralChiSquared2(1, 2000)).toThrow(RangeError)
    expect(() => noncentralChiSquared2(Number.NaN, 1)).toThrow(RangeError)
  })
})

describe('the squared length of a vector in the plane over an estimated variance', () => {
  it.each([
    // 2·scipy.stats.f.ppf(p, 2, ν), SciPy 1.17.1 (general reference library).
    [0.95, 10, 8.2056420302608],
    [0.95, 20, 6.9856569534712625],
    [0.99, 8, 17.29822128134703],
  ])('at %d with %d degrees of freedom is twice the F quantile of SciPy', (p, nu, value) => {
    expect(squaredLengthQuantile(p, nu)).toBeCloseTo(value, 9)
  })

  it('is the 5.991 that tables of chi-squared print for two degrees when the variance is known', () => {
    expect(squaredLengthQuantile(0.95, Number.POSITIVE_INFINITY)).toBeCloseTo(5.991, 3)
  })
})
