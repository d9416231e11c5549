import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { axisPeriodDegrees, clearAxes, isInRanges } from '../../../../src/core/plan/clear-axes'
import { clearBands } from '../../../../src/core/plan/clear-bands'
import { blockedBy } from '../../../../src/core/ports/blocked'
import { inventedPorts } from '../surface/invented-cylinder'
import { plannedBores, plannedGauges } from './planned-bores'

const cylinder = { ports: inventedPorts, belts: [] }

/** Whole degrees of half a turn that are clear. */
function wholeDegrees(depthMm: number, contactHalfWidthMm?: number): number[] {
  const gauge = {
    kind: 'dial-0.01',
    ...(contactHalfWidthMm === undefined ? {} : { contactHalfWidthMm }),
  } as const
  const clear = clearAxes(cylinder, gauge, depthMm, 54)
  return Array.from({ length: 180 }, (_, axis) => axis).filter((axis) => isInRanges(clear, axis, 180))
}

describe('the clear axes of a level', () => {
  // Own computation, made apart from this code: 2.5 mm from contact to port edge, chamfer included.
  it('of the invented two-stroke are none of 180 at 48 mm, and 51° to 129° at 35 mm', () => {
    expect(wholeDegrees(48, 1.5)).toEqual([])
    expect(wholeDegrees(35, 1.5)).toEqual(Array.from({ length: 79 }, (_, index) => 51 + index))
  })

  it('are fewer for a contact of typical width with a chamfer: 3.5 mm on a radius of 27 mm is 7.43°', () => {
    const [range] = clearAxes(cylinder, undefined, 35, 54)
    expect(range?.fromDegrees).toBeCloseTo(45 + (3.5 / 27) * (180 / Math.PI), 9)
    expect(range?.toDegrees).toBeCloseTo(135 - (3.5 / 27) * (180 / Math.PI), 9)
  })

  it('are all where nothing stands, in one range', () => {
    expect(clearAxes(cylinder, undefined, 10, 54)).toEqual([{ fromDegrees: 0, toDegrees: 180 }])
    const threeContacts = { kind: 'three-contact-micrometer' } as const
    expect(clearAxes(cylinder, threeContacts, 10, 54)).toEqual([{ fromDegrees: 0, toDegrees: 120 }])
  })

  it('pass 180° in one range', () => {
    const port = { id: 'p', name: 'exhaust', fromDepthMm: 20, toDepthMm: 40, fromDegrees: 80, toDegrees: 100 }
    const ranges = clearAxes({ ports: [port], belts: [] }, undefined, 30, 54)
    expect(ranges).toHaveLength(1)
    expect(ranges[0]?.fromDegrees).toBeCloseTo(107.427, 3)
    expect(ranges[0]?.toDegrees).toBeCloseTo(180 + 72.573, 3)
  })

  it('are none in a belt', () => {
    const belt = { id: 'b', name: 'ridge', fromDepthMm: 5, toDepthMm: 8 }
    expect(clearAxes({ ports: [], belts: [belt] }, undefined, 6, 54)).toEqual([])
  })

  it('are those at which no contact and no foot is in the way, on any port map and gauge (seed 51)', () => {
    fc.assert(
      fc.property(
        plannedBores,
        plannedGauges,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 180, noNaN: true }),
        (bore, gauge, share, axisDegrees) => {
          const depthMm = share * bore.lengthMm
          const ranges = clearAxes(bore, gauge, depthMm, bore.diameterMm)
          const period = axisPeriodDegrees(gauge.kind)
          const isNearEdge = ranges.some(({ fromDegrees, toDegrees }) =>
            [fromDegrees, toDegrees].some((edge) => {
              const apart = Math.abs(edge - axisDegrees) % period
              return Math.min(apart, period - apart) < 1e-5
            }),
          )
          if (isNearEdge) return
          const isClear = blockedBy(bore, gauge, { depthMm, axisDegrees }, bore.diameterMm).length === 0
          expect(isInRanges(ranges, axisDegrees, period)).toBe(isClear)
        },
      ),
      { seed: 51, numRuns: 2000 },
    )
  })
})

describe('the bands of a bore', () => {
  it('cut the invented two-stroke where its ports begin and end, a contact and a chamfer away', () => {
    const bands = clearBands({ ...cylinder, lengthMm: 88 }, undefined, 54)
    expect(bands.map(({ fromMm, toMm, clear }) => [fromMm, toMm, clear.length])).toEqual([
      [3.5, 25.5, 1],
      [25.5, 38.5, 1],
      [38.5, 58.5, 0],
      [58.5, 84.5, 1],
    ])
  })

  it('have the clear axes of every depth within them, on any port map and gauge (seed 52)', () => {
    fc.assert(
      fc.property(
        plannedBores,
        plannedGauges,
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (bore, gauge, share) => {
          for (const { fromMm, toMm, clear } of clearBands(bore, gauge, bore.diameterMm)) {
            const depthMm = fromMm + share * (toMm - fromMm)
            expect(clearAxes(bore, gauge, depthMm, bore.diameterMm)).toEqual(clear)
          }
        },
      ),
      { seed: 52, numRuns: 300 },
    )
  })

  it('need the length of the bore', () => {
    expect(() => clearBands(cylinder, undefined, 54)).toThrow(RangeError)
  })
})
