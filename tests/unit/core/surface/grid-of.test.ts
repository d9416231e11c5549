import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type GridOptions, gridOf } from '../../../../src/core/surface/grid-of'
import { nearestStation } from '../../../../src/core/surface/nearest-station'
import { type Wall, wallOf } from '../../../../src/core/surface/wall'
import type { WallGrid } from '../../../../src/core/surface/wall-grid'
import { runCount } from '../../../proof/run-count'
import { inventedCylinder, inventedSpots, made, type Plan } from './invented-cylinder'
import { raggedSurveys } from './ragged-survey'

const seed = 20240614
const numRuns = runCount({ quick: 40, full: 2_000 })
const rad = Math.PI / 180

function gridOn(made: ReturnType<typeof inventedCylinder>, options?: GridOptions) {
  const wall = wallOf(made.bore, made.finding)
  if (!wall) throw new Error('expected a wall')
  return { wall, finding: made.finding, grid: gridOf(wall, made.finding, options) }
}

const column = (grid: WallGrid, degrees: number) =>
  grid.angles.findIndex((angle) => Math.abs(angle - degrees * rad) < 1e-12)
const row = (grid: WallGrid, depthMm: number) => grid.depthsMm.indexOf(depthMm)
const point = (grid: WallGrid, depthMm: number, degrees: number) =>
  row(grid, depthMm) * grid.angles.length + column(grid, degrees)

describe('the grid of the invented cylinder', () => {
  const { grid, wall, finding } = gridOn(
    inventedCylinder({ belts: [{ id: 'b', name: 'ridge', fromDepthMm: 10.2, toDepthMm: 12.6 }] }),
  )

  it('has at least 128 rows and 256 columns, and few more', () => {
    expect(grid.depthsMm.length).toBeGreaterThanOrEqual(128)
    expect(grid.depthsMm.length).toBeLessThan(150)
    expect(grid.angles.length).toBeGreaterThanOrEqual(256)
    expect(grid.angles.length).toBeLessThan(270)
  })

  it('has a row at both ends, every level, every edge of a belt and 8 mm from every level', () => {
    const levels = [8, 16, 25, 35, 62, 80]
    const reach = levels.flatMap((level) => [level - 8, level + 8]).filter((depth) => depth <= 90)
    for (const depth of [0, 90, 10.2, 12.6, ...levels, ...reach])
      expect(row(grid, depth)).toBeGreaterThanOrEqual(0)
  })

  it('has a column at every axis, both ends', () => {
    for (const degrees of [0, 45, 90, 135, 180, 225, 270, 315]) {
      expect(column(grid, degrees)).toBeGreaterThanOrEqual(0)
    }
  })

  it('counts deviations from the middle of the pair, and passes through every reading', () => {
    expect(grid.middleMm).toBeCloseTo(54.025, 12)
    for (const { depthMm, axisDegrees, diameterMm } of finding.stations) {
      for (const degrees of [axisDegrees, axisDegrees + 180]) {
        const deviation = grid.deviationsUm[point(grid, depthMm, degrees)]
        expect(deviation).toBe(Math.fround((diameterMm - grid.middleMm) * 1000))
      }
    }
  })

  it('hatches whole cells: all between 25 and 62 mm, the belt, and past 8 and 80 mm', () => {
    const cell = (depth: number, degrees: number) => {
      const r = grid.depthsMm.findLastIndex((d) => d <= depth)
      const c = grid.angles.findLastIndex((a) => a <= degrees * rad)
      return grid.hatched[r * grid.angles.length + c]
    }
    for (const degrees of [1, 44, 91, 200, 359]) {
      expect([4, 11, 26, 35.1, 48, 61, 71, 85].map((d) => cell(d, degrees))).toEqual(Array(8).fill(1))
      expect([9, 14, 20, 24.9, 62.1, 69, 79].map((d) => cell(d, degrees))).toEqual(Array(7).fill(0))
    }
  })

  it('takes the doubt edges of the nearest station', () => {
    const edges = grid.doubtUm.slice(point(grid, 8, 0) * 4, point(grid, 8, 0) * 4 + 4)
    const doubt = finding.stations[0]?.doubt
    const expected = [doubt?.belowFirmMm, doubt?.insideFromMm, doubt?.insideToMm, doubt?.aboveFirmMm]
    expect(Array.from(edges)).toEqual(
      expected.map((edge) => Math.fround(((edge ?? 0) - grid.middleMm) * 1000)),
    )
  })

  it('is quick: some milliseconds for 256 × 128', () => {
    const times = Array.from({ length: 20 }, () => {
      const start = performance.now()
      gridOf(wall, finding)
      return performance.now() - start
    })
    // The quickest, since whatever else the machine does only adds; 4 ms on a free machine of two cores.
    expect(Math.min(...times)).toBeLessThan(30)
  })
})

