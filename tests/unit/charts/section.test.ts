import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { axisNear } from '../../../src/charts/axis-near'
import { doubtBand, drawnLimits, isTooClose } from '../../../src/charts/drawn-limits'
import { openingsAlong, openingsAround } from '../../../src/charts/openings'
import { angleUnder, cutPx, sectionPlace, sectionScale } from '../../../src/charts/section-scale'
import { shownRange } from '../../../src/charts/shown-range'
import { exaggerationOf } from '../../../src/core/surface/exaggeration'
import { gridOf } from '../../../src/core/surface/grid-of'
import { wallOf } from '../../../src/core/surface/wall'
import { runCount } from '../../proof/run-count'
import { inventedCylinder, inventedPorts } from '../core/surface/invented-cylinder'

const seed = 20251125
const numRuns = runCount({ quick: 200, full: 10_000 })
const rad = Math.PI / 180
const place = { x: 150, y: 112, outer: 91 }
const noEnds = { belowFirm: Number.NEGATIVE_INFINITY, aboveFirm: Number.POSITIVE_INFINITY }

describe('the scale of a section', () => {
  it('draws 54.050 at 500 times the deviation from 54.025: 66.5 mm where 54.025 is 54.025 mm', () => {
    // 54.025 + 500 · 0.025 = 66.525 drawn mm, which is what reaches furthest out.
    const { radius, pixelsPerUm } = sectionScale(place, 54.025, 500, 25)
    expect(radius(25)).toBeCloseTo(place.outer - cutPx, 9)
    expect(radius(0) / radius(25)).toBeCloseTo(54.025 / 66.525, 12)
    expect(radius(-25) / radius(25)).toBeCloseTo(41.525 / 66.525, 12)
    // 20 µm on the diameter are 10 drawn mm from wall to wall.
    expect(20 * pixelsPerUm).toBeCloseTo((10 * 2 * radius(25)) / 66.525, 9)
  })

  it(`has front at the top and right at the right, and finds an angle again where it was drawn, seed ${seed}`, () => {
    const scale = sectionScale(place, 54.025, 500, 25)
    expect(sectionPlace(scale, 0, 80)).toEqual({ x: 150, y: 32 })
    expect(sectionPlace(scale, 90 * rad, 80).x).toBeCloseTo(230, 9)
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 359.9, noNaN: true }),
        fc.integer({ min: 10, max: 90 }),
        (degrees, r) => {
          const { x, y } = sectionPlace(scale, degrees * rad, r)
          const found = angleUnder(scale, x, y) ?? Number.NaN
          expect(Math.abs(((found - degrees + 540) % 360) - 180)).toBeLessThan(1e-6)
        },
      ),
      { seed, numRuns },
    )
    expect(angleUnder(scale, 151, 112)).toBeUndefined()
    expect(angleUnder(scale, 5, 5)).toBeUndefined()
  })
})

describe('what a section and a profile have room for', () => {
  const { bore, finding } = inventedCylinder()
  const wall = wallOf(bore, finding)
  if (!wall) throw new Error('expected a wall')
  const grid = gridOf(wall, finding, { rows: 48, columns: 120 })

  it('reaches from the smallest limit or reading less U to the wear limit with its doubt', () => {
    const { lowUm, highUm } = shownRange(grid, finding.pair, finding.stations)
    const doubt = finding.stations[0]?.doubt
    expect(lowUm).toBeCloseTo(((doubt?.belowFirmMm ?? 0) - 54.025) * 1000, 9)
    expect(highUm).toBeCloseTo(((doubt?.aboveFirmMm ?? 0) - 54.025) * 1000, 9)
  })

  it('leaves a wall drawn at its own exaggeration a radius above nothing', () => {
    const exaggeration = exaggerationOf(54.025, [54, 54.05])
    const { lowUm, highUm } = shownRange(grid, finding.pair, finding.stations)
    expect(sectionScale(place, 54.025, exaggeration, highUm).radius(lowUm)).toBeGreaterThan(0)
  })
})

describe('the limits drawn', () => {
  const wear = drawnLimits({ kind: 'wear', minMm: 54, maxMm: 54.05, newMaxMm: 54.012 }, 54.025)
  const point = (deviationUm: number, doubtUm: readonly [number, number, number, number]) => ({
    at: 0,
    deviationUm,
    doubtUm,
    proven: 0,
    hatchedAfter: false,
  })

  it('are the wear limit, judged, and the new sizes, drawn alone', () => {
    expect(wear.map(({ which, isJudged }) => [which, isJudged])).toEqual([
      ['max', true],
      ['new-max', false],
      ['min', false],
    ])
    expect(wear.map(({ deviationUm }) => Math.round(deviationUm))).toEqual([25, -13, -25])
    expect(wear[0]?.text).toBe('54.050 wear limit')
  })

  it('leave a place between their doubt edges too close to call, at a judged limit alone', () => {
    const edges = [-32, -32, 18, 32] as const
    expect(isTooClose(point(17, edges), wear)).toBe(false)
    expect(isTooClose(point(19, edges), wear)).toBe(true)
    expect(isTooClose(point(33, edges), wear)).toBe(false)
    expect(isTooClose(point(-25, edges), wear)).toBe(false)
    expect(doubtBand(point(0, edges), 'max', { lowUm: -40, highUm: 40 })).toEqual([18, 32])
  })

  it('have a band within what is shown where nothing could be proven inside', () => {
    const hopeless = [-32, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 32] as const
    const range = { lowUm: -40, highUm: 40 }
    expect(doubtBand(point(0, hopeless), 'max', range)).toEqual([-32, 32])
    expect(doubtBand(point(0, hopeless), 'min', range)).toEqual([-32, 32])
    const none = [noEnds.belowFirm, noEnds.belowFirm, noEnds.aboveFirm, noEnds.aboveFirm] as const
    expect(isTooClose(point(0, none), [])).toBe(false)
  })
})

describe('where ports open a cut', () => {
  it('is the exhaust over 0° in two at 35 mm, and all six at 48 mm', () => {
    expect(openingsAround(inventedPorts, 35).map(({ from, to }) => [from / rad, to / rad])).toEqual([
      [315, 360],
      [0, expect.closeTo(45, 9)],
    ])
    expect(openingsAround(inventedPorts, 48)).toHaveLength(7)
    expect(openingsAround(inventedPorts, 8)).toEqual([])
  })

  it('is along 0° the exhaust at its front end and the boost port at its rear end', () => {
    const along = openingsAlong(inventedPorts, 0, [0, 180])
    expect(along).toEqual([
      { name: 'exhaust', from: 29, to: 55 },
      { name: 'boost', from: 42, to: 55 },
    ])
    expect(openingsAlong(inventedPorts, 52, [0])).toEqual([])
  })
})

it('an angle belongs to the axis with the nearest contact, two or three of them', () => {
  expect(axisNear([0, 45, 90, 135], [0, 180], 220)).toEqual({ axisDegrees: 45, angleDegrees: 225 })
  expect(axisNear([0, 45, 90, 135], [0, 180], 350)).toEqual({ axisDegrees: 0, angleDegrees: 0 })
  expect(axisNear([0, 60], [0, 120, 240], 290)).toEqual({ axisDegrees: 60, angleDegrees: 300 })
  expect(axisNear([], [0, 180], 10)).toBeUndefined()
})
