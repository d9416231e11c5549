import { describe, expect, it } from 'vitest'
import type { WallGrid } from '../../../src/core/surface/wall-grid'
import { WallGeometries } from '../../../src/scene/wall-geometries'
import { easedShare, isUnderWay } from '../../../src/scene/wall-way'

const grid = {} as WallGrid
const way = (share: number, eased: boolean) => ({ from: grid, to: grid, share, eased })

describe('a wall on its way between two surveys', () => {
  it('starts from where it came and ends exactly where it goes, either way', () => {
    expect([0, 10].map((seconds) => easedShare(way(1, true), seconds))).toEqual([0, 1])
    expect([0, 10].map((seconds) => easedShare(way(0, true), seconds))).toEqual([1, 0])
    expect(isUnderWay(way(1, true), 0.1)).toBe(true)
    expect(isUnderWay(way(1, true), 10)).toBe(false)
  })

  it('stands still where a hand holds it', () => {
    expect([0, 0.2, 10].map((seconds) => easedShare(way(0.3, false), seconds))).toEqual([0.3, 0.3, 0.3])
    expect(isUnderWay(way(0.3, false), 0)).toBe(false)
  })
})

describe('the unit grids of a picture', () => {
  it('are one for all bores of a size, and freed with the last of them', () => {
    const geometries = new WallGeometries()
    const wall = geometries.of('wall', 8, 4)
    let freed = 0
    wall.addEventListener('dispose', () => {
      freed += 1
    })
    expect(geometries.of('wall', 8, 4)).toBe(wall)
    expect(geometries.of('wall', 8, 5)).not.toBe(wall)
    expect(geometries.of('glass', 8, 4)).not.toBe(wall)
    geometries.take(wall)
    geometries.take(wall)
    geometries.giveBack(wall)
    expect(freed).toBe(0)
    geometries.giveBack(wall)
    expect(freed).toBe(1)
  })
})
