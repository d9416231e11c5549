import { describe, expect, it } from 'vitest'
import { diameterAt20 } from '../../../../src/core/diameter/diameter-at-20'
import type { Contribution, SourceKind } from '../../../../src/core/findings'
import type { Measured } from '../../../../src/core/measured'
import { repeatabilityOf } from '../../../../src/core/uncertainty/station-contributions'
import { findingOf, first, measuredBore, without } from '../measured-bore'

const one = { levelsMm: [10], axesDegrees: [0], rows: [[[54.01, 54.01, 54.01]]] }
const setUp = { settingSizeMm: 54, boreTemperatureC: 27, referenceTemperatureC: 25 }
const infinite = Number.POSITIVE_INFINITY

function part(measured: Measured, kind: SourceKind): Contribution | undefined {
  return first(findingOf(measured).stations).contributions.find((p) => p.kind === kind)
}

function um(measured: Measured, kind: SourceKind): number {
  return 1000 * (part(measured, kind)?.signedMm ?? 0)
}

describe('the budget of a diameter', () => {
  it('has for every recorded input its partial derivative times its doubt', () => {
    const measured = measuredBore(one, { setUp, bore: { wall: { kind: 'plated-aluminium' } } })
    const at = { wall: 23e-6, standard: 11.5e-6, error: 0, reference: 25, difference: 2 }
    const d = (x: Partial<typeof at>) => {
      const v = { ...at, ...x }
      return diameterAt20({
        settingMm: 54,
        standardErrorMm: v.error,
        standardPerK: v.standard,
        wallPerK: v.wall,
        referenceC: v.reference,
        boreC: v.reference + v.difference,
        deviationMm: 0.01,
      })
    }
    expect(first(findingOf(measured).stations).diameterMm).toBeCloseTo(d({}), 12)
    const moved = (x: Partial<typeof at>) => 1000 * (d(x) - d({}))
    expect(um(measured, 'wall-expansion')).toBeCloseTo(moved({ wall: 23e-6 * (1 + 0.1 / Math.sqrt(3)) }), 3)
    expect(um(measured, 'standard-expansion')).toBeCloseTo(moved({ standard: 12.5e-6 }) / Math.sqrt(3), 3)
    expect(um(measured, 'reference-temperature')).toBeCloseTo(moved({ reference: 26 }), 2)
    expect(um(measured, 'temperature-difference')).toBeCloseTo(moved({ difference: 2.3 }), 2)
    expect(um(measured, 'standard')).toBe(1.5)
    expect(um(measured, 'setting')).toBe(2.6)
  })

  it('moves by the unrecorded temperature of the reference as the model does when only the bore was read', () => {
    const measured = without(
      measuredBore(one, { setUp, bore: { wall: { kind: 'plated-aluminium' } } }),
      'referenceTemperatureC',
    )
    // The reference is taken to be as warm as the bore, give or take 1 K: it alone moves.
    expect(Math.abs(um(measured, 'temperature-difference'))).toBeCloseTo((54 * 11.5e-3) / Math.sqrt(3), 2)
    const other = without(
      measuredBore(one, { setUp, bore: { wall: { kind: 'plated-aluminium' } } }),
      'boreTemperatureC',
    )
    expect(Math.abs(um(other, 'temperature-difference'))).toBeCloseTo((54 * 23e-3) / Math.sqrt(3), 2)
  })

  it('takes both temperatures as 20 ± 5 °C and within 1 K where neither was recorded, of no thermometer', () => {
    const measured = without(
      measuredBore(one, {
        setUp: { ...setUp, boreThermometerId: 't', referenceThermometerId: 't' },
        thermometers: [{ id: 't' }],
      }),
      'boreTemperatureC',
      'referenceTemperatureC',
    )
    const reference = part(measured, 'reference-temperature')
    expect(reference).toMatchObject({ id: 'temperature:set-up', scope: 'set-up', assumed: true })
    expect(um(measured, 'reference-temperature')).toBeCloseTo((54 * 1e-3 * 5) / Math.sqrt(3), 3)
    expect(Math.abs(um(measured, 'temperature-difference'))).toBeCloseTo((54 * 10.5e-3) / Math.sqrt(3), 3)
  })

  it('gives two thermometers a source each, unless bore and reference lay together', () => {
    const named = { ...setUp, boreThermometerId: 'a', referenceThermometerId: 'b' }
    const thermometers = [
      { id: 'a', doubtK: 0.5 },
      { id: 'b', doubtK: 2 },
    ]
    const two = measuredBore(one, { setUp: named, thermometers })
    expect(part(two, 'bore-thermometer')).toMatchObject({ id: 'thermometer:a' })
    expect(um(two, 'bore-thermometer')).toBeCloseTo(-54 * 10.5e-3 * 0.5, 3)
    expect(um(two, 'reference-temperature')).toBeCloseTo(54 * 11.5e-3 * 2, 3)
    expect(part(two, 'temperature-difference')).toBeUndefined()
    const soaked = measuredBore(one, { setUp: { ...named, soakedTogether: true }, thermometers })
    expect(part(soaked, 'bore-thermometer')).toBeUndefined()
    expect(um(soaked, 'temperature-difference')).toBeCloseTo(-54 * 10.5e-3 * 0.3, 3)
  })

  it('reads the zero once for sizes, twice for deviations with a closing zero', () => {
    const deviation = measuredBore({ ...one, rows: [[10]] }, { setUp: { ...setUp, entry: 'deviation' } })
    expect(um(deviation, 'zero-reading')).toBeCloseTo(-1.5 / Math.SQRT2, 9)
    expect(um(without(deviation, 'zeroCloseUm'), 'zero-reading')).toBeCloseTo(-1.5, 9)
    expect(um(measuredBore(one, { setUp }), 'zero-reading')).toBeCloseTo(-1.5, 9)
  })

  it.each(['telescoping', 'internal-micrometer-rods', 'three-contact-micrometer'] as const)(
    'has no zero in sizes read directly, by %s',
    (kind) => {
      expect(part(measuredBore(one, { setUp, gauge: { kind } }), 'zero-reading')).toBeUndefined()
    },
  )

  it('reads directly whatever the setting was', () => {
    const at = (settingSizeMm: number) =>
      first(
        findingOf(measuredBore(one, { setUp: { ...setUp, settingSizeMm }, gauge: { kind: 'telescoping' } }))
          .stations,
      )
    expect(at(50).diameterMm).toBe(at(60).diameterMm)
    expect(at(50).diameterMm).toBeCloseTo((54.01 * (1 + 11.5e-6 * 5)) / (1 + 10.5e-6 * 7), 9)
  })

  it('adds a preset drift without a closing zero and the measured one, averaged, with it', () => {
    const open = without(measuredBore(one, { setUp }), 'zeroCloseUm')
    expect(um(open, 'drift-preset')).toBeCloseTo(1.5 / Math.sqrt(3), 9)
    expect(part(open, 'drift-measured')).toBeUndefined()
    const closed = measuredBore(one, { setUp: { ...setUp, zeroOpenUm: 1, zeroCloseUm: -2 } })
    expect(part(closed, 'drift-preset')).toBeUndefined()
    expect(um(closed, 'drift-measured')).toBeCloseTo(3 / Math.sqrt(12) / Math.sqrt(3), 9)
  })

  it('takes the step for repeatability, with infinite degrees of freedom, where it is the larger', () => {
    const fine = measuredBore(one, { setUp })
    expect(part(fine, 'repeatability')).toMatchObject({ degreesOfFreedom: 20 })
    expect(um(fine, 'repeatability')).toBeCloseTo(1.5 / Math.sqrt(3), 9)
    const coarse = measuredBore(one, { setUp, gauge: { stepUm: 10 } })
    expect(part(coarse, 'repeatability')).toMatchObject({ degreesOfFreedom: infinite })
    expect(um(coarse, 'repeatability')).toBeCloseTo(10 / Math.sqrt(12), 9)
    expect(part(coarse, 'zero-reading')).toMatchObject({ degreesOfFreedom: infinite })
  })

  it('does not average dial or scale over repeats', () => {
    expect(um(measuredBore(one, { setUp }), 'scale')).toBe(0.6)
    expect(um(measuredBore({ ...one, rows: [[54.01]] }, { setUp }), 'scale')).toBe(0.6)
  })

  it('lets every figure of a gauge and a standard be overridden', () => {
    const measured = measuredBore(one, {
      setUp,
      gauge: { repeatabilityUm: 3, repeatabilityDegreesOfFreedom: 5, settingUm: 0.5, scaleUm: 0.2 },
      standard: { doubtUm: 0.7 },
    })
    expect(um(measured, 'repeatability')).toBeCloseTo(3 / Math.sqrt(3), 9)
    expect(part(measured, 'repeatability')).toMatchObject({ degreesOfFreedom: 5 })
    expect([um(measured, 'setting'), um(measured, 'scale'), um(measured, 'standard')]).toEqual([
      0.5, 0.2, 0.7,
    ])
  })
})

