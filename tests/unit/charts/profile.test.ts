import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { labelRow, labelsDown } from '../../../src/charts/label-row'
import { contactsOf } from '../../../src/charts/map-contacts'
import { downOf } from '../../../src/charts/map-scale'
import { profileScale } from '../../../src/charts/profile-scale'
import { nextOnProfile } from '../../../src/charts/profile-steps'
import { uAlong } from '../../../src/charts/u-along'
import { runCount } from '../../proof/run-count'
import { inventedCylinder, made } from '../core/surface/invented-cylinder'

const seed = 20251125
const numRuns = runCount({ quick: 200, full: 10_000 })

it('a profile has depth down as the map has, and deviations across in proportion', () => {
  const box = { left: 44, top: 38, width: 284, height: 168, lengthMm: 90 }
  const scale = profileScale(box, { lowUm: -32, highUm: 32 })
  expect(downOf(scale, 45)).toBe(38 + 84)
  expect(scale.across(0)).toBeCloseTo((scale.across(-32) + scale.across(32)) / 2, 9)
  expect(scale.across(-32)).toBeGreaterThan(44)
  expect(scale.across(32)).toBeLessThan(44 + 284)
})

it('U between two readings is mixed in proportion to the depth, and stays past them', () => {
  const { finding } = made({
    spots: [
      { depthMm: 10, axisDegrees: 0, diameterMm: 54, standardUncertaintyMm: 0.002 },
      { depthMm: 30, axisDegrees: 0, diameterMm: 54, standardUncertaintyMm: 0.004 },
    ],
  })
  const [first = Number.NaN, second = Number.NaN] = finding.stations.map((s) => s.expandedMm)
  expect(uAlong(finding.stations, 10)).toBe(first)
  expect(uAlong(finding.stations, 15)).toBeCloseTo(0.75 * first + 0.25 * second, 12)
  expect(uAlong(finding.stations, 2)).toBe(first)
  expect(uAlong(finding.stations, 80)).toBe(second)
  expect(uAlong([], 80)).toBeUndefined()
})

describe('the arrow keys on a profile', () => {
  const contacts = contactsOf(inventedCylinder().finding.stations)
  const on = (axis: number) => nextOnProfile(axis, axis)

  it('keep to the axis up and down, past levels without a reading on it', () => {
    expect(on(0)(contacts, { depthMm: 25, angleDegrees: 0 }, 'ArrowDown')).toEqual({
      depthMm: 62,
      angleDegrees: 0,
    })
    expect(on(90)(contacts, { depthMm: 25, angleDegrees: 90 }, 'ArrowDown')).toEqual({
      depthMm: 35,
      angleDegrees: 90,
    })
  })

  it('go to the next axis left and right, at the nearest level it has, and round', () => {
    expect(on(90)(contacts, { depthMm: 35, angleDegrees: 90 }, 'ArrowRight')).toEqual({
      depthMm: 25,
      angleDegrees: 135,
    })
    expect(on(135)(contacts, { depthMm: 25, angleDegrees: 135 }, 'ArrowRight')?.angleDegrees).toBe(0)
    expect(on(0)(contacts, { depthMm: 25, angleDegrees: 0 }, 'ArrowLeft')?.angleDegrees).toBe(135)
    expect(on(0)(contacts, undefined, 'Home')).toBeUndefined()
  })
})

const label = fc.record({
  x: fc.integer({ min: 0, max: 300 }),
  texts: fc
    .array(fc.integer({ min: 1, max: 24 }), { minLength: 1, maxLength: 2 })
    .map((lengths) => lengths.map((length) => 'x'.repeat(length))),
})

it(`labels of a row never touch and never leave it, and each stands at its place, seed ${seed}`, () => {
  fc.assert(
    fc.property(fc.array(label, { maxLength: 6 }), (labels) => {
      const placed = labelRow(labels, { left: 0, right: 300 }, 6)
      expect(placed).toHaveLength(labels.length)
      const boxes = placed.flatMap((one, i) => (one ? [{ ...one, at: labels[i]?.x ?? 0 }] : []))
      for (const [i, box] of boxes.entries()) {
        expect(box.x).toBeGreaterThanOrEqual(0)
        expect(box.x + box.width).toBeLessThanOrEqual(300)
        expect(box.at).toBeGreaterThanOrEqual(box.x - 4)
        expect(box.at).toBeLessThanOrEqual(box.x + box.width + 4)
        for (const other of boxes.slice(i + 1)) {
          expect(box.x + box.width < other.x || other.x + other.width < box.x).toBe(true)
        }
      }
      const first = labels[0]
      if (first && (first.texts[0] ?? '').length * 6 <= 300) expect(placed[0]?.text).toBe(first.texts[0])
    }),
    { seed, numRuns },
  )
})

it('labels beneath each other move down no more than they must', () => {
  expect(labelsDown([10, 12, 60])).toEqual([10, 24, 60])
})
