import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boreDifference } from '../../../../src/core/difference/bore-difference'
import { differenceGrid, standsOut } from '../../../../src/core/difference/difference-grid'
import type { BoreFinding, Difference } from '../../../../src/core/findings'
import { inspect } from '../../../../src/core/inspect'
import type { Measured } from '../../../../src/core/measured'
import { columnAt, deviationAt, rowAt } from '../../../../src/core/surface/drawn-position'
import { wallOf } from '../../../../src/core/surface/wall'
import type { WallGrid } from '../../../../src/core/surface/wall-grid'
import { boreOf, first, measuredBore, type ReadingTable } from '../measured-bore'

const radians = Math.PI / 180
const levelsMm = [10, 16, 45]
const axesDegrees = [0, 45, 90, 135]
const used: ReadingTable = {
  levelsMm,
  axesDegrees,
  rows: [
    [80.03, 80.012, 80.004, 80.001],
    [80.02, 80.01, 80.003, undefined],
    [80.012, 80.008, 79.99, 80.002],
  ],
}
const fresh: ReadingTable = {
  levelsMm,
  axesDegrees,
  rows: levelsMm.map(() => axesDegrees.map(() => 80.002)),
}

function two(one: ReadingTable, other: ReadingTable, length = {}): Measured {
  const own = measuredBore(one, { bore: { id: 'one', ...length } })
  const second = boreOf(other, first(own.setUps), { id: 'other', role: 'for-comparison', ...length })
  return { ...own, bores: [...own.bores, second] }
}

function found(measured: Measured, id: string): BoreFinding {
  const finding = inspect(measured).bores.find(({ boreId }) => boreId === id)
  if (!finding) throw new Error(`no bore ${id}`)
  return finding
}

function wallFor(measured: Measured, finding: BoreFinding) {
  const bore = measured.bores.find(({ id }) => id === finding.boreId)
  const wall = bore && wallOf(bore, finding)
  if (!wall) throw new Error(`no wall of ${finding.boreId}`)
  return wall
}

function readDifference(measured: Measured): Difference {
  const difference = boreDifference(measured, found(measured, 'one'), found(measured, 'other'))
  if (!difference) throw new Error('no difference')
  return difference
}

function differenceOf(measured: Measured): { difference: Difference; grid: WallGrid } {
  const [one, other] = [found(measured, 'one'), found(measured, 'other')]
  const difference = readDifference(measured)
  const walls = [wallFor(measured, one), wallFor(measured, other)] as const
  return { difference, grid: differenceGrid(difference, ...walls, { middleMm: 80, rows: 24, columns: 24 }) }
}

const drawnAt = (grid: WallGrid, depthMm: number, angle: number) =>
  deviationAt(grid, columnAt(grid, angle), rowAt(grid, depthMm))

function hatchedAt(grid: WallGrid, depthMm: number, degrees: number): boolean {
  const cell =
    Math.floor(rowAt(grid, depthMm)) * grid.angles.length + Math.floor(columnAt(grid, degrees * radians))
  return grid.hatched[cell] === 1
}

const sizes = fc.array(fc.array(fc.integer({ min: -30, max: 30 }), { minLength: 4, maxLength: 4 }), {
  minLength: 3,
  maxLength: 3,
})
const tableOf = (um: readonly (readonly number[])[]): ReadingTable => ({
  levelsMm,
  axesDegrees,
  rows: um.map((row) => row.map((value) => 80 + value / 1000)),
})

