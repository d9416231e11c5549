import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cutStretches } from '../../../../src/core/surface/cut-stretches'
import { profileCut, sectionCut } from '../../../../src/core/surface/grid-cuts'
import { gridOf } from '../../../../src/core/surface/grid-of'
import { wallOf } from '../../../../src/core/surface/wall'
import { isHatched } from '../../../../src/core/surface/wall-span'
import { runCount } from '../../../proof/run-count'
import { inventedCylinder, made, type Plan } from './invented-cylinder'
import { raggedSurveys } from './ragged-survey'

const seed = 20251125
const numRuns = runCount({ quick: 40, full: 2_000 })
const rad = Math.PI / 180

function cutOpen({ bore, finding }: ReturnType<typeof inventedCylinder>) {
  const wall = wallOf(bore, finding)
  if (!wall) throw new Error('expected a wall')
  return { wall, finding, grid: gridOf(wall, finding, { rows: 48, columns: 120 }) }
}

const ragged = (plan: Plan) => cutOpen(made({ ...plan, pair: { kind: 'wear', maxMm: 54.05 } }))
/** A footprint's edges are rounded; the middle of so short a piece is no place to ask. */
const isLong = (from: number, to: number) => to - from > 1e-4

describe('the invented cylinder cut open', () => {
  const { grid, finding } = cutOpen(inventedCylinder())

  it('is cut across at 8 mm once around, through each reading at both its ends', () => {
    const cut = sectionCut(grid, 8)
    expect(cut).toHaveLength(grid.angles.length + 1)
    expect(cut.at(-1)).toEqual({ ...cut[0], at: 2 * Math.PI })
    for (const [axis, mm] of [
      [0, (54.033 + 54.035 + 54.033) / 3],
      [45, (54.026 + 54.028 + 54.026) / 3],
      [90, (54.02 + 54.02 + 54.019) / 3],
      [135, (54.023 + 54.023 + 54.024) / 3],
    ] as const) {
      for (const degrees of [axis, axis + 180]) {
        const point = cut.find(({ at }) => Math.abs(at - degrees * rad) < 1e-12)
        expect(point?.deviationUm).toBeCloseTo((mm - 54.025) * 1000, 3)
      }
    }
  })

  it('is cut along 90° from the deck to the bottom, measured between the levels with readings all round, to 8 mm from them', () => {
    const cut = profileCut(grid, Math.PI / 2)
    expect(cut[0]?.at).toBe(0)
    expect(cut.at(-1)?.at).toBe(90)
    const measured = cutStretches(cut, []).filter(({ hatched }) => !hatched)
    expect(measured.map(({ points }) => [points[0]?.at, points.at(-1)?.at])).toEqual([
      [8, 25],
      [62, 70],
      [72, 80],
    ])
  })

  it('has each reading on the cut along its axis, at both ends', () => {
    for (const { depthMm, axisDegrees, diameterMm } of finding.stations) {
      for (const angle of [axisDegrees, axisDegrees + 180]) {
        const point = profileCut(grid, angle * rad).find(({ at }) => at === depthMm)
        expect(point?.deviationUm).toBe(Math.fround((diameterMm - grid.middleMm) * 1000))
      }
    }
  })

  it('refuses a section at a depth that is no row', () => {
    expect(() => sectionCut(grid, 8.123)).toThrow(RangeError)
  })
})

it(`is hatched where the wall beside it is, on ragged surveys, seed ${seed}`, () => {
  fc.assert(
    fc.property(raggedSurveys, (plan) => {
      const { wall, grid } = ragged(plan)
      for (const depthMm of plan.levelsMm) {
        const cut = sectionCut(grid, depthMm)
        for (const [i, { at, hatchedAfter }] of cut.slice(0, -1).entries()) {
          const to = cut[i + 1]?.at ?? at
          if (isLong(at, to)) expect(hatchedAfter).toBe(isHatched(wall.span, depthMm, (at + to) / 2))
        }
      }
      for (const axis of plan.axesDegrees) {
        const cut = profileCut(grid, axis * rad)
        for (const [i, { at, hatchedAfter }] of cut.slice(0, -1).entries()) {
          const to = cut[i + 1]?.at ?? at
          if (isLong(at, to)) expect(hatchedAfter).toBe(isHatched(wall.span, (at + to) / 2, axis * rad))
        }
      }
    }),
    { seed, numRuns },
  )
})

it(`passes through every reading and leaves the range of all by nothing, seed ${seed}`, () => {
  fc.assert(
    fc.property(raggedSurveys, (plan) => {
      const { grid, finding } = ragged(plan)
      const readings = finding.stations.map((s) => Math.fround((s.diameterMm - grid.middleMm) * 1000))
      for (const [i, { depthMm, axisDegrees }] of finding.stations.entries()) {
        const section = sectionCut(grid, depthMm)
        const there = section.find(({ at }) => Math.abs(at - axisDegrees * rad) < 1e-9)
        expect(there?.deviationUm).toBe(readings[i])
        const values = section.map(({ deviationUm }) => deviationUm)
        expect(Math.max(...values)).toBeLessThanOrEqual(Math.max(...readings) + 1e-3)
        expect(Math.min(...values)).toBeGreaterThanOrEqual(Math.min(...readings) - 1e-3)
      }
    }),
    { seed, numRuns },
  )
})
