import { describe, expect, it } from 'vitest'
import type { Bore, Spec } from '../../../../src/core/measured'
import { findingOf, first, measuredBore } from '../measured-bore'

const spec: Spec = { newMinMm: 80, newMaxMm: 80.02, wearLimitMm: 80.1, oversizesMm: [0.25, 0.5, 1] }

function bored(overMm: number, bore: Partial<Bore>, survey: { caliperMm?: number } = {}) {
  const rows = [
    [80.03 + overMm, 80.025 + overMm],
    [80.02 + overMm, 80.02 + overMm],
  ]
  const measured = measuredBore({ levelsMm: [10, 60], axesDegrees: [0, 90], rows }, { spec, bore })
  const [one] = measured.bores
  if (!one) throw new Error('no bore')
  const surveys = one.surveys.map((each) => ({ ...each, ...survey }))
  return findingOf({ ...measured, bores: [{ ...one, surveys }] })
}

const openOf = (finding: ReturnType<typeof bored>) =>
  finding.blunders.find(({ code }) => code === 'oversize-open')

describe('a bore finished to an oversize', () => {
  it('is judged by limits that are larger by as much', () => {
    const standard = bored(0, { oversizeMm: 0 })
    const over = bored(0.5, { oversizeMm: 0.5 })
    expect(over.pair).toEqual({ kind: 'wear', minMm: 80.5, maxMm: 80.6, newMaxMm: 80.52 })
    expect(over.verdict).toMatchObject({ known: true, verdict: 'inside' })
    const chance = (finding: typeof over) => first(finding.stations).conformity?.probabilityInside ?? 0
    expect(chance(over)).toBeCloseTo(chance(standard), 3)
    expect(openOf(over)).toBeUndefined()
  })

  it('has grades that are larger by as much', () => {
    const grades = [{ name: 'A', minMm: 80, maxMm: 80.05 }]
    const rows = [[80.52]]
    const measured = measuredBore(
      { levelsMm: [10], axesDegrees: [0], rows },
      { spec: { ...spec, grades }, bore: { oversizeMm: 0.5 } },
    )
    expect(findingOf(measured).grades).toMatchObject([
      { gradeName: 'A', minMm: 80.5, maxMm: 80.55, verdict: 'inside' },
    ])
  })

  it.each([
    [0, 0],
    [0.25, 0.25],
    [0.5, 0.5],
    [1, 1],
  ])('is asked about while nobody said so; %s mm over proposes %s', (overMm, nearestMm) => {
    expect(openOf(bored(overMm, {}))).toEqual({
      code: 'oversize-open',
      nearestMm,
      mend: { kind: 'say-oversize', oversizeMm: nearestMm },
    })
  })

  it('is no question where a caliper agrees with the standard size', () => {
    expect(openOf(bored(0, {}, { caliperMm: 80 }))).toBeUndefined()
    expect(openOf(bored(0.5, {}, { caliperMm: 80.5 }))).toMatchObject({ nearestMm: 0.5 })
  })

  it('is not taken for a sleeve misread by half a millimetre', () => {
    const codes = bored(0.5, {}).blunders.map(({ code }) => code)
    expect(codes).toContain('oversize-open')
    expect(codes).not.toContain('setting')
  })
})
