import { describe, expect, it } from 'vitest'
import { asMadeExpanded } from '../../../../src/core/difference/difference'
import type { Difference } from '../../../../src/core/findings'
import type { Measured } from '../../../../src/core/measured'
import { combine } from '../../../../src/core/uncertainty/combine'
import { boreOf, findingOf, first, measuredBore } from '../measured-bore'

const used = {
  levelsMm: [10, 45],
  axesDegrees: [0, 90],
  rows: [
    [80.06, 80.04],
    [80.03, 80.02],
  ],
}
const fresh = {
  ...used,
  rows: [
    [80.01, 80.01],
    [80.01, 80.008],
  ],
}

function pairOfBores(otherSetUp = 'set-up', levelsMm = used.levelsMm): Measured {
  const own = measuredBore(used, { bore: { id: 'used' } })
  const other = boreOf(
    { ...fresh, levelsMm },
    { id: otherSetUp, entry: 'size' },
    { id: 'new', role: 'for-comparison' },
  )
  const setUps = own.setUps.some((s) => s.id === otherSetUp)
    ? own.setUps
    : [...own.setUps, { ...first(own.setUps), id: otherSetUp }]
  return { ...own, setUps, bores: [...own.bores, other] }
}

function differenceOf(measured: Measured): Difference {
  return first(findingOf(measured, 'used').differences)
}

/** Sources whose errors are left in the difference of the first stations, with their doubt, µm. */
function leftOver(measured: Measured): Record<string, number> {
  const a = first(findingOf(measured, 'used').stations).contributions
  const b = first(findingOf(measured, 'new').stations).contributions
  return Object.fromEntries(
    [...new Set(a.map((p) => p.kind))].map((kind) => [
      kind,
      1000 *
        combine([
          { factor: 1, contributions: a.filter((p) => p.kind === kind) },
          { factor: -1, contributions: b.filter((p) => p.kind === kind) },
        ]).standardUncertainty,
    ]),
  )
}

describe('a difference of two bores', () => {
  it('holds nothing of setting, standard, zero and thermometer when both were measured with one setting', () => {
    const left = leftOver(pairOfBores())
    for (const kind of ['setting', 'standard', 'zero-reading', 'wall-expansion', 'standard-expansion']) {
      expect(left[kind], kind).toBe(0)
    }
    expect(left['reference-temperature']).toBeLessThan(0.001)
    expect(left.repeatability).toBeCloseTo(1.5 * Math.SQRT2, 6)
    expect(left.scale).toBeCloseTo(0.6 * Math.SQRT2, 6)
  })

  it('shares the standard of two set-ups on one ring, but neither setting nor zero', () => {
    const left = leftOver(pairOfBores('another'))
    expect(left.standard).toBe(0)
    expect(left['standard-expansion']).toBe(0)
    expect(left.setting).toBeCloseTo(2.6 * Math.SQRT2, 6)
    expect(left['zero-reading']).toBeCloseTo(1.5 * Math.SQRT2, 6)
  })

  it('is the difference station by station, the largest named, with the mean of all', () => {
    const found = differenceOf(pairOfBores())
    expect(found.stations.map((s) => Math.round(1000 * s.differenceMm))).toEqual([50, 30, 20, 12])
    expect(found.largest).toMatchObject({ depthMm: 10, axisDegrees: 0 })
    expect(found.mean.differenceMm).toBeCloseTo(0.028, 9)
    expect(found.mean.expandedMm).toBeLessThan(first(found.stations).expandedMm)
  })

  it('matches levels within 1 mm and no further', () => {
    expect(differenceOf(pairOfBores('set-up', [11, 46.5])).stations).toHaveLength(2)
    expect(findingOf(pairOfBores('set-up', [11.5, 46.5]), 'used').differences).toEqual([])
  })

  it('is not taken between two contacts and three', () => {
    const measured = pairOfBores('another')
    const three = {
      ...measured,
      gauges: [...measured.gauges, { id: 'three', kind: 'three-contact-micrometer' as const }],
      setUps: measured.setUps.map((s) => (s.id === 'another' ? { ...s, gaugeId: 'three' } : s)),
    }
    expect(findingOf(three, 'used').differences).toEqual([])
  })

  it('says so when one bore was bare and the other bolted, where both are recorded', () => {
    const clamped = (mine: 'bare' | 'torque-plate', theirs?: 'bare'): Measured => {
      const measured = pairOfBores()
      const bores = measured.bores.map((bore) => {
        const clamping = bore.id === 'used' ? mine : theirs
        return clamping ? { ...bore, surveys: bore.surveys.map((s) => ({ ...s, clamping })) } : bore
      })
      return { ...measured, bores }
    }
    expect(differenceOf(clamped('torque-plate', 'bare')).clampings).toEqual(['torque-plate', 'bare'])
    expect(differenceOf(clamped('bare', 'bare'))).not.toHaveProperty('clampings')
    expect(differenceOf(clamped('bare'))).not.toHaveProperty('clampings')
  })

  it('is told from how both were made where the band is known: the mean beside both doubts in squares', () => {
    const made = (bandMm: number) =>
      differenceOf({ ...pairOfBores(), spec: { newMinMm: 80, newMaxMm: 80 + bandMm } })
    // The mean differs by 28 µm: 1.96·T/√6 is 24 µm of a band of 30 µm and 32 µm of one of 40 µm.
    expect(made(0.03)).toMatchObject({ beyondAsMade: true })
    expect(made(0.04)).toMatchObject({ beyondAsMade: false })
    expect(differenceOf(pairOfBores())).not.toHaveProperty('beyondAsMade')
  })

  it('is given for bores of this engine only', () => {
    expect(findingOf(pairOfBores(), 'new').differences).toEqual([])
  })
})

describe('how much two new bores may differ as made', () => {
  const bore = (grade?: string) => ({ ...first(measuredBore(used).bores), ...(grade ? { grade } : {}) })
  const spec = { newMinMm: 80, newMaxMm: 80.03, grades: [{ name: 'A', minMm: 80, maxMm: 80.01 }] }

  it('is 1.96·T/√6, of the grade both have, else of the new band', () => {
    expect(asMadeExpanded(spec, bore('A'), bore('A'))).toBeCloseTo((1.959964 * 0.01) / Math.sqrt(6), 8)
    expect(asMadeExpanded(spec, bore('A'), bore())).toBeCloseTo((1.959964 * 0.03) / Math.sqrt(6), 8)
    expect(asMadeExpanded({ wearLimitMm: 80.1 }, bore(), bore())).toBeUndefined()
  })
})
