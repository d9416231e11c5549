import { describe, expect, it } from 'vitest'
import { dotPitch, dotRows, hatchLines, pathOfRects } from '../../../src/charts/map-texture'

const scale = { left: 40, top: 30, width: 200, height: 60, lengthMm: 88 }
const { left, top, width, height } = scale

describe('the hatch of the map', () => {
  const starts = [...hatchLines(scale).matchAll(/M([\d.]+),([\d.]+)l(-?[\d.]+),([\d.]+)/g)].map((match) =>
    match.slice(1).map(Number),
  )

  it('runs at 45° from the top of the wall to its bottom', () => {
    expect(starts.length).toBeGreaterThan(10)
    for (const [, y, right, down] of starts) {
      expect(y).toBe(top)
      expect(right).toBe(-height)
      expect(down).toBe(height)
    }
  })

  it('leaves no corner of the wall further than a pitch of 1.2 mm, 96 pixels being an inch, from a line', () => {
    const step = (1.2 / 25.4) * 96 * Math.SQRT2
    const across = starts.map(([x = 0]) => x)
    for (const [i, x] of across.entries()) expect(x - (across[i - 1] ?? left)).toBeCloseTo(step, 0)
    expect(left + width + height - (across.at(-1) ?? 0)).toBeLessThan(step + 0.1)
  })
})

describe('the dots of the map', () => {
  it('stand in rows half a pitch apart, every other row moved on by half a pitch', () => {
    const rows = [...dotRows(scale).matchAll(/M([\d.]+),([\d.]+)H([\d.]+)/g)].map((match) =>
      match.slice(1).map(Number),
    )
    expect(rows).toHaveLength((height / dotPitch) * 2)
    expect(rows.slice(0, 3)).toEqual([
      [left + 1.25, top + 1.25, left + width],
      [left + 3.75, top + 3.75, left + width],
      [left + 1.25, top + 6.25, left + width],
    ])
  })
})

it('rectangles make one path', () => {
  expect(
    pathOfRects([
      { x: 1, y: 2, width: 3, height: 4 },
      { x: 5, y: 6, width: 7, height: 8 },
    ]),
  ).toBe('M1,2h3v4h-3ZM5,6h7v8h-7Z')
  expect(pathOfRects([])).toBe('')
})
