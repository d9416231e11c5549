import { describe, expect, it } from 'vitest'
import type { Piston, RingGap, Spec } from '../../src/core/measured'
import { ringGapsOf } from '../../src/core/ring/ring-gaps'
import { sizeMarks } from '../../src/pages/bench/marks'
import { findingOf, first, measuredBore, onlyScaleDoubt } from '../unit/core/measured-bore'
import { certainPiston, firstFit, withPistons } from '../unit/core/piston/measured-fit'

/**
 * Limits of public technical manuals of armed forces, in the inches that they print; bores, pistons and gaps are
 * invented. Expansions are those of a university textbook's table B.6 and of a die-casting association's table
 * A-3-2, per million and kelvin.
 */
const { kept: fromInches } = sizeMarks('inch')

/** A bore the same everywhere but for its top, with a piston of 4 in, hardly any doubt in either. */
function fit(least: number, most: number, spec: Spec) {
  const [small, large] = [fromInches(4 + least), fromInches(4 + most)]
  const sizes = { top: [large, small], bottom: [small, small] } as const
  return firstFit(withPistons(sizes, [certainPiston(fromInches(4))], { spec }, 0.1))
}

/** End gaps at 20 and 110 mm, inches, with a feeler of hardly any doubt. */
function gaps(inches: readonly [number, number], spec: Spec, um = 0.1) {
  const [top, bottom] = inches
  const ringGaps: RingGap[] = [
    { depthMm: 20, gapMm: fromInches(top) },
    { depthMm: 110, gapMm: fromInches(bottom) },
  ]
  const measured = measuredBore(
    { levelsMm: [20, 110], axesDegrees: [0], rows: [[fromInches(4)], [fromInches(4)]] },
    { ...onlyScaleDoubt(0.1), spec },
  )
  const [bore] = measured.bores
  if (!bore) throw new Error('no bore')
  const survey = { ...first(bore.surveys), ringGaps, feelerDoubtUm: um }
  const withGaps = { ...measured, bores: [{ ...bore, surveys: [survey] }] }
  const found = ringGapsOf(withGaps, findingOf(withGaps))
  if (!found.known) throw new Error(found.why)
  return found
}

describe('piston-to-liner clearances as manuals print them', () => {
  it.each([
    [0.0031, 0.0059, 'inside'],
    [0.0029, 0.0059, 'too-tight'],
    [0.0031, 0.0061, 'too-loose'],
  ])('of TM 9-2815-260-24, table 5-11, 0.003 to 0.006 in: %s to %s in is %s', (least, most, verdict) => {
    const spec = { clearanceMinMm: fromInches(0.003), clearanceMaxMm: fromInches(0.006) }
    expect(fit(least, most, spec).verdict).toBe(verdict)
    // Printed beside as 0.08 and 0.15 mm.
    expect(spec.clearanceMinMm).toBeCloseTo(0.08, 2)
    expect(spec.clearanceMaxMm).toBeCloseTo(0.15, 2)
  })

  it.each([
    [0.0082, 'inside', 'inside'],
    [0.0084, 'inside', 'too-loose'],
    [0.0119, 'inside', 'too-loose'],
    [0.0121, 'too-loose', 'too-loose'],
  ])(
    'of TM 9-2815-202-34, 0.0045 to 0.0083 in new and 0.0120 in worn: up to %s in is %s, as a new pair %s',
    (most, verdict, asNew) => {
      const spec = {
        clearanceMinMm: fromInches(0.0045),
        clearanceMaxMm: fromInches(0.0083),
        clearanceLimitMm: fromInches(0.012),
      }
      expect(fit(0.0046, most, spec)).toMatchObject({ verdict, asNew: { verdict: asNew } })
    },
  )

  it('of TM 10-3930-659-34 tell a taper of more than 0.002 in as the difference of two clearances', () => {
    const spec = { taperLimitMm: fromInches(0.002) }
    const taper = (top: number, bottom: number) => {
      const sizes = {
        top: [fromInches(4 + top), fromInches(4 + top)],
        bottom: [fromInches(4 + bottom), fromInches(4 + bottom)],
      } as const
      const measured = withPistons(sizes, [certainPiston(fromInches(4))], { spec }, 0.1)
      const { least, most } = firstFit(measured)
      const found = first(findingOf(measured).taper)
      return {
        apart: (most?.valueMm ?? 0) - (least?.valueMm ?? 0),
        verdict: found.known ? found.verdict : '',
      }
    }
    expect(taper(0.0051, 0.003).apart).toBeCloseTo(fromInches(0.0021), 9)
    expect(taper(0.0051, 0.003).verdict).toBe('above')
    expect(taper(0.0049, 0.003).verdict).toBe('inside')
  })
})

