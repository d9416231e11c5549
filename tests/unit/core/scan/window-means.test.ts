import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cellBox, isInBox } from '../../../../src/core/scan/cell-box'
import { windowMeans } from '../../../../src/core/scan/window-means'

const gap = Number.NaN
const cell = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: -50, max: 50 }) },
  { weight: 1, arbitrary: fc.constant(gap) },
)

describe('means over windows of a map that closes around', () => {
  it('are those of the cells within, counted one by one, gaps left out (seed 81)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 6 }),
        fc.integer({ min: 3, max: 9 }),
        fc.constantFrom(1, 3, 5),
        fc.constantFrom(1, 3),
        fc.array(cell, { minLength: 54, maxLength: 54 }),
        (rows, columns, high, wide, cells) => {
          const values = Float64Array.from(cells.slice(0, rows * columns))
          const means = windowMeans({ rows, columns, values })
          for (let row = 0; row < rows; row++) {
            for (let column = 0; column < columns; column++) {
              const inside: number[] = []
              for (let r = Math.max(0, row - (high >> 1)); r <= Math.min(rows - 1, row + (high >> 1)); r++) {
                for (let step = -(wide >> 1); step <= wide >> 1; step++) {
                  const value = values[r * columns + ((column + step + columns) % columns)] ?? gap
                  if (!Number.isNaN(value)) inside.push(value)
                }
              }
              const mean = means.meanAt(row, column, { high, wide })
              expect(mean?.count ?? 0).toBe(inside.length)
              if (inside.length > 0) {
                expect(mean?.mean).toBeCloseTo(inside.reduce((sum, value) => sum + value, 0) / inside.length)
              }
            }
          }
        },
      ),
      { seed: 81, numRuns: 60 },
    )
  })

  it('standardise a window by the root of how many values it has, and leave out half-empty ones', () => {
    const means = windowMeans({ rows: 1, columns: 4, values: Float64Array.of(1, 2, gap, gap) })
    const { at, values, counts } = means.standardised({ high: 1, wide: 3 }, 1, 1)
    expect([...at]).toEqual([0, 1])
    expect([...counts]).toEqual([2, 2])
    expect(values[0]).toBeCloseTo(3 / Math.SQRT2)
  })
})

describe('the box around cells', () => {
  it('goes the short way over the last column, and all round when every column has a cell', () => {
    expect(cellBox([9, 0, 11], 10)).toEqual({ top: 0, bottom: 1, left: 9, wide: 3 })
    expect(cellBox([0, 1, 2], 3)).toEqual({ top: 0, bottom: 0, left: 0, wide: 3 })
    expect(() => cellBox([], 3)).toThrow(/no cells/)
  })

  it('holds its own cells, and those within a margin (seed 82)', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 0, max: 79 }), { minLength: 1, maxLength: 6 }),
        (cells) => {
          const box = cellBox(cells, 10)
          for (const one of cells) expect(isInBox(box, 10, one)).toBe(true)
          const corner = box.top * 10 + ((box.left + 9) % 10)
          if (box.wide < 10) expect(isInBox(box, 10, corner)).toBe(false)
          expect(isInBox(box, 10, corner, 0, 1)).toBe(true)
        },
      ),
      { seed: 82 },
    )
  })
})
