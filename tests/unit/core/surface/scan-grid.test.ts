import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fitScan } from '../../../../src/core/scan/fit-scan'
import type { RadialScan, ScanFit } from '../../../../src/core/scan/radial-scan'
import { columnAt, deviationAt, rowAt } from '../../../../src/core/surface/drawn-position'
import {
  mostGridColumns,
  mostGridRows,
  type ScanGridOptions,
  scanGridOf,
} from '../../../../src/core/surface/scan-grid'
import type { WallGrid } from '../../../../src/core/surface/wall-grid'
import { runCount } from '../../../proof/run-count'

const runs = runCount({ quick: 25, full: 250 })
const options: ScanGridOptions = { middleMm: 60, lengthMm: 90, belts: [], isLocal: false }
const radians = Math.PI / 180

function scanOf(
  depthsMm: readonly number[],
  anglesDegrees: readonly number[],
  radius: (depthMm: number, degrees: number) => number,
): RadialScan {
  const radii = depthsMm.flatMap((depth) => anglesDegrees.map((angle) => radius(depth, angle)))
  return { depthsMm, anglesDegrees, radiiUm: Float64Array.from(radii) }
}

/** A fit as though the spindle stood in the axis and the form were a cylinder. */
function centred(scan: RadialScan): ScanFit {
  const nothing = { x: 0, y: 0 }
  return {
    axis: {
      atDeckUm: nothing,
      leanUmPerMm: nothing,
      atDeckDoubtUm: nothing,
      leanDoubtUmPerMm: nothing,
      farthestUm: 0,
    },
    aboutAxisUm: scan.radiiUm,
    smooth: {
      formUm: new Float64Array(scan.radiiUm.length),
      residualUm: scan.radiiUm,
      weights: new Float64Array(scan.radiiUm.length).fill(1),
      sigmaUm: 1,
    },
  }
}

const every = (step: number) => Array.from({ length: Math.ceil(360 / step) }, (_, i) => i * step)
const levels = Array.from({ length: 14 }, (_, i) => 4 + 6 * i)
const at = (grid: WallGrid, depthMm: number, degrees: number) =>
  deviationAt(grid, columnAt(grid, degrees * radians), rowAt(grid, depthMm))
const isHatchedAt = ({ hatched, angles, ...grid }: WallGrid, depthMm: number, degrees: number) =>
  hatched[
    Math.floor(rowAt({ ...grid, hatched, angles }, depthMm)) * angles.length +
      Math.floor(columnAt({ ...grid, hatched, angles }, degrees * radians))
  ] === 1

