import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { draggedPlace } from '../../../src/charts/dragged-place'
import { acrossOf, downOf, type MapScale } from '../../../src/charts/map-scale'

/** One pixel is a degree, and half a millimetre. */
const scale: MapScale = { left: 40, top: 30, width: 360, height: 200, lengthMm: 100 }

describe('the place that a drag marks', () => {
  it('is read off the map: 0° in the middle, depth down', () => {
    expect(draggedPlace(scale, { x: 40 + 180, y: 30 }, { x: 40 + 200, y: 50 })).toEqual({
      fromDepthMm: 0,
      toDepthMm: 10,
      fromDegrees: 0,
      toDegrees: 20,
    })
  })

  it('is the same in whichever direction it is drawn', () => {
    const [a, b] = [
      { x: 210, y: 100 },
      { x: 250, y: 60 },
    ]
    const place = draggedPlace(scale, a, b)
    expect(place).toEqual({ fromDepthMm: 15, toDepthMm: 35, fromDegrees: 350, toDegrees: 30 })
    expect(draggedPlace(scale, b, a)).toEqual(place)
    expect(draggedPlace(scale, { x: a.x, y: b.y }, { x: b.x, y: a.y })).toEqual(place)
  })

  it('goes on around past the sides of the map, and is all round from a turn on', () => {
    const right = scale.left + scale.width
    const at = (x: number) => ({ x, y: 80 })
    expect(draggedPlace(scale, at(right - 10), at(right + 20))).toMatchObject({
      fromDegrees: 170,
      toDegrees: 200,
    })
    expect(draggedPlace(scale, at(scale.left + 5), at(scale.left - 30))).toMatchObject({
      fromDegrees: 150,
      toDegrees: 185,
    })
    expect(draggedPlace(scale, at(scale.left), at(right + 1))).toMatchObject({
      fromDegrees: 0,
      toDegrees: 360,
    })
  })

  it('ends at the ends of the bore', () => {
    const place = draggedPlace(scale, { x: 220, y: -50 }, { x: 230, y: 900 })
    expect(place).toMatchObject({ fromDepthMm: 0, toDepthMm: 100 })
  })

  it('has depths in steps that a pixel can tell', () => {
    const tall = { ...scale, lengthMm: 3000 }
    const { fromDepthMm, toDepthMm } = draggedPlace(tall, { x: 220, y: 31 }, { x: 230, y: 77 })
    expect([fromDepthMm, toDepthMm]).toEqual([0, 700])
    const short = { ...scale, lengthMm: 20 }
    expect(draggedPlace(short, { x: 220, y: 31 }, { x: 230, y: 33 })).toMatchObject({
      fromDepthMm: 0.1,
      toDepthMm: 0.3,
    })
  })

  it('lies where it was drawn, to half a degree and half a step (200 drags, seed 43)', () => {
    const x = fc.integer({ min: 41, max: 399 })
    const y = fc.integer({ min: 30, max: 230 })
    fc.assert(
      fc.property(x, y, x, y, (x1, y1, x2, y2) => {
        const place = draggedPlace(scale, { x: x1, y: y1 }, { x: x2, y: y2 })
        expect(Math.abs(downOf(scale, place.fromDepthMm) - Math.min(y1, y2))).toBeLessThanOrEqual(1)
        expect(Math.abs(downOf(scale, place.toDepthMm) - Math.max(y1, y2))).toBeLessThanOrEqual(1)
        expect(Math.abs(acrossOf(scale, place.fromDegrees) - Math.min(x1, x2))).toBeLessThanOrEqual(0.5)
        expect(Math.abs(acrossOf(scale, place.toDegrees) - Math.max(x1, x2))).toBeLessThanOrEqual(0.5)
      }),
      { seed: 43, numRuns: 200 },
    )
  })
})
