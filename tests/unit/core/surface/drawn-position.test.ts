import { describe, expect, it } from 'vitest'
import {
  columnAt,
  deviationAt,
  drawnPosition,
  drawnPositionOfUnit,
  rowAt,
} from '../../../../src/core/surface/drawn-position'
import { gridOf } from '../../../../src/core/surface/grid-of'
import { wallOf } from '../../../../src/core/surface/wall'
import type { WallGrid } from '../../../../src/core/surface/wall-grid'
import { inventedCylinder } from './invented-cylinder'

const quarter = Math.PI / 2

/** Four columns and three rows, 50 mm long; the middle row is not half-way, and column 1 is not at 90°. */
const small: WallGrid = {
  middleMm: 54,
  lengthMm: 50,
  depthsMm: Float64Array.of(0, 10, 50),
  angles: Float64Array.of(0, quarter / 2, Math.PI, 3 * quarter),
  deviationsUm: Float32Array.of(0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 110),
  hatched: new Uint8Array(8),
  proven: new Uint8Array(12),
  doubtUm: new Float32Array(48),
}

/** A true cylinder of 54 mm with the same lines. */
const round: WallGrid = { ...small, deviationsUm: new Float32Array(12) }

function close(position: readonly number[], expected: readonly number[]) {
  position.forEach((value, i) => {
    expect(value).toBeCloseTo(expected[i] ?? Number.NaN, 9)
  })
}

describe('bore space', () => {
  const at = (degrees: number, depthMm: number) =>
    drawnPosition(round, 500, columnAt(round, (degrees * Math.PI) / 180), rowAt(round, depthMm))

  it('has the deck at y = +length/2 and the bottom at y = −length/2', () => {
    expect(at(0, 0)[1]).toBe(25)
    expect(at(0, 50)[1]).toBe(-25)
    expect(at(0, 10)[1]).toBe(15)
  })

  it('has 0° at +z, toward whoever looks at the front, and 180° behind', () => {
    close(at(0, 0), [0, 25, 27])
    close(at(180, 0), [0, 25, -27])
  })

  it('has 90° at −x and 270° at +x', () => {
    close(at(90, 0), [-27, 25, 0])
    close(at(270, 0), [27, 25, 0])
  })

  it('runs clockwise seen from the deck: each step turns right-handed about −y', () => {
    for (let degrees = 0; degrees < 360; degrees += 15) {
      const [x0, , z0] = at(degrees, 0)
      const [x1, , z1] = at(degrees + 1, 0)
      // The y part of the cross product of the two radii: negative for a clockwise turn seen from +y.
      expect(z0 * x1 - x0 * z1).toBeLessThan(0)
    }
  })
})

describe('row and column coordinates', () => {
  it('are whole at the lines of the grid and linear in depth and angle between them', () => {
    expect([0, 10, 50].map((depth) => rowAt(small, depth))).toEqual([0, 1, 2])
    expect(rowAt(small, 30)).toBe(1.5)
    expect(Array.from(small.angles, (angle) => columnAt(small, angle))).toEqual([0, 1, 2, 3])
    expect(columnAt(small, quarter / 4)).toBeCloseTo(0.5, 12)
    expect(columnAt(small, 3.5 * quarter)).toBeCloseTo(3.5, 12)
  })

  it('take depths outside the bore to its ends and angles modulo a turn', () => {
    expect([-1, 51].map((depth) => rowAt(small, depth))).toEqual([0, 2])
    expect(columnAt(small, -quarter)).toBeCloseTo(3, 12)
    expect(columnAt(small, 4 * Math.PI)).toBe(0)
    expect(columnAt(small, -1e-20)).toBe(0)
  })
})

describe('a drawn position', () => {
  it('mixes deviations bilinearly between nodes, round the seam too', () => {
    expect(deviationAt(small, 0.5, 0)).toBe(5)
    expect(deviationAt(small, 0.5, 0.5)).toBe(25)
    expect(deviationAt(small, 3.5, 0)).toBe(15)
    expect(deviationAt(small, 4, 2)).toBe(deviationAt(small, 0, 2))
  })

  it('draws the deviation on the diameter times the exaggeration', () => {
    // 80 µm on the diameter at 500 is 40 mm on the diameter, 20 mm on the radius.
    close(drawnPosition(small, 500, 0, 2), [0, -25, 47])
    close(drawnPosition(small, 1, 0, 2), [0, -25, 27.04])
  })

  it('closes at the seam', () => {
    close(drawnPosition(small, 500, 4, 1), drawnPosition(small, 500, 0, 1))
    close(drawnPositionOfUnit(small, 500, 1, 0.3), drawnPositionOfUnit(small, 500, 0, 0.3))
  })

  it('of a point of the unit square has its angle at u turns and its depth at v lengths', () => {
    expect(drawnPositionOfUnit(small, 500, 0.3, 0.4)[1]).toBeCloseTo(5, 12)
    const [x, , z] = drawnPositionOfUnit(small, 500, 0.3, 0.4)
    expect(Math.atan2(-x, z)).toBeCloseTo(0.6 * Math.PI, 9)
  })

  it.each([
    [-0.1, 0],
    [4.1, 0],
    [0, -0.1],
    [0, 2.1],
    [Number.NaN, 0],
  ])('refuses column %d, row %d', (column, row) => {
    expect(() => drawnPosition(small, 500, column, row)).toThrow(RangeError)
  })

  it('of each station of the invented cylinder stands at its diameter, at both contacts', () => {
    const { bore, finding } = inventedCylinder()
    const wall = wallOf(bore, finding)
    const grid = wall && gridOf(wall, finding)
    for (const station of finding.stations) {
      for (const degrees of [station.axisDegrees, station.axisDegrees + 180]) {
        const column = grid ? columnAt(grid, (degrees * Math.PI) / 180) : Number.NaN
        const [x, , z] = grid ? drawnPosition(grid, 1, column, rowAt(grid, station.depthMm)) : []
        expect(2 * Math.hypot(x ?? 0, z ?? 0)).toBeCloseTo(station.diameterMm, 7)
      }
    }
  })
})
