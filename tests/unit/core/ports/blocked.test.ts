import { describe, expect, it } from 'vitest'
import { blockedBy } from '../../../../src/core/ports/blocked'
import { contactAngles } from '../../../../src/core/ports/contact-angles'
import { inventedPorts } from '../surface/invented-cylinder'

const cylinder = { ports: inventedPorts, belts: [] }
const at = (depthMm: number, axisDegrees: number) =>
  blockedBy(cylinder, undefined, { depthMm, axisDegrees }, 54)

describe('a station in the way of ports', () => {
  it('is blocked at 35 mm of the invented cylinder on 0°, 45° and 135°, and free on 90°', () => {
    expect(at(35, 0)).toEqual(['exhaust'])
    expect(at(35, 45)).toEqual(['exhaust'])
    expect(at(35, 135)).toEqual(['exhaust'])
    expect(at(35, 90)).toEqual([])
  })

  it('is blocked at 48 mm on all four axes, by what stands at either end', () => {
    expect(at(48, 0)).toEqual(['exhaust', 'boost'])
    expect(at(48, 45)).toEqual(['exhaust', 'rear transfer left'])
    expect(at(48, 90)).toEqual(['main transfer right', 'main transfer left'])
    expect(at(48, 135)).toEqual(['exhaust', 'rear transfer right'])
  })

  it.each([8, 16, 25, 62, 80])('is free at %d mm, above and below the ports, on every axis', (depthMm) => {
    for (const axis of [0, 45, 90, 135]) expect(at(depthMm, axis)).toEqual([])
  })

  it('is blocked up to the half-width of a contact and 1 mm of chamfer from the edge along the depth', () => {
    expect(at(25.5, 0)).toEqual(['exhaust'])
    expect(at(25.49, 0)).toEqual([])
    expect(at(58.5, 90)).toHaveLength(2)
    expect(at(58.51, 90)).toEqual([])
    const narrow = { kind: 'dial-0.01', contactHalfWidthMm: 1 } as const
    expect(blockedBy(cylinder, narrow, { depthMm: 27, axisDegrees: 0 }, 54)).toEqual(['exhaust'])
    expect(blockedBy(cylinder, narrow, { depthMm: 26.9, axisDegrees: 0 }, 54)).toEqual([])
  })

  it('is blocked up to the same distance around, which is a larger angle in a smaller bore', () => {
    // 3.5 mm on a radius of 27 mm is 7.427°, on one of 13.5 mm 14.854°: own arithmetic.
    expect(at(35, 52.42)).toEqual(['exhaust'])
    expect(at(35, 52.43)).toEqual([])
    expect(blockedBy(cylinder, undefined, { depthMm: 35, axisDegrees: 59.85 }, 27)).toEqual(['exhaust'])
    expect(blockedBy(cylinder, undefined, { depthMm: 35, axisDegrees: 59.86 }, 27)).toEqual([])
  })

  it('is the same station from either end of its axis and in any turn', () => {
    for (const axis of [0, 30, 52, 60, 90, 121, 150, 165]) {
      for (const turns of [-360, -180, 180, 360, 540]) expect(at(48, axis + turns)).toEqual(at(48, axis))
    }
  })
})

describe('a station in the way of a belt', () => {
  const belt = { id: 'b', name: 'ridge', fromDepthMm: 10, toDepthMm: 14 }

  it('is blocked when its centre lies within it, edges included', () => {
    const blocked = (depthMm: number) =>
      blockedBy({ ports: [], belts: [belt] }, undefined, { depthMm, axisDegrees: 20 }, 54)
    expect([9.99, 10, 12, 14, 14.01].map((depth) => blocked(depth).length)).toEqual([0, 1, 1, 1, 0])
  })

  it('names each obstacle once, ports before belts', () => {
    const both = { ports: inventedPorts, belts: [{ ...belt, fromDepthMm: 30, toDepthMm: 50 }] }
    expect(blockedBy(both, undefined, { depthMm: 48, axisDegrees: 90 }, 54)).toEqual([
      'main transfer right',
      'main transfer left',
      'ridge',
    ])
    const alike = inventedPorts.map((port) => ({ ...port, name: 'transfer' }))
    expect(blockedBy({ ports: alike, belts: [] }, undefined, { depthMm: 48, axisDegrees: 90 }, 54)).toEqual([
      'transfer',
    ])
  })
})

describe('the contacts of a gauge', () => {
  it('are two, both ends of the axis, and three at 120° for a three-contact micrometer', () => {
    expect(contactAngles('dial-0.001-ring')).toEqual([0, 180])
    expect(contactAngles(undefined)).toEqual([0, 180])
    expect(contactAngles('three-contact-micrometer')).toEqual([0, 120, 240])
  })

  it('all count: three contacts from 90° stand in a port at 210° that an axis of 90° would miss', () => {
    const one = { id: 'p', name: 'boost', fromDepthMm: 40, toDepthMm: 50, fromDegrees: 205, toDegrees: 215 }
    const place = { depthMm: 45, axisDegrees: 90 }
    expect(blockedBy({ ports: [one], belts: [] }, undefined, place, 54)).toEqual([])
    const gauge = { kind: 'three-contact-micrometer' } as const
    expect(blockedBy({ ports: [one], belts: [] }, gauge, place, 54)).toEqual(['boost'])
  })
})

describe('the feet of a centraliser', () => {
  // 10 mm along the wall of a bore of 54 mm is 21.22°; a foot keeps 3.5 mm, 7.43°, from a port: own arithmetic.
  const gauge = { kind: 'dial-0.01', feetOffsetMm: 10 } as const
  const opening = { id: 'p', name: 'boost', fromDepthMm: 40, toDepthMm: 50, fromDegrees: 20, toDegrees: 40 }
  const opposite = { ...opening, id: 'q', name: 'exhaust', fromDegrees: 200, toDegrees: 220 }
  const onAxis = (ports: readonly (typeof opening)[], axisDegrees: number) =>
    blockedBy({ ports, belts: [] }, gauge, { depthMm: 45, axisDegrees }, 54)

  it('in a port do not block a station that can be read with the gauge turned round', () => {
    expect(onAxis([opening], 10)).toEqual([])
  })

  it('block it where one of them stands in a port either way, up to its edge and no further', () => {
    expect(onAxis([opening, opposite], 10)).toEqual(['boost'])
    expect(onAxis([opening, opposite], -8.64)).toEqual(['boost'])
    expect(onAxis([opening, opposite], -8.66)).toEqual([])
    expect(onAxis([opening, opposite], 68.64)).toEqual(['boost'])
    expect(onAxis([opening, opposite], 68.66)).toEqual([])
  })

  it('leave alone what is blocked at another depth, and a gauge without feet', () => {
    const place = { depthMm: 60, axisDegrees: 10 }
    expect(blockedBy({ ports: [opening, opposite], belts: [] }, gauge, place, 54)).toEqual([])
    const without = { kind: 'dial-0.01' } as const
    const there = { depthMm: 45, axisDegrees: 10 }
    expect(blockedBy({ ports: [opening, opposite], belts: [] }, without, there, 54)).toEqual([])
  })
})

describe('blockedBy', () => {
  it.each([0, -54, Number.NaN, Number.POSITIVE_INFINITY])('refuses a diameter of %d mm', (diameter) => {
    expect(() => blockedBy(cylinder, undefined, { depthMm: 10, axisDegrees: 0 }, diameter)).toThrow(
      RangeError,
    )
  })
})
