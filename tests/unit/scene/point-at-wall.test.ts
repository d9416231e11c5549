import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { columnAt, drawnPosition, rowAt } from '../../../src/core/surface/drawn-position'
import { pointAtWall } from '../../../src/scene/point-at-wall'
import { runCount } from '../../proof/run-count'
import { evenGrid } from './drawn-cylinder'

const seed = 20240701
const numRuns = runCount({ quick: 200, full: 10_000 })
const round = evenGrid(() => 0)
const oval = evenGrid((row, column) => 12 * Math.cos((column / 12) * 4 * Math.PI) + row)

describe('pointing at the wall', () => {
  it('meets a true cylinder where a straight line from its axis does', () => {
    // From the axis at mid-depth, along −x and 10 down for 27 across: 90°, 40 + 10 mm deep.
    const place = pointAtWall(round, 1, { from: { x: 0, y: 0, z: 0 }, along: { x: -27, y: -10, z: 0 } })
    expect(place?.depthMm).toBeCloseTo(50, 4)
    expect(place?.angle).toBeCloseTo(Math.PI / 2, 6)
  })

  it('finds the far wall from outside, never the near one', () => {
    const place = pointAtWall(round, 1, { from: { x: 0, y: 0, z: 300 }, along: { x: 0, y: 0, z: -1 } })
    expect(place?.angle).toBeCloseTo(Math.PI, 6)
    expect(place?.depthMm).toBeCloseTo(40, 6)
  })

  it('looks in through the mouth', () => {
    const place = pointAtWall(round, 1, { from: { x: 0, y: 140, z: 0 }, along: { x: 0, y: -120, z: 27 } })
    expect(place?.angle).toBeCloseTo(0, 6)
    expect(place?.depthMm).toBeCloseTo(20, 4)
  })

  it('finds nothing beside the bore, along its axis, or away from it', () => {
    const from = { x: 0, y: 0, z: 300 }
    expect(pointAtWall(round, 1, { from, along: { x: 1, y: 0, z: -1 } })).toBeUndefined()
    expect(pointAtWall(round, 1, { from, along: { x: 0, y: 0, z: 1 } })).toBeUndefined()
    expect(
      pointAtWall(round, 1, { from: { x: 0, y: 200, z: 0 }, along: { x: 0, y: -1, z: 0 } }),
    ).toBeUndefined()
  })

  it(`gives back any place of an oval wall drawn 200 times, seen from the axis, seed ${seed}`, () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 79, noNaN: true }),
        fc.double({ min: 0, max: 2 * Math.PI, maxExcluded: true, noNaN: true }),
        (depthMm, angle) => {
          const [x, y, z] = drawnPosition(oval, 200, columnAt(oval, angle), rowAt(oval, depthMm))
          const place = pointAtWall(oval, 200, { from: { x: 0, y, z: 0 }, along: { x, y: 0, z } })
          expect(place?.depthMm).toBeCloseTo(depthMm, 6)
          expect(Math.cos((place?.angle ?? Number.NaN) - angle)).toBeCloseTo(1, 9)
        },
      ),
      { seed, numRuns },
    )
  })
})
