import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Box, LabelRoom } from '../../../src/scene/place-labels'

const seed = 20240703
const boxes = fc.record({
  x: fc.integer({ min: -20, max: 300 }),
  y: fc.integer({ min: -20, max: 200 }),
  width: fc.integer({ min: 1, max: 60 }),
  height: fc.integer({ min: 1, max: 20 }),
})

function overlap(a: Box, b: Box): boolean {
  return (
    Math.max(a.x, b.x) < Math.min(a.x + a.width, b.x + b.width) &&
    Math.max(a.y, b.y) < Math.min(a.y + a.height, b.y + b.height)
  )
}

describe('room for labels', () => {
  it(`never gives overlapping places nor places off the picture, seed ${seed}`, () => {
    fc.assert(
      fc.property(fc.array(boxes, { maxLength: 40 }), fc.array(boxes, { maxLength: 3 }), (wanted, taken) => {
        const room = new LabelRoom(280, 180, taken)
        const given = wanted.flatMap((box) => room.take([box]) ?? [])
        given.forEach((box, index) => {
          expect(box.x >= 0 && box.y >= 0).toBe(true)
          expect(box.x + box.width <= 280 && box.y + box.height <= 180).toBe(true)
          for (const other of [...taken, ...given.slice(0, index)]) expect(overlap(box, other)).toBe(false)
        })
      }),
      { seed },
    )
  })

  it('gives the first offer that is free, and keeps what came first', () => {
    const room = new LabelRoom(100, 100, [])
    const one = { x: 10, y: 10, width: 20, height: 10 }
    const elsewhere = { x: 10, y: 40, width: 20, height: 10 }
    expect(room.take([one])).toBe(one)
    expect(room.take([one, elsewhere])).toBe(elsewhere)
    expect(room.take([one])).toBeUndefined()
  })

  it('keeps the gap asked for', () => {
    const room = new LabelRoom(100, 100, [{ x: 0, y: 0, width: 20, height: 10 }])
    const near = { x: 25, y: 0, width: 10, height: 10 }
    expect(room.take([near], 6)).toBeUndefined()
    expect(room.take([near], 5)).toBe(near)
  })
})
