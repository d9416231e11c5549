import { describe, expect, it } from 'vitest'
import type { Measured } from '../../../../src/core/measured'
import {
  clearancesByLevel,
  depthOfHeight,
  drawnPiston,
  ringGapsByLevel,
  shareAtDepth,
} from '../../../../src/core/piston/piston-in-bore'
import { findingOf, first } from '../measured-bore'
import { certainPiston, withPistons } from './measured-fit'

const sizes = { top: [80.06, 80.052], bottom: [80.042, 80.04] } as const
const spec = { travelMm: 60, crownAtTopMm: 0.5 }
const piston = certainPiston(80, { heightMm: 10, crownHeightMm: 50, topRingHeightMm: 44 })

function drawnOf(measured: Measured) {
  const drawn = drawnPiston(measured, first(measured.pistons ?? []))
  if (!drawn.ok) throw new Error(drawn.lacks.join())
  return drawn.drawn
}

describe('a piston drawn in its bore', () => {
  it('stands with its crown below the deck by what was given, and a stroke lower at the bottom', () => {
    const drawn = drawnOf(withPistons(sizes, [piston], { spec }))
    expect(depthOfHeight(drawn, 50, 0)).toBe(0.5)
    expect(depthOfHeight(drawn, 50, 1)).toBe(60.5)
    expect(depthOfHeight(drawn, 0, 0)).toBe(50.5)
  })

  it('is at the share of its stroke that a height of it and a depth ask for, or never there', () => {
    const drawn = drawnOf(withPistons(sizes, [piston], { spec }))
    const share = shareAtDepth(drawn, 10, 70) ?? Number.NaN
    expect(depthOfHeight(drawn, 10, share)).toBeCloseTo(70, 12)
    expect(shareAtDepth(drawn, 10, 20)).toBeUndefined()
    expect(shareAtDepth(drawn, 10, 140)).toBeUndefined()
  })

  it('is straight between sizes that were measured and held past them, from the skirt to the crown', () => {
    const profile = [{ heightMm: 30, readMm: 79.9 }]
    const { sizes: drawn } = drawnOf(withPistons(sizes, [{ ...piston, profile }], { spec }))
    expect(drawn).toEqual([
      { heightMm: 0, sizeMm: 80 },
      { heightMm: 10, sizeMm: 80 },
      { heightMm: 30, sizeMm: 79.9 },
      { heightMm: 50, sizeMm: 79.9 },
    ])
  })

  it('is not drawn without a size, a height, its length or its travel, and says what is missing', () => {
    const bare = { id: 'piston', state: 'at-hand' } as const
    expect(drawnPiston(withPistons(sizes, [bare]), bare)).toEqual({
      ok: false,
      lacks: ['size', 'height', 'crown-height', 'travel'],
    })
  })
})

describe('clearance and ring gap at a level', () => {
  it('come from the stations of that level alone', () => {
    const measured = withPistons(sizes, [piston], { spec })
    const found = clearancesByLevel(measured, findingOf(measured), piston)
    expect(found.map(({ depthMm, axes }) => [depthMm, axes])).toEqual([
      [20, 2],
      [100, 2],
    ])
    expect(found[0]?.leastMm).toBeCloseTo(0.052, 9)
    expect(found[0]?.mostMm).toBeCloseTo(0.06, 9)
    expect(found[1]?.leastMm).toBeCloseTo(0.04, 9)
  })

  it('close the ring by π times what the mean of a level is smaller, with the doubt of feeler and gauge', () => {
    const measured = withPistons(sizes, [piston], { spec })
    const [bore] = measured.bores
    const [survey] = bore?.surveys ?? []
    if (!bore || !survey) throw new Error('no survey')
    const gapped: Measured = {
      ...measured,
      bores: [{ ...bore, surveys: [{ ...survey, ringGaps: [{ depthMm: 20, gapMm: 0.4 }] }] }],
    }
    const gaps = ringGapsByLevel(gapped, findingOf(gapped))
    expect(gaps[0]).toMatchObject({ depthMm: 20, gapMm: 0.4, from: 'measured' })
    // The means differ by 15 µm; a ring gap by 10 µm of bore is 31 µm (common practice, no published source).
    expect(gaps[1]?.gapMm).toBeCloseTo(0.4 - Math.PI * 0.015, 9)
    expect(gaps[1]?.from).toBe('bore')
    // Feeler 12 µm and two means of two stations of 1 µm each.
    expect(gaps[1]?.expandedMm).toBeCloseTo(1.96 * Math.hypot(0.012, Math.PI * 0.001), 5)
    expect(ringGapsByLevel(measured, findingOf(measured))).toEqual([])
  })
})
