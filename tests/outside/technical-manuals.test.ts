import { describe, expect, it } from 'vitest'
import type { Spec } from '../../src/core/measured'
import { measuringPlan } from '../../src/core/plan/measuring-plan'
import { dialMarks, sizeMarks } from '../../src/pages/bench/marks'
import { findingOf, first, measuredBore, onlyScaleDoubt } from '../unit/core/measured-bore'

/**
 * Limits of public technical manuals of armed forces, in the inches that they print; the readings are invented.
 * What is typed in inches goes through the marks of the instrument, as on the page.
 */
const { kept: fromInches } = sizeMarks('inch')

/** A bore that is so many inches out of round at its top and tapers by so many, judged with hardly any doubt. */
function judged(boreInches: number, outOfRound: number, taper: number, spec: Spec) {
  const sizes = [
    [boreInches + taper + outOfRound, boreInches + taper],
    [boreInches + outOfRound, boreInches],
  ]
  const finding = findingOf(
    measuredBore(
      { levelsMm: [20, 110], axesDegrees: [0, 90], rows: sizes.map((row) => row.map(fromInches)) },
      { ...onlyScaleDoubt(0.1), spec },
    ),
  )
  const verdict = (found: ReturnType<typeof findingOf>['ovality' | 'taper'][number]) =>
    found.known ? found.verdict : found.why
  return { finding, ovality: verdict(first(finding.ovality)), taper: verdict(first(finding.taper)) }
}

describe('limits for out-of-round and taper as manuals print them', () => {
  it('of TM 10-3930-243-34, 0.003 in and 0.002 in, are kept by a liner just within and missed by one just beyond', () => {
    const spec = { ovalityLimitMm: fromInches(0.003), taperLimitMm: fromInches(0.002) }
    expect(judged(4.25, 0.0029, 0.0019, spec)).toMatchObject({ ovality: 'inside', taper: 'inside' })
    expect(judged(4.25, 0.0031, 0.0019, spec)).toMatchObject({ ovality: 'above', taper: 'inside' })
    expect(judged(4.25, 0.0029, 0.0021, spec)).toMatchObject({ ovality: 'inside', taper: 'above' })
  })

  it('of TM 9-2815-260-24, table 5-11, are 0.002 in, printed beside as 0.05 mm', () => {
    const spec = { ovalityLimitMm: fromInches(0.002), taperLimitMm: fromInches(0.002) }
    expect(spec.ovalityLimitMm).toBeCloseTo(0.0508, 9)
    expect(spec.ovalityLimitMm).toBeCloseTo(0.05, 2)
    expect(judged(5, 0.0019, 0.0019, spec)).toMatchObject({ ovality: 'inside', taper: 'inside' })
    expect(judged(5, 0.0021, 0.0021, spec)).toMatchObject({ ovality: 'above', taper: 'above' })
  })

  it('of TM 10-3930-647-14&P are 0.0005 in of taper for each inch of travel: 0.002 in over 4 in', () => {
    const spec = { taperLimitPerMmOfTravel: 0.0005, travelMm: fromInches(4) }
    const { finding, taper } = judged(3.75, 0, 0.0019, spec)
    expect(first(finding.taper)).toMatchObject({ limitFrom: { of: 'travel', perMm: 0.0005 } })
    expect(first(finding.taper).limitMm).toBeCloseTo(fromInches(0.002), 12)
    expect(taper).toBe('inside')
    expect(judged(3.75, 0, 0.0021, spec).taper).toBe('above')
  })
})

describe('a liner of TM 9-2815-220-24, WP 0135, typed in inches', () => {
  it.each([
    [5.751, 146.0754],
    [5.753, 146.1262],
    [5.76, 146.304],
  ])('has the millimetres that the manual prints beside %s in: %s', (inches, mm) => {
    expect(fromInches(inches)).toBeCloseTo(mm, 9)
  })

  it.each([
    [5.7599, 'inside'],
    [5.76, 'too-close'],
    [5.7601, 'above'],
  ])('is at %s in judged by the worn 5.7600 in: %s', (inches, verdict) => {
    const spec = {
      newMinMm: fromInches(5.751),
      newMaxMm: fromInches(5.753),
      wearLimitMm: fromInches(5.76),
      ovalityLimitMm: fromInches(0.003),
    }
    expect(judged(inches, 0, 0, spec).finding.verdict).toMatchObject({ known: true, verdict })
    expect(judged(5.755, 0.0031, 0, spec).ovality).toBe('above')
  })
})

describe('readings as manuals ask for them', () => {
  it('of TM 10-3930-243-34 are to 0.0001 in, one mark of a dial in ten-thousandths, 2.54 µm', () => {
    expect(dialMarks('inch').kept(1)).toBeCloseTo(1000 * fromInches(0.0001), 9)
    expect(dialMarks('inch').kept(1)).toBe(2.54)
  })

  it('of TM 9-6115-670-14&P at 10, 45 and 90 mm in two directions: largest less smallest of six, at most 0.15 mm, 0.0059 in', () => {
    const finding = findingOf(
      measuredBore(
        {
          levelsMm: [10, 45, 90],
          axesDegrees: [0, 90],
          rows: [
            [67.16, 67.131],
            [67.084, 67.062],
            [67.024, 67.01],
          ],
        },
        { ...onlyScaleDoubt(0.1), spec: { newMinMm: 67, newMaxMm: 67.019 } },
      ),
    )
    const sizeAt = (place = finding.largest) =>
      finding.stations.find((s) => s.depthMm === place?.depthMm && s.axisDegrees === place.axisDegrees)
        ?.diameterMm ?? Number.NaN
    expect(sizeAt(finding.largest) - sizeAt(finding.smallest)).toBeCloseTo(0.15, 9)
    expect(sizeMarks('mm').echo(0.15)).toMatch(/^0\.0059/)
  })

  it('of Navy training manual 14076, chapter 3, at three levels: under the top of ring travel, above its bottom and midway', () => {
    const plan = measuringPlan({
      bore: { lengthMm: 160, ringTravelMm: { from: 12, to: 148 }, ports: [], belts: [] },
      gauge: { kind: 'dial-0.01' },
      diameterMm: 100,
      question: 'out-of-round',
    })
    if (!plan.known) throw new Error(plan.why)
    const running = plan.levels.filter(({ depthMm }) => depthMm > 12 && depthMm < 148)
    expect(running.map(({ reasons }) => first(reasons).code)).toEqual([
      'top-of-travel',
      'middle',
      'bottom-of-travel',
    ])
    const [top = 0, middle = 0, bottom = 0] = running.map(({ depthMm }) => depthMm)
    expect(top - 12).toBeLessThan(5)
    expect(148 - bottom).toBeLessThan(5)
    expect(middle).toBeCloseTo((top + bottom) / 2, 9)
  })
})
