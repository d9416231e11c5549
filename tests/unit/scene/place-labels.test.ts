import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Box, LabelRoom, parts } from '../../../src/scene/place-labels'

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

function emptyRoom(width: number, height: number, taken: readonly Box[] = []): LabelRoom {
  const room = new LabelRoom()
  room.clear(width, height, taken)
  return room
}

/** What a label of the size of the first box gets, offered the left top corner of each. */
function take(room: LabelRoom, offers: readonly Box[], gap?: number): Box | undefined {
  const { width = 0, height = 0 } = offers[0] ?? {}
  room.seek(width, height, gap)
  for (const at of offers) room.offer(at, { x: 0, y: 0 })
  return room.isTaken ? { x: room.x, y: room.y, width, height } : undefined
}

describe('room for labels', () => {
  it(`never gives overlapping places nor places off the picture, of up to 200 labels, seed ${seed}`, () => {
    fc.assert(
      fc.property(fc.array(boxes, { maxLength: 200 }), fc.array(boxes, { maxLength: 3 }), (wanted, taken) => {
        const room = emptyRoom(280, 180, taken)
        const given = wanted.flatMap((box) => take(room, [box]) ?? [])
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
    const room = emptyRoom(100, 100)
    const one = { x: 10, y: 10, width: 20, height: 10 }
    const elsewhere = { x: 10, y: 40, width: 20, height: 10 }
    expect(take(room, [one])).toEqual(one)
    expect(take(room, [one, elsewhere])).toEqual(elsewhere)
    expect(take(room, [one])).toBeUndefined()
  })

  it('keeps the gap asked for', () => {
    const room = emptyRoom(100, 100, [{ x: 0, y: 0, width: 20, height: 10 }])
    const near = { x: 25, y: 0, width: 10, height: 10 }
    expect(take(room, [near], 6)).toBeUndefined()
    expect(take(room, [near], 5)).toEqual(near)
  })

  it('has room for more than a hundred labels, and is empty again once it is cleared', () => {
    const room = emptyRoom(2000, 100)
    const inRow = Array.from({ length: 130 }, (_, index) => ({ x: index * 12, y: 0, width: 10, height: 10 }))
    expect(inRow.flatMap((box) => take(room, [box]) ?? [])).toEqual(inRow)
    expect(inRow.flatMap((box) => take(room, [box]) ?? [])).toEqual([])
    room.clear(2000, 100, [])
    expect(inRow.flatMap((box) => take(room, [box]) ?? [])).toEqual(inRow)
  })

  it('lays that part of a label on a point that is asked for, in whole pixels, with the length of its line', () => {
    const room = emptyRoom(100, 100)
    room.seek(21, 10)
    expect(room.offer({ x: 50.2, y: 40 }, parts.right, 7)).toBe(true)
    expect([room.x, room.y, room.leader]).toEqual([29, 35, 7])
  })
})