describe('a grid', () => {
  it('takes more rows and columns on demand, and another middle', () => {
    const { grid } = gridOn(inventedCylinder(), { rows: 300, columns: 720, middleMm: 54.006 })
    expect(grid.depthsMm.length).toBeGreaterThanOrEqual(300)
    expect(grid.angles.length).toBeGreaterThanOrEqual(720)
    expect(grid.middleMm).toBe(54.006)
  })

  it('without limits counts from the middle of the readings, has infinite edges and proves nothing', () => {
    const { grid } = gridOn(made({ spots: inventedSpots }))
    expect(grid.middleMm).toBeCloseTo((54.033667 + 54.010333) / 2, 6)
    const none = [
      Number.NEGATIVE_INFINITY,
      Number.NEGATIVE_INFINITY,
      Number.POSITIVE_INFINITY,
      Number.POSITIVE_INFINITY,
    ]
    expect(Array.from(grid.doubtUm.slice(0, 4))).toEqual(none)
    expect(grid.proven.every((mark) => mark === 0)).toBe(true)
  })

  it('leaves out levels deeper than the bore', () => {
    const { grid } = gridOn(inventedCylinder({ lengthMm: 70 }))
    expect(grid.depthsMm[grid.depthsMm.length - 1]).toBe(70)
    expect(row(grid, 80)).toBe(-1)
  })

  it('of three contacts has a column at each contact and hatches between them', () => {
    const spots = [10, 18].map((depthMm) => ({ depthMm, axisDegrees: 20, diameterMm: 54 + depthMm / 1000 }))
    const { grid } = gridOn(made({ spots, gaugeKind: 'three-contact-micrometer' }))
    for (const degrees of [20, 140, 260]) expect(column(grid, degrees)).toBeGreaterThanOrEqual(0)
    const r = row(grid, 10)
    const open = Array.from(grid.angles, (angle, c) => [
      angle / rad,
      grid.hatched[r * grid.angles.length + c],
    ])
      .filter(([, hatched]) => hatched === 0)
      .map(([degrees]) => degrees ?? 0)
    expect(open.length).toBeGreaterThan(0)
    for (const degrees of open) {
      // 2.5 mm on a radius of 27 mm is 5.3°.
      expect(Math.abs(((degrees - 20 + 60) % 120) - 60)).toBeLessThan(5.31)
    }
  })
})

describe('proven patches', () => {
  const pair = { kind: 'band', minMm: 54, maxMm: 54.05 } as const
  const axes = [0, 45, 90, 135]
  const levels = [10, 16, 30, 36]
  /** All at 54.02 with these in their place; a station's verdict is by 3.3 µm past the limit (1.645 · 2 µm). */
  function grid(unlike: Readonly<Record<string, number>>, plan: Partial<Plan> = {}) {
    const spots = levels.flatMap((depthMm) =>
      axes.map((axisDegrees) => {
        const diameterMm = unlike[`${depthMm}/${axisDegrees}`] ?? 54.02
        const verdict = diameterMm > 54.0533 ? 'above' : diameterMm < 53.9967 ? 'below' : 'too-close'
        return { depthMm, axisDegrees, diameterMm, verdict } as const
      }),
    )
    return gridOn(made({ spots, pair, lengthMm: 50, ...plan })).grid
  }

  it('hold a station proven above, on both sides of the bore, and end where the wall is within doubt', () => {
    const found = grid({ '10/45': 54.06 })
    expect(found.proven[point(found, 10, 45)]).toBe(1)
    expect(found.proven[point(found, 10, 225)]).toBe(1)
    expect(found.proven[point(found, 10, 90)]).toBe(0)
    found.deviationsUm.forEach((deviation, at) => {
      expect(found.proven[at]).toBe(deviation >= (found.doubtUm[at * 4 + 3] ?? Number.NaN) ? 1 : 0)
    })
  })

  it('are joined round 0°, and from station to station along the depth', () => {
    const found = grid({ '10/0': 54.06, '16/0': 54.06 })
    const first = point(found, 10, 0)
    expect(found.proven[first]).toBe(1)
    expect(found.proven[first + 1]).toBe(1)
    expect(found.proven[first + found.angles.length - 1]).toBe(1)
    expect(found.proven[first + found.angles.length]).toBe(1)
  })

  it('are 2 where a station is proven below', () => {
    const found = grid({ '36/90': 53.99, '10/0': 54.06 })
    expect(found.proven[point(found, 36, 90)]).toBe(2)
    expect(found.proven[point(found, 36, 270)]).toBe(2)
    expect(found.proven[point(found, 10, 180)]).toBe(1)
  })

  it('are not drawn where no station is proven outside, however far the wall itself goes', () => {
    const spots = [10, 20].flatMap((depthMm) =>
      axes.map((axisDegrees) => ({ depthMm, axisDegrees, diameterMm: 54.09, verdict: 'too-close' as const })),
    )
    const { grid: found } = gridOn(made({ spots, pair, lengthMm: 50 }))
    expect(found.deviationsUm.some((deviation, at) => deviation > (found.doubtUm[at * 4 + 3] ?? 0))).toBe(
      true,
    )
    expect(found.proven.every((mark) => mark === 0)).toBe(true)
  })

  it('are not grown from a reading that does not count', () => {
    const spots = axes.map((axisDegrees) => ({ depthMm: 10, axisDegrees, diameterMm: 54.02 }))
    const blocked = {
      depthMm: 20,
      axisDegrees: 0,
      diameterMm: 54.09,
      counted: false,
      verdict: 'above' as const,
    }
    const { grid: found } = gridOn(made({ spots: [...spots, blocked], pair, lengthMm: 50 }))
    expect(found.proven.every((mark) => mark === 0)).toBe(true)
  })

  it('always hold the station that is proven, at the very edge of doubt too', () => {
    const edge = 54.05 + 1.6448536269514722 * 0.002
    const spots = levels.flatMap((depthMm) =>
      axes.map((axisDegrees) => ({ depthMm, axisDegrees, diameterMm: 54.02, verdict: 'inside' as const })),
    )
    const at = { depthMm: 16, axisDegrees: 135, diameterMm: edge - 1e-12, verdict: 'above' as const }
    const others = spots.filter((s) => !(s.depthMm === 16 && s.axisDegrees === 135))
    const { grid: found } = gridOn(made({ spots: [...others, at], pair, lengthMm: 50 }))
    expect(found.proven[point(found, 16, 135)]).toBe(1)
    expect(found.proven.filter((mark) => mark === 1)).toHaveLength(2)
  })
})

