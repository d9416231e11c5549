import { describe, expect, it } from 'vitest'
import { canBeFitted, fitScan } from '../../../../src/core/scan/fit-scan'
import type { RadialScan } from '../../../../src/core/scan/radial-scan'
import { fourCornerScuff, scuffOptions } from './four-corner-scuff'

const within = (found: number, truth: number, most: number) =>
  expect(Math.abs(found - truth)).toBeLessThanOrEqual(most)

describe('the axis of the four-corner scuff', () => {
  it.each([72, 360] as const)('is that of the spindle to 0.1 µm at both ends, from %i angles', (angles) => {
    const { axis } = fitScan(fourCornerScuff(angles), scuffOptions)
    for (const depth of [4, 84]) {
      within(axis.atDeckUm.x + depth * axis.leanUmPerMm.x, 18 + 0.15 * depth, 0.1)
      within(axis.atDeckUm.y + depth * axis.leanUmPerMm.y, -11 - 0.05 * depth, 0.1)
    }
    within(axis.leanUmPerMm.x, 0.15, 0.002)
    within(axis.leanUmPerMm.y, -0.05, 0.002)
  })

  it('says how doubtful it is and how far it stands from the spindle', () => {
    const scan = fourCornerScuff(72)
    const { axis } = fitScan(scan, scuffOptions)
    const doubt = Math.hypot(axis.atDeckDoubtUm.x, axis.atDeckDoubtUm.y)
    expect(doubt).toBeLessThan(0.2)
    expect(axis.farthestUm).toBeCloseTo(Math.hypot(18 + 0.15 * 84, -11 - 0.05 * 84), 0)
  })
})

describe('the smooth form of the four-corner scuff', () => {
  it('leaves the probe’s own scatter over, and the smears stand out of it', () => {
    const scan = fourCornerScuff(360)
    const { smooth } = fitScan(scan, scuffOptions)
    expect(smooth.sigmaUm).toBeGreaterThan(0.7)
    expect(smooth.sigmaUm).toBeLessThan(1.3)
    const at = (depth: number, angle: number) =>
      scan.depthsMm.indexOf(depth) * 360 + scan.anglesDegrees.indexOf(angle)
    for (const angle of [48, 213, 308]) {
      expect(smooth.residualUm[at(32, angle)]).toBeLessThan(-6)
      expect(smooth.weights[at(32, angle)]).toBe(0)
    }
    for (const angle of [90, 120, 180, 270]) {
      expect(Math.abs(smooth.residualUm[at(76, angle)] ?? Number.NaN)).toBeLessThan(3)
    }
  })

  it('is missing nowhere, while what is left over is missing in the ports', () => {
    const scan = fourCornerScuff(72)
    const { smooth, aboutAxisUm } = fitScan(scan, scuffOptions)
    expect(smooth.formUm.every((form) => Number.isFinite(form))).toBe(true)
    for (const [i, radius] of scan.radiiUm.entries()) {
      expect(Number.isNaN(smooth.residualUm[i])).toBe(Number.isNaN(radius))
      expect(Number.isNaN(aboutAxisUm[i])).toBe(Number.isNaN(radius))
    }
  })
})

describe('a scan that shows no axis', () => {
  const half: RadialScan = {
    depthsMm: [10, 20],
    anglesDegrees: Array.from({ length: 36 }, (_, i) => 10 * i),
    radiiUm: Float64Array.from({ length: 72 }, (_, i) => (i % 36 < 19 ? 1 : Number.NaN)),
  }

  it('is refused before it is fitted', () => {
    expect(canBeFitted(half)).toBe(false)
    expect(() => fitScan(half, scuffOptions)).toThrow('canBeFitted')
  })

  it('with one level all round has an axis whose lean nobody knows', () => {
    const radiiUm = Float64Array.from(half.radiiUm)
    for (let i = 0; i < 36; i++) radiiUm[i] = 5 * Math.cos((i * Math.PI) / 18)
    const { axis } = fitScan({ ...half, radiiUm }, scuffOptions)
    expect(axis.leanDoubtUmPerMm).toBeUndefined()
    expect(axis.leanUmPerMm).toEqual({ x: 0, y: 0 })
  })

  it.each([
    ['too few radii', { radiiUm: new Float64Array(71) }],
    ['depths that fall', { depthsMm: [20, 10] }],
    ['angles that pass a whole turn', { anglesDegrees: Array.from({ length: 36 }, (_, i) => 20 * i) }],
  ])('is our mistake with %s', (_, change) => {
    expect(() => fitScan({ ...half, ...change }, scuffOptions)).toThrow(RangeError)
  })
})