describe('the wall of a difference', () => {
  it('has at both contacts of every station that both have exactly their difference', () => {
    const { difference, grid } = differenceOf(two(used, fresh))
    expect(difference.stations).toHaveLength(11)
    for (const { depthMm, axisDegrees, differenceMm } of difference.stations) {
      for (const angle of [axisDegrees * radians, axisDegrees * radians + Math.PI]) {
        expect(drawnAt(grid, depthMm, angle)).toBeCloseTo(1000 * differenceMm, 4)
      }
    }
  })

  it('is hatched where either was not measured, and past the levels that both have', () => {
    const higher = { ...fresh, levelsMm: [10, 30, 45] }
    const { grid } = differenceOf(two(used, higher, { lengthMm: 60 }))
    expect(hatchedAt(grid, 14, 20), 'between 10 and 16 of one, within 8 mm of 10 of the other').toBe(false)
    expect(hatchedAt(grid, 14, 120), 'one has no reading at 16 mm, 135°').toBe(true)
    expect(hatchedAt(grid, 5, 20), 'above the first level').toBe(true)
    expect(hatchedAt(grid, 40, 20), 'near 45 of both').toBe(false)
    expect(hatchedAt(grid, 30, 20), 'only the other was measured here').toBe(true)
  })

  it('marks a patch only where it holds a station that stands out beyond its U, with its sign', () => {
    const { difference, grid } = differenceOf(two(used, fresh))
    const at = (depthMm: number, axisDegrees: number) => {
      const station = difference.stations.find((s) => s.depthMm === depthMm && s.axisDegrees === axisDegrees)
      if (!station) throw new Error('no such station')
      const node = rowAt(grid, depthMm) * grid.angles.length + columnAt(grid, axisDegrees * radians)
      return { out: standsOut(station), mark: grid.proven[node] }
    }
    expect(at(10, 0)).toEqual({ out: true, mark: 1 })
    expect(at(45, 90)).toEqual({ out: true, mark: 2 })
    expect(at(10, 135)).toEqual({ out: false, mark: 0 })
  })

  it('has the U of the nearest station on either side of no difference', () => {
    const { difference, grid } = differenceOf(two(used, fresh))
    const station = first(difference.stations)
    const node = 4 * (rowAt(grid, station.depthMm) * grid.angles.length)
    const u = 1000 * station.expandedMm
    expect([...grid.doubtUm.slice(node, node + 4)].map((um) => um.toFixed(3))).toEqual(
      [-u, 0, 0, u].map((um) => um.toFixed(3)),
    )
  })

  it('B − A is A − B with the other sign, at every place and mark alike, 8 pairs from seed 5', () => {
    fc.assert(
      fc.property(sizes, sizes, (one, other) => {
        const ahead = differenceOf(two(tableOf(one), tableOf(other)))
        const back = differenceOf(two(tableOf(other), tableOf(one)))
        ahead.difference.stations.forEach((station, index) => {
          const turned = back.difference.stations[index]
          expect(turned?.differenceMm).toBeCloseTo(-station.differenceMm, 9)
          expect(turned?.expandedMm).toBeCloseTo(station.expandedMm, 9)
        })
        expect(
          Math.max(
            ...ahead.grid.deviationsUm.map((um, i) => Math.abs(um + (back.grid.deviationsUm[i] ?? 1e9))),
          ),
        ).toBeLessThan(1e-4)
        const marksOf = ({ difference, grid }: typeof ahead) =>
          difference.stations.map(
            ({ depthMm, axisDegrees }) =>
              grid.proven[rowAt(grid, depthMm) * grid.angles.length + columnAt(grid, axisDegrees * radians)],
          )
        expect(marksOf(ahead).map((mark) => (mark ? 3 - mark : 0))).toEqual(marksOf(back))
        expect(ahead.grid.hatched).toEqual(back.grid.hatched)
      }),
      { seed: 5, numRuns: 8 },
    )
  })

  it('a setting that is off for both moves neither figure nor doubt, 10 settings from seed 6', () => {
    fc.assert(
      fc.property(fc.integer({ min: -200, max: 200 }), (um) => {
        const shifted = (table: ReadingTable): ReadingTable => ({
          ...table,
          rows: table.rows.map((row) => row.map((mm) => (typeof mm === 'number' ? mm + um / 1000 : mm))),
        })
        const plain = readDifference(two(used, fresh))
        const moved = readDifference(two(shifted(used), shifted(fresh)))
        moved.stations.forEach((station, index) => {
          expect(station.differenceMm).toBeCloseTo(plain.stations[index]?.differenceMm ?? Number.NaN, 9)
          expect(station.expandedMm).toBeCloseTo(plain.stations[index]?.expandedMm ?? Number.NaN, 6)
        })
      }),
      { seed: 6, numRuns: 10 },
    )
  })
})

describe('a station of one bore', () => {
  // By hand, from the two budgets: what is shared (setting, standard, zero, expansion at 20 °C) is one error of
  // each and drops out; left are repeatability and scale of both, 1.5 and 0.6 µm typical, √(2·(1.5² + 0.6²)),
  // and each bore's temperature difference, where each bore has its own.
  it('has in a difference the doubt that its own errors leave, and not the whole of its U', () => {
    const { difference } = differenceOf(two(used, fresh))
    const station = first(difference.stations)
    const alone = first(found(two(used, fresh), 'one').stations)
    expect(1000 * station.standardUncertaintyMm).toBeGreaterThan(Math.sqrt(2 * (1.5 ** 2 + 0.6 ** 2)) - 1e-9)
    expect(station.standardUncertaintyMm).toBeLessThan(Math.SQRT2 * alone.standardUncertaintyMm)
  })

  it('is taken once where two levels of the other bore lie within 1 mm of it', () => {
    const near = { ...fresh, levelsMm: [9.6, 10.2, 45] }
    const { difference } = differenceOf(two(used, near))
    expect(difference.stations.filter(({ depthMm }) => depthMm === 10)).toHaveLength(4)
    const back = differenceOf(two(near, used)).difference
    expect(back.stations.filter(({ depthMm }) => depthMm < 20).map(({ depthMm }) => depthMm)).toEqual([
      10.2, 10.2, 10.2, 10.2,
    ])
  })
})