describe('the wall of a scan', () => {
  it(`passes through every radius, from their median, and never leaves those of its level and cell, ${runs} times (seed 63)`, () => {
    const scans = fc
      .tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 6, max: 24 }))
      .chain(([count, angles]) =>
        fc
          .array(fc.option(fc.integer({ min: -400, max: 400 }), { nil: undefined, freq: 8 }), {
            minLength: count * angles,
            maxLength: count * angles,
          })
          .filter((tenths) => tenths.some((value) => value !== undefined))
          .map((tenths) => ({
            depthsMm: Array.from({ length: count }, (_, i) => 5 + 7 * i),
            anglesDegrees: Array.from({ length: angles }, (_, i) => 3 + (350 * i) / angles),
            radiiUm: Float64Array.from(tenths, (value) => (value === undefined ? Number.NaN : value / 10)),
          })),
      )
    fc.assert(
      fc.property(scans, (scan) => {
        const grid = scanGridOf(scan, centred(scan), options)
        const known = [...scan.radiiUm].filter((value) => !Number.isNaN(value)).sort((a, b) => a - b)
        const middle = known[known.length >> 1] ?? 0
        scan.depthsMm.forEach((depth, level) => {
          scan.anglesDegrees.forEach((angle, column) => {
            const radius = scan.radiiUm[level * scan.anglesDegrees.length + column] ?? 0
            if (!Number.isNaN(radius)) expect(at(grid, depth, angle)).toBeCloseTo(radius - middle, 4)
          })
        })
        const least = (known[0] ?? 0) - middle - 1e-4
        const most = (known.at(-1) ?? 0) - middle + 1e-4
        expect(grid.deviationsUm.every((value) => value >= least && value <= most)).toBe(true)
      }),
      { seed: 63, numRuns: runs },
    )
  })

  it('is not symmetric: a scuff on one side stands on that side alone', () => {
    const scan = scanOf(levels, every(5), (depth, angle) => (depth === 34 && angle === 50 ? -18 : 0))
    const grid = scanGridOf(scan, centred(scan), options)
    expect(at(grid, 34, 50)).toBeCloseTo(-18, 6)
    expect(at(grid, 34, 230)).toBeCloseTo(0, 6)
    expect(grid.proven.every((mark) => mark === 0)).toBe(true)
  })

  it('is hatched around a port, past the outermost levels, in a belt and far from any level', () => {
    const scan = scanOf([10, 16, 22, 60, 66], every(5), (depth, angle) =>
      depth === 16 && angle >= 100 && angle <= 130 ? Number.NaN : 0,
    )
    const grid = scanGridOf(scan, centred(scan), {
      ...options,
      belts: [{ fromDepthMm: 62, toDepthMm: 64 }],
    })
    expect(isHatchedAt(grid, 16.1, 115)).toBe(true)
    expect(isHatchedAt(grid, 13, 98)).toBe(true)
    expect(isHatchedAt(grid, 13, 92)).toBe(false)
    expect(isHatchedAt(grid, 19, 200)).toBe(false)
    expect(isHatchedAt(grid, 5, 200)).toBe(true)
    expect(isHatchedAt(grid, 70, 200)).toBe(true)
    expect(isHatchedAt(grid, 29, 200)).toBe(false)
    expect(isHatchedAt(grid, 40, 200)).toBe(true)
    expect(isHatchedAt(grid, 63, 200)).toBe(true)
    expect(isHatchedAt(grid, 61, 200)).toBe(false)
  })

  it('of more places than the graphics card gets keeps the narrowest score at its full depth', () => {
    const depths = Array.from({ length: 700 }, (_, i) => 5 + i / 10)
    const angles = every(0.25)
    const scan = scanOf(depths, angles, (depth, angle) =>
      Math.abs(depth - 40) < 1e-6 && angle === 123.25 ? 11 : 0,
    )
    const grid = scanGridOf(scan, centred(scan), options)
    expect(grid.depthsMm.length).toBeLessThanOrEqual(mostGridRows)
    expect(grid.angles.length).toBeLessThanOrEqual(mostGridColumns)
    expect(grid.deviationsUm.reduce((most, value) => Math.max(most, value))).toBe(11)
  })

  it('of 512 levels, more by two than there is room for, has nearly every one of them as a row', () => {
    const depths = Array.from({ length: 512 }, (_, i) => 4 + i / 6)
    const scan = scanOf(depths, every(2), (depth, angle) => depth / 10 + (angle === 40 ? 3 : 0))
    const grid = scanGridOf(scan, centred(scan), options)
    expect(grid.depthsMm).toHaveLength(mostGridRows)
    const rows = new Set(Array.from(grid.depthsMm, (depth) => depth.toFixed(6)))
    expect(depths.filter((depth) => !rows.has(depth.toFixed(6))).length).toBeLessThanOrEqual(4)
  })

  it('tied to a size shows twice the radius, as limits are drawn', () => {
    const scan = scanOf(levels, every(5), () => 3)
    const grid = scanGridOf(scan, centred(scan), { ...options, tied: { byUm: 30_000, stations: [] } })
    expect(at(grid, 34, 50)).toBeCloseTo(6, 3)
  })

  it('without its smooth form shows what is local: a worn, oval and leaning wall is flat but for its scuff', () => {
    const radius = (depth: number, angle: number) => {
      const [c, s] = [Math.cos(angle * radians), Math.sin(angle * radians)]
      const form = 5 * Math.exp(-depth / 20) + 2 * Math.cos(2 * angle * radians)
      return (18 + 0.15 * depth) * c - 11 * s + form + (depth === 34 && angle === 50 ? -18 : 0)
    }
    const scan = scanOf(levels, every(5), radius)
    const fit = fitScan(scan, {
      nearDiameterMm: 60,
      repeatabilityUm: 0.8,
      repeatabilityDegreesOfFreedom: 50,
    })
    const whole = scanGridOf(scan, fit, options)
    const local = scanGridOf(scan, fit, { ...options, isLocal: true })
    const span = (grid: WallGrid) => Math.max(...grid.deviationsUm) - Math.min(...grid.deviationsUm)
    expect(at(local, 34, 50)).toBeLessThan(-15)
    expect(at(local, 34, 230)).toBeGreaterThan(-1)
    expect(at(local, 34, 230)).toBeLessThan(1)
    expect(span(whole)).toBeGreaterThan(span(local))
  })
})