describe('the doubt of the place', () => {
  const table = { levelsMm: [3, 10, 20, 40], axesDegrees: [0], rows: [[54], [54.1], [54.2], [54.2]] }
  const place = (bore = {}) =>
    findingOf(measuredBore(table, { setUp: { settingSizeMm: 54 }, bore })).stations.map(
      (s) => 1000 * (s.contributions.find((p) => p.kind === 'place')?.signedMm ?? Number.NaN),
    )

  it('is the slope between the neighbours on the axis times 0.5 mm, one-sided at the ends', () => {
    const [a = 0, b = 0, c = 0, d = 0] = place()
    expect(a).toBeCloseTo((100 / 7) * 0.5, 6)
    expect(b).toBeCloseTo((200 / 17) * 0.5, 6)
    expect(c).toBeCloseTo((100 / 30) * 0.5, 6)
    expect(d).toBeCloseTo(0, 6)
  })

  it('takes no slope for a land from outside that land, while a level beside it does', () => {
    const [a = 0, b = 0, , d = 0] = place({ ringTravelMm: { from: 5, to: 30 } })
    expect([a, d]).toEqual([0, 0])
    expect(b).toBeCloseTo((200 / 17) * 0.5, 6)
  })
})

describe('repeatability', () => {
  const gauge = { id: 'g', kind: 'dial-0.001-micrometer' } as const

  it('is pooled over the stations of the survey from 8 degrees of freedom on', () => {
    // Four stations of three repeats, squares 2 each: s² = 8/8 = 1.
    const repeats = [0, 10, 20, 30].map((x) => [x - 1, x, x + 1])
    expect(repeatabilityOf(gauge, 's', repeats)).toEqual({
      um: 1,
      degreesOfFreedom: 8,
      estimate: 'repeats:s',
    })
    expect(repeatabilityOf(gauge, 's', repeats.slice(1))).toMatchObject({ um: 1.5, degreesOfFreedom: 20 })
    expect(repeatabilityOf(gauge, 's', [[5], ...repeats, [7]])).toMatchObject({ um: 1, degreesOfFreedom: 8 })
  })
})
