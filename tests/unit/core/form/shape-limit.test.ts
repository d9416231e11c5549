import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Spec } from '../../../../src/core/measured'
import { findingOf, first, measuredBore, onlyScaleDoubt, type ReadingTable } from '../measured-bore'

/** Level means 80.05, 80.03 and 80.01: 80.03 in the mean. Out-of-round 20 µm, taper 50 µm on 0°. */
const table: ReadingTable = {
  levelsMm: [10, 45, 90],
  axesDegrees: [0, 90],
  rows: [
    [80.06, 80.04],
    [80.03, 80.03],
    [80.01, 80.01],
  ],
}

function shapes(spec: Spec, given = table, ringTravelMm?: { from: number; to: number }) {
  const circumstances = onlyScaleDoubt(1)
  const finding = findingOf(
    measuredBore(given, {
      ...circumstances,
      spec,
      bore: { ...circumstances.bore, ...(ringTravelMm ? { ringTravelMm } : {}) },
    }),
  )
  return { ovality: first(finding.ovality), taper: first(finding.taper) }
}

describe('a limit in proportion', () => {
  it('is the share of the mean of the level means, which it names', () => {
    const { ovality, taper } = shapes({ ovalityLimitPerMm: 0.0003, taperLimitPerMmOfBore: 0.0005 })
    expect(ovality.limitMm).toBeCloseTo(0.024009, 9)
    expect(ovality.limitFrom).toMatchObject({ of: 'bore', perMm: 0.0003 })
    expect(ovality.limitFrom?.lengthMm).toBeCloseTo(80.03, 9)
    expect(taper.limitMm).toBeCloseTo(0.040015, 9)
    expect([ovality, taper]).toMatchObject([{ verdict: 'inside' }, { verdict: 'above' }])
  })

  it('leaves lands out of the size of the bore, unless there is nothing else', () => {
    const share = { ovalityLimitPerMm: 0.0003 }
    expect(shapes(share, table, { from: 20, to: 100 }).ovality.limitFrom?.lengthMm).toBeCloseTo(80.02, 9)
    expect(shapes(share, table, { from: 91, to: 100 }).ovality).toMatchObject({
      known: false,
      why: 'no-readings',
      limitFrom: { of: 'bore' },
    })
  })

  it('goes by the travel where the manual does', () => {
    const { taper } = shapes({ taperLimitPerMmOfTravel: 0.0005, travelMm: 86 })
    expect(taper.limitMm).toBeCloseTo(0.043, 9)
    expect(taper).toMatchObject({
      verdict: 'above',
      limitFrom: { of: 'travel', perMm: 0.0005, lengthMm: 86 },
    })
    expect(taper.limitsGiven).toBeUndefined()
  })

  it('is judged only where it is the smallest of those given', () => {
    const by = (spec: Spec) => {
      const { limitFrom, limitsGiven, limitMm } = shapes(spec).taper
      return [limitFrom?.of ?? 'number', limitsGiven, limitMm && Math.round(limitMm * 1e6)]
    }
    const spec = { taperLimitPerMmOfBore: 0.001, taperLimitPerMmOfTravel: 0.001, travelMm: 70 }
    expect(by({ ...spec, taperLimitMm: 0.06 })).toEqual(['number', 3, 60_000])
    expect(by({ ...spec, taperLimitMm: 0.09 })).toEqual(['travel', 3, 70_000])
    expect(by({ ...spec, travelMm: 90 })).toEqual(['bore', 2, 80_030])
  })

  it('says of nothing that it is inside while the travel is missing, but may prove it over', () => {
    const spec = { taperLimitPerMmOfTravel: 0.0005 }
    const alone = shapes(spec).taper
    expect(alone).toMatchObject({ known: true, limitOpen: 'no-travel' })
    expect(alone.limitMm).toBeUndefined()
    const inside = shapes({ ...spec, taperLimitMm: 0.1 }).taper
    expect(inside).toMatchObject({ known: true, limitOpen: 'no-travel', limitMm: 0.1 })
    expect(inside.known && inside.verdict).toBeUndefined()
    expect(shapes({ ...spec, taperLimitMm: 0.01 }).taper).toMatchObject({ verdict: 'above' })
    expect(shapes({ taperLimitMm: 0.1 }).taper).toMatchObject({ verdict: 'inside' })
  })

  it('judges as the number that it comes to would (random sizes and shares, seed 62)', () => {
    const off = fc.integer({ min: 0, max: 60 }).map((um) => 80 + um / 1000)
    fc.assert(
      fc.property(
        fc.array(off, { minLength: 4, maxLength: 4 }),
        fc.double({ min: 1e-5, max: 1e-3, noNaN: true }),
        (sizes, share) => {
          const given = {
            levelsMm: [10, 90],
            axesDegrees: [0, 90],
            rows: [sizes.slice(0, 2), sizes.slice(2)],
          }
          const lengthMm = sizes.reduce((sum, size) => sum + size, 0) / 4
          const {
            limitFrom: _,
            limitMm: __,
            ...inProportion
          } = shapes({ ovalityLimitPerMm: share }, given).ovality
          const { limitMm: ___, ...asNumber } = shapes({ ovalityLimitMm: share * lengthMm }, given).ovality
          expect(inProportion).toEqual(asNumber)
        },
      ),
      { seed: 62, numRuns: 60 },
    )
  })
})
