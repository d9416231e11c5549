import { describe, expect, it } from 'vitest'
import { gridBetween } from '../../../src/charts/grid-between'
import { drawnPosition } from '../../../src/core/surface/drawn-position'
import type { WallGrid } from '../../../src/core/surface/wall-grid'

const columns = 4
const grid = (um: number, hatched: number): WallGrid => ({
  middleMm: 80,
  lengthMm: 60,
  depthsMm: Float64Array.of(0, 20, 60),
  angles: Float64Array.of(0, 1, 2, 4),
  deviationsUm: Float32Array.from({ length: 3 * columns }, (_, i) => um + i * i),
  hatched: Uint8Array.from({ length: 2 * columns }, (_, cell) => (cell === hatched ? 1 : 0)),
  proven: new Uint8Array(3 * columns).fill(1),
  doubtUm: new Float32Array(12 * columns).fill(3),
})

describe('a wall between two surveys', () => {
  const [from, to] = [grid(2, 1), grid(-30, 5)]

  it('lies where the core draws a wall that is so far on its way', () => {
    for (const share of [0.1, 0.5, 0.75]) {
      const between = gridBetween(from, to, share)
      for (let column = 0; column < columns; column++) {
        for (let row = 0; row < 3; row++) {
          const drawn = drawnPosition(between, 500, column, row)
          const expected = drawnPosition(from, 500, column, row, { grid: to, share })
          // Single precision of 150 µm, drawn 500 times: 4 µm.
          drawn.forEach((mm, axis) => {
            expect(mm).toBeCloseTo(expected[axis] ?? Number.NaN, 2)
          })
        }
      }
    }
  })

  it('is hatched where either is, and proves nothing', () => {
    const between = gridBetween(from, to, 0.5)
    expect([...between.hatched]).toEqual([0, 1, 0, 0, 0, 1, 0, 0])
    expect(between.proven.some(Boolean)).toBe(false)
    expect([...between.doubtUm.slice(0, 4)]).toEqual([-Infinity, -Infinity, Infinity, Infinity])
  })

  it('is not shared with the next one drawn', () => {
    const early = gridBetween(from, to, 0.2)
    const before = early.deviationsUm[3]
    gridBetween(from, to, 0.9)
    expect(early.deviationsUm[3]).toBe(before)
  })

  it('refuses walls on other lines', () => {
    expect(() => gridBetween(from, { ...to, deviationsUm: new Float32Array(3) }, 0.5)).toThrow(RangeError)
    expect(() =>
      drawnPosition(from, 1, 0, 0, { grid: { ...to, deviationsUm: new Float32Array(3) }, share: 0.5 }),
    ).toThrow(RangeError)
  })
})
