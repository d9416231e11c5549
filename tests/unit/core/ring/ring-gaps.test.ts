import { describe, expect, it } from 'vitest'
import type { Bore, Measured, RingGap, Spec } from '../../../../src/core/measured'
import { ringGapsOf } from '../../../../src/core/ring/ring-gaps'
import { findingOf, first, measuredBore, onlyScaleDoubt } from '../measured-bore'

const spec: Spec = { ringGapMinMm: 0.2, ringGapMaxMm: 0.4, ringGapLimitMm: 0.8 }

/** A bore wider at its top by 30 µm, with the gaps given. */
function measured(
  gapsMm: readonly (readonly [number, number])[],
  ofSpec: Spec = spec,
  given: Partial<Bore> = {},
): Measured {
  const certain = onlyScaleDoubt(1)
  const base = measuredBore(
    {
      levelsMm: [20, 100],
      axesDegrees: [0, 90],
      rows: [
        [80.04, 80.02],
        [80, 80],
      ],
    },
    { ...certain, spec: ofSpec, bore: { ...certain.bore, ...given } },
  )
  const bore = first(base.bores)
  const ringGaps = gapsMm.map(([depthMm, gapMm]): RingGap => ({ depthMm, gapMm }))
  return { ...base, bores: [{ ...bore, surveys: [{ ...first(bore.surveys), ringGaps }] }] }
}

function found(job: Measured) {
  const gaps = ringGapsOf(job, findingOf(job))
  if (!gaps.known) throw new Error(gaps.why)
  return gaps
}

describe('ring gaps', () => {
  it('have a least and a most on the running surface, and stand in the order of their depths', () => {
    const gaps = found(
      measured(
        [
          [100, 0.3],
          [20, 0.4],
          [4, 0.1],
        ],
        spec,
        { ringTravelMm: { from: 10, to: 110 } },
      ),
    )
    expect(gaps.gaps.map(({ depthMm, land }) => [depthMm, land])).toEqual([
      [4, true],
      [20, false],
      [100, false],
    ])
    expect(gaps).toMatchObject({
      least: { gapMm: 0.3 },
      most: { gapMm: 0.4 },
      feelerDoubtUm: 12,
      feelerAssumed: true,
    })
    expect(gaps.standing?.verdict).toBe('inside')
  })

  it.each([
    [[0.15, 0.3], 'too-small'],
    [[0.3, 0.9], 'too-large'],
    [[0.3, 0.81], 'too-close'],
    [[0.3, 0.5], 'inside'],
  ] as const)('of %s mm are %s', ([bottom, top], verdict) => {
    expect(
      found(
        measured([
          [100, bottom],
          [20, top],
        ]),
      ).standing?.verdict,
    ).toBe(verdict)
  })

  it('have no standing without limits, and none at all without gaps', () => {
    expect(found(measured([[100, 0.3]], {})).standing).toBeUndefined()
    const none = measured([])
    expect(ringGapsOf(none, findingOf(none))).toEqual({ known: false, why: 'no-gaps' })
  })

  it('only in a land are not judged', () => {
    const gaps = found(measured([[4, 0.1]], spec, { ringTravelMm: { from: 10, to: 110 } }))
    expect(gaps.least).toBeUndefined()
    expect(gaps.standing).toBeUndefined()
  })
})

describe('the taper that ring gaps tell', () => {
  it('is their difference over π, beside that of the level means', () => {
    const { taper } = found(
      measured([
        [20, 0.4],
        [100, 0.3],
      ]),
    )
    expect(taper?.taperMm).toBeCloseTo(0.1 / Math.PI, 12)
    // 1.96 × √2 × 12 µm / π
    expect((taper?.expandedMm ?? 0) * 1000).toBeCloseTo(10.588, 2)
    expect(taper).toMatchObject({ topMm: 20, bottomMm: 100, standsOut: true, byGauge: { differs: false } })
    expect(taper?.byGauge?.taperMm).toBeCloseTo(0.03, 9)
  })

  it('differs from that of the gauge beyond the doubt of both', () => {
    expect(
      found(
        measured([
          [20, 0.5],
          [100, 0.3],
        ]),
      ).taper?.byGauge?.differs,
    ).toBe(true)
    expect(
      found(
        measured([
          [20, 0.3],
          [100, 0.3],
        ]),
      ).taper?.byGauge?.differs,
    ).toBe(true)
  })

  it('has nothing beside it at depths that the gauge did not read', () => {
    const { taper } = found(
      measured([
        [20, 0.4],
        [60, 0.3],
      ]),
    )
    expect(taper?.byGauge).toBeUndefined()
    expect(
      found(
        measured([
          [21, 0.4],
          [99, 0.3],
        ]),
      ).taper?.byGauge?.taperMm,
    ).toBeCloseTo(0.03, 9)
  })

  it('needs two gaps on the running surface', () => {
    expect(found(measured([[20, 0.4]])).taper).toBeUndefined()
  })
})
