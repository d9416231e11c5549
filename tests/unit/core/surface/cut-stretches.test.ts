import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type CutOpening, type CutStretch, cutStretches } from '../../../../src/core/surface/cut-stretches'
import type { CutPoint } from '../../../../src/core/surface/grid-cuts'
import { runCount } from '../../../proof/run-count'

const seed = 20251125
const numRuns = runCount({ quick: 60, full: 2_000 })

function point(at: number, deviationUm: number, hatchedAfter = false): CutPoint {
  return { at, deviationUm, doubtUm: [0, 0, 0, 0], proven: 0, hatchedAfter }
}

const ends = ({ points }: CutStretch) => [points[0]?.at, points.at(-1)?.at]

describe('a cut in pieces', () => {
  const cut = [point(0, 10), point(10, 20), point(20, 40, true), point(30, 40, true), point(40, 0)]

  it('breaks where measured wall meets wall that was not', () => {
    const stretches = cutStretches(cut, [])
    expect(stretches.map((s) => [s.hatched, ...ends(s)])).toEqual([
      [false, 0, 20],
      [true, 20, 40],
    ])
  })

  it('leaves out an opening, with the wall at its edges as it is drawn', () => {
    const stretches = cutStretches(cut, [{ from: 5, to: 15 }])
    expect(stretches.map((s) => [s.hatched, ...ends(s)])).toEqual([
      [false, 0, 5],
      [false, 15, 20],
      [true, 20, 40],
    ])
    expect(stretches[0]?.points.at(-1)?.deviationUm).toBe(15)
    expect(stretches[1]?.points[0]?.deviationUm).toBe(30)
  })

  it('is nothing where an opening takes all of it', () => {
    expect(cutStretches(cut, [{ from: -1, to: 41 }])).toEqual([])
  })
})

const openings = fc.array(
  fc
    .tuple(fc.integer({ min: -5, max: 100 }), fc.integer({ min: 1, max: 40 }))
    .map(([from, width]): CutOpening => ({ from, to: from + width })),
  { maxLength: 4 },
)
const cuts = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: -50, max: 50 }), fc.boolean()), {
    minLength: 2,
    maxLength: 12,
  })
  .map((steps) => {
    let at = 0
    return steps.map(([step, deviation, hatched], i) => {
      if (i > 0) at += step
      return point(at, deviation, hatched)
    })
  })

it(`covers just what the openings leave, in order and without overlap, seed ${seed}`, () => {
  fc.assert(
    fc.property(cuts, openings, (cut, open) => {
      const stretches = cutStretches(cut, open)
      const isOpen = (at: number) => open.some(({ from, to }) => at > from && at < to)
      const isIn = (at: number) =>
        stretches.filter(({ points }) => at > (points[0]?.at ?? at) && at < (points.at(-1)?.at ?? at))
      const last = cut.at(-1)?.at ?? 0
      for (let at = 0.25; at < last; at += 0.5) {
        const found = isIn(at)
        expect(found).toHaveLength(isOpen(at) ? 0 : 1)
        const before = cut.findLast((one) => one.at <= at)
        if (found[0]) expect(found[0].hatched).toBe(before?.hatchedAfter)
      }
      for (const { points } of stretches) {
        expect(points.length).toBeGreaterThanOrEqual(2)
        for (const [i, { at }] of points.entries()) expect(at).toBeGreaterThan(points[i - 1]?.at ?? -1)
      }
    }),
    { seed, numRuns },
  )
})
