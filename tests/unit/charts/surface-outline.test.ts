import { describe, expect, it } from 'vitest'
import type { MapScale } from '../../../src/charts/map-scale'
import { surfaceLabelBoxes } from '../../../src/charts/surface-labels'
import { lineAlong, surfaceOutline } from '../../../src/charts/surface-outline'

const scale: MapScale = { left: 0, top: 0, width: 360, height: 200, lengthMm: 100 }
const place = { fromDepthMm: 10, toDepthMm: 30, fromDegrees: 350, toDegrees: 20 }

describe('the outline of a surface finding on the map', () => {
  it('is closed round its place, also across 0°', () => {
    const { path, boxes } = surfaceOutline(scale, place)
    expect(boxes).toEqual([{ x: 170, y: 20, width: 30, height: 40 }])
    expect(path.match(/M/g)).toHaveLength(1)
    expect(path).toMatch(/Z$/)
  })

  it('is open where the map is cut at 180°, so that it is seen to go on at the other edge', () => {
    const { path, boxes } = surfaceOutline(scale, { ...place, fromDegrees: 170, toDegrees: 190 })
    expect(boxes).toEqual([
      { x: 350, y: 20, width: 10, height: 40 },
      { x: 0, y: 20, width: 10, height: 40 },
    ])
    expect(path).toBe('M360,20H350V60H360M0,20H10V60H0')
  })

  it('is a line down the middle for what is too narrow for an outline, also across the cut', () => {
    expect(lineAlong(scale, place).path).toBe('M185,20v40')
    expect(lineAlong(scale, { ...place, fromDegrees: 175, toDegrees: 195 }).path).toBe('M5,20v40')
  })

  it('is two lines where it goes all round', () => {
    const { path } = surfaceOutline(scale, { ...place, fromDegrees: 0, toDegrees: 360 })
    expect(path).toBe('M0,20H360M0,60H360')
  })

  it('can be seen however small the place is, and stays within the map', () => {
    const dot = { fromDepthMm: 0, toDepthMm: 0, fromDegrees: 180, toDegrees: 180 }
    const { boxes } = surfaceOutline(scale, dot)
    expect(boxes).toHaveLength(2)
    for (const { y, height } of boxes) expect([y, height]).toEqual([0, 8])
    expect(boxes.reduce((sum, { width }) => sum + width, 0)).toBe(8)
    const streak = surfaceOutline(scale, { ...dot, toDepthMm: 100, fromDegrees: 200, toDegrees: 200 })
    expect(streak.boxes).toEqual([{ x: 16, y: 0, width: 8, height: 200 }])
  })
})

describe('the labels of surface findings on the map', () => {
  const mark = (x: number, y: number) => ({
    boxes: [{ x, y, width: 20, height: 20 }],
    width: 60,
    height: 14,
  })
  const overlap = (a: { x: number; y: number }, b: { x: number; y: number }) =>
    Math.abs(a.x - b.x) < 60 && Math.abs(a.y - b.y) < 14

  it('stand beside their marks, within the map, and on no other', () => {
    const boxes = surfaceLabelBoxes(scale, [mark(10, 50), mark(330, 50), mark(30, 55), mark(32, 60)])
    const placed = boxes.flatMap((box) => box ?? [])
    expect(placed).toHaveLength(4)
    for (const [index, box] of placed.entries()) {
      expect(box.x).toBeGreaterThanOrEqual(0)
      expect(box.x + box.width).toBeLessThanOrEqual(360)
      for (const other of placed.slice(index + 1)) expect(overlap(box, other)).toBe(false)
    }
  })

  it('are left out where there is no room, the later ones first', () => {
    const small = { ...scale, width: 90, height: 30 }
    const boxes = surfaceLabelBoxes(small, [mark(0, 0), mark(0, 5), mark(0, 10)])
    expect(boxes[0]?.x).toBeGreaterThanOrEqual(20)
    expect((boxes[0]?.x ?? 0) + (boxes[0]?.width ?? 0)).toBeLessThanOrEqual(90)
    expect(boxes[2]).toBeUndefined()
  })
})