describe(`the grid of any ragged survey (seed ${seed})`, () => {
  const pair = { kind: 'band', minMm: 53.99, maxMm: 54.03 } as const

  function everyGrid(check: (grid: WallGrid, wall: Wall) => void, surveys = raggedSurveys) {
    fc.assert(
      fc.property(surveys, (survey) => {
        const { grid, wall } = gridOn(made({ ...survey, pair }), { rows: 24, columns: 40 })
        check(grid, wall)
      }),
      { seed, numRuns },
    )
  }

  it('has increasing depths from 0 to the length and increasing angles from 0 to below a turn', () => {
    everyGrid(({ depthsMm, angles, lengthMm }) => {
      expect([depthsMm[0], depthsMm[depthsMm.length - 1]]).toEqual([0, lengthMm])
      expect(angles[0]).toBe(0)
      expect(angles[angles.length - 1]).toBeLessThan(2 * Math.PI)
      for (const lines of [depthsMm, angles]) {
        expect(lines.every((line, i) => i === 0 || line > (lines[i - 1] ?? line))).toBe(true)
      }
    })
  })

  it('agrees with the wall itself, point by point, in diameter and hatching', () => {
    everyGrid((grid, wall) => {
      const columns = grid.angles.length
      grid.depthsMm.forEach((depth, r) => {
        grid.angles.forEach((angle, c) => {
          const exact = (wall.at(depth, angle) - grid.middleMm) * 1000
          expect(grid.deviationsUm[r * columns + c]).toBeCloseTo(exact, 4)
          const below = grid.depthsMm[r + 1]
          if (below === undefined) return
          const middle = (angle + (grid.angles[c + 1] ?? 2 * Math.PI)) / 2
          const { hatched } = wall.state((depth + below) / 2, middle)
          expect(grid.hatched[r * columns + c]).toBe(hatched ? 1 : 0)
        })
      })
    })
  })

  it('takes at every point the doubt edges of a station than which none is nearer', () => {
    const apart = raggedSurveys.map((survey) => ({
      ...survey,
      spots: survey.spots.map((spot, i) => ({ ...spot, standardUncertaintyMm: 0.001 * (i + 1) })),
    }))
    const check = (grid: WallGrid, { stations, contacts, meanDiameterMm }: Wall) => {
      const columns = grid.angles.length
      grid.depthsMm.forEach((depth, r) => {
        const c = (r * 7) % columns
        const near = (of: typeof stations) =>
          nearestStation(of, contacts, meanDiameterMm, depth, grid.angles[c] ?? 0)?.distanceMm ?? Number.NaN
        const edge = grid.doubtUm[(r * columns + c) * 4 + 3] ?? Number.NaN
        const taken = stations.filter(
          ({ doubt }) => Math.abs(((doubt?.aboveFirmMm ?? 0) - grid.middleMm) * 1000 - edge) < 0.01,
        )
        expect(taken).toHaveLength(1)
        expect(near(taken)).toBeCloseTo(near(stations), 9)
      })
    }
    everyGrid(check, apart)
  })

  it('holds no NaN', () => {
    everyGrid((grid) => {
      for (const values of [grid.deviationsUm, grid.doubtUm, grid.depthsMm, grid.angles]) {
        expect(values.some((value) => Number.isNaN(value))).toBe(false)
      }
    })
  })
})