describe('ring gaps as manuals print them', () => {
  it.each([
    [0.0231, 0.0599, 'inside'],
    [0.0229, 0.0599, 'too-small'],
    [0.0231, 0.0601, 'too-large'],
  ])(
    'of TM 55-1905-219-14-4, 0.023 in at least and 0.060 in at most: %s and %s in are %s',
    (one, other, verdict) => {
      const spec = {
        ringGapMinMm: fromInches(0.023),
        ringGapMaxMm: fromInches(0.038),
        ringGapLimitMm: fromInches(0.06),
      }
      expect(gaps([other, one], spec)).toMatchObject({ standing: { verdict }, maxIs: 'service' })
    },
  )

  it('of TM 10-3930-653-14&P, 0.25 to 0.40 mm new, are allowed up to 1.0 mm', () => {
    const spec = { ringGapMinMm: 0.25, ringGapMaxMm: 0.4, ringGapLimitMm: 1 }
    expect(gaps([0.99 / 25.4, 0.3 / 25.4], spec).standing?.verdict).toBe('inside')
    expect(gaps([1.01 / 25.4, 0.3 / 25.4], spec).standing?.verdict).toBe('too-large')
    const { ringGapLimitMm: _, ...asNew } = spec
    expect(gaps([0.41 / 25.4, 0.3 / 25.4], asNew).standing?.verdict).toBe('too-large')
  })

  it('of TM 5-3805-261-34 open by 0.003 in for each 0.001 in of bore, as far as three places tell π', () => {
    const { taper } = gaps([0.033, 0.03], {})
    expect(taper?.taperMm).toBeCloseTo(fromInches(0.001), 2)
    expect((taper?.taperMm ?? 0) / fromInches(0.001)).toBeCloseTo(3 / Math.PI, 9)
  })

  it('tell with a feeler good to 20 to 30 µm no taper under 9 to 14 µm (common practice, no published source)', () => {
    const { taper } = gaps([0.0305, 0.03], {}, 12)
    expect((taper?.expandedMm ?? 0) * 1000).toBeGreaterThan(9)
    expect((taper?.expandedMm ?? 0) * 1000).toBeLessThan(14)
    expect(taper?.standsOut).toBe(false)
  })
})

describe('clearance away from 20 °C, by printed expansions', () => {
  const grown = (wallPerK: number, pistonPerK: number) => {
    const piston: Piston = certainPiston(86, { expansionPerK: pistonPerK })
    const bore = { wall: { kind: 'grey-iron', expansionPerK: wallPerK, expansionDoubtPerK: 0 } } as const
    const sizes = { top: [86.04, 86.04], bottom: [86.04, 86.04] } as const
    const at = (clearanceAtC: number) =>
      firstFit(withPistons(sizes, [piston], { spec: { clearanceAtC }, bore })).least?.valueMm ?? Number.NaN
    return (at(100) - at(20)) * 1000
  }

  // 80 K × (86.04 mm × wall − 86 mm × piston), by hand from the printed coefficients.
  it.each([
    ['aluminium-silicon 390 of 18.0 in grey iron of 11.4', 11.4e-6, 18e-6, -45.372],
    ['aluminium-silicon 380 of 22.0 in grey iron of 10.8', 10.8e-6, 22e-6, -77.021],
    ['aluminium-silicon 390 of 18.0 in aluminium 356.0 of 21.5', 21.5e-6, 18e-6, 24.149],
  ])('80 K of a piston of %s change it', (_, wall, piston, um) => {
    expect(grown(wall, piston)).toBeCloseTo(um, 2)
  })
})
