import { describe, expect, it } from 'vitest'
import {
  type Circumstances,
  findingOf,
  first,
  measuredBore,
  onlyScaleDoubt,
} from '../unit/core/measured-bore'

const radiusMm = 40
const amplitudeMm = 0.01
const stepDegrees = 1
const axesDegrees = Array.from({ length: 180 / stepDegrees }, (_, i) => i * stepDegrees)
const exact: Circumstances = onlyScaleDoubt(0.001)

/** Sizes that two contacts read in a bore with r = R + a·cos nθ, free of eccentricity. */
function lobed(lobes: number) {
  const r = (degrees: number) => radiusMm + amplitudeMm * Math.cos((lobes * degrees * Math.PI) / 180)
  return measuredBore(
    { levelsMm: [20], axesDegrees, rows: [axesDegrees.map((axis) => r(axis) + r(axis + 180))] },
    exact,
  )
}

/** Range read over 2a, the factor that ISO 4292:1985 tabulates for a method and a number of lobes. */
function factor(lobes: number): number {
  const found = first(findingOf(lobed(lobes)).ovality)
  if (!found.known) throw new Error(found.why)
  return found.valueMm / (2 * amplitudeMm)
}

/**
 * The two-contact column of the table of ISO 4292:1985, from memory: 2 for even numbers of lobes, 0 for odd
 * ones; it also follows from cos nθ + cos n(θ + 180°). Axes stand 1° apart, so a trough may be missed by half
 * a step: a factor of 2 may read low by 1 − cos(n/2°), 0.018 at 22 lobes.
 */
describe('two contacts in a lobed bore, ISO 4292:1985', () => {
  it.each([2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22])('show %s lobes with the factor 2', (lobes) => {
    const missed = 1 - Math.cos((lobes * (stepDegrees / 2) * Math.PI) / 180)
    expect(factor(lobes)).toBeLessThanOrEqual(2 + 1e-9)
    expect(factor(lobes)).toBeGreaterThanOrEqual(2 - missed - 1e-9)
  })

  it.each([3, 5, 7, 9, 11, 13, 15, 17, 19, 21])('do not see %s lobes at all', (lobes) => {
    expect(factor(lobes)).toBeLessThan(1e-9)
  })

  it('are told by a note that they see even lobes only', () => {
    expect(findingOf(lobed(3)).notes.map((note) => note.code)).toContain('two-contacts-see-even-lobes-only')
  })
})

/** Three legs at 120°: derived, the mean of cos n(θ + 120°k) is 0 but for n = 3, 6, 9 and so on. */
describe('three contacts at 120° in a lobed bore', () => {
  it('read one size on every axis of a two-lobed bore, and no out-of-round is claimed from them', () => {
    const r = (degrees: number) => radiusMm + amplitudeMm * Math.cos((2 * degrees * Math.PI) / 180)
    const read = (axis: number) => (2 / 3) * (r(axis) + r(axis + 120) + r(axis + 240))
    const axes = [0, 45, 90, 135]
    const table = { levelsMm: [20], axesDegrees: axes, rows: [axes.map(read)] }
    for (const size of first(table.rows)) expect(size).toBeCloseTo(2 * radiusMm, 12)
    const finding = findingOf(
      measuredBore(table, { ...exact, gauge: { ...exact.gauge, kind: 'three-contact-micrometer' } }),
    )
    for (const found of finding.ovality)
      expect(found).toMatchObject({ known: false, why: 'three-contacts-see-no-oval' })
    expect(first(finding.levels).ovality).toBeUndefined()
    expect(finding.notes.map((note) => note.code)).not.toContain('two-contacts-see-even-lobes-only')
  })
})
