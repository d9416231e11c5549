import { describe, expect, it } from 'vitest'
import { diameterAt20 } from '../../src/core/diameter/diameter-at-20'
import type { Contribution } from '../../src/core/findings'
import type { SetUp } from '../../src/core/measured'
import { studentQuantile } from '../../src/core/statistics/student'
import { temperaturesOf } from '../../src/core/temperature/temperatures'
import { combine } from '../../src/core/uncertainty/combine'
import { type SetUpConditions, setUpContributions } from '../../src/core/uncertainty/set-up-contributions'

/**
 * GUM (JCGM 100:2008) annex H.1: an end gauge of 50 mm compared with a standard, in nm. Inputs of H.1.3;
 * the published result is u_c = 32 nm, ν_eff = 16.7 taken as 16, t_99(16) = 2.92, U_99 = 93 nm.
 */
function part(id: string, nm: number, degreesOfFreedom: number): Contribution {
  return { kind: 'standard', id, scope: 'standard', signedMm: nm, degreesOfFreedom, assumed: false }
}

const standardNm = 50_000_623
const alpha = 11.5e-6
const theta = -0.1
const infinite = Number.POSITIVE_INFINITY

function endGauge(freedomTimes = 1): Contribution[] {
  return [
    part('standard, 75 nm at k = 3', 25, 18 * freedomTimes),
    part('five readings, pooled s of 13 nm from 25', 13 / Math.sqrt(5), 24 * freedomTimes),
    part('comparator, random', 10 / 2.57, 5 * freedomTimes),
    part('comparator, systematic', 20 / 3, 8 * freedomTimes),
    part('difference of expansion', (-standardNm * theta * 1e-6) / Math.sqrt(3), 50 * freedomTimes),
    part('difference of temperature', (-standardNm * alpha * 0.05) / Math.sqrt(3), 2 * freedomTimes),
    part('expansion of the standard', 0 * 1.2e-6, infinite),
    part('temperature', 0 * 0.41, infinite),
  ]
}

describe('the end gauge of GUM (JCGM 100:2008) H.1', () => {
  it('has the contributions 25, 9.7, 2.9 and 16.6 nm of table H.1', () => {
    const nm = endGauge().map((p) => Math.abs(p.signedMm))
    expect(nm[0]).toBe(25)
    expect(Math.hypot(nm[1] ?? 0, nm[2] ?? 0, nm[3] ?? 0)).toBeCloseTo(9.7, 1)
    expect(nm[4]).toBeCloseTo(2.9, 1)
    expect(nm[5]).toBeCloseTo(16.6, 1)
  })

  it('combines to 31.658 nm, printed as 32 nm', () => {
    const { standardUncertainty } = combine([{ factor: 1, contributions: endGauge() }])
    expect(standardUncertainty).toBeCloseTo(31.658, 2)
    expect(Math.round(standardUncertainty)).toBe(32)
  })

  it('has 16.7 effective degrees of freedom, truncated to 16', () => {
    expect(combine([{ factor: 1, contributions: endGauge() }]).degreesOfFreedom).toBe(16)
    // Effective degrees of freedom scale with those of the inputs: 16.741 times a thousand, truncated.
    const thousandfold = combine([{ factor: 1, contributions: endGauge(1000) }]).degreesOfFreedom / 1000
    expect(thousandfold).toBeCloseTo(16.741, 2)
    expect(thousandfold).toBeCloseTo(16.7, 1)
  })

  it('has U_99 = 92.467 nm; the printed 93 nm multiplies the rounded 32 nm by the rounded 2.92', () => {
    const { standardUncertainty, degreesOfFreedom } = combine([{ factor: 1, contributions: endGauge() }])
    const t99 = studentQuantile(0.995, degreesOfFreedom)
    expect(t99).toBeCloseTo(2.92, 2)
    expect(t99 * standardUncertainty).toBeCloseTo(92.467, 2)
    expect(Math.round(2.92 * Math.round(standardUncertainty))).toBe(93)
  })
})

const setUp: SetUp = {
  id: 'comparison',
  gaugeId: 'comparator',
  standardId: 'standard',
  entry: 'size',
  settingSizeMm: standardNm / 1e6,
  zeroOpenUm: 0,
  zeroCloseUm: 0,
  boreTemperatureC: 20 + theta,
  referenceTemperatureC: 20 + theta,
}

/** The inputs of the model in the order they are moved in, with H.1's values. */
const inputs = {
  settingMm: standardNm / 1e6,
  standardErrorMm: 0,
  standardPerK: alpha,
  wallPerK: alpha,
  referenceC: 20 + theta,
  differenceK: 0,
  deviationMm: 215e-6,
}

function length(at: typeof inputs): number {
  return diameterAt20({ ...at, boreC: at.referenceC + at.differenceK })
}

function slope(input: keyof typeof inputs, step: number): number {
  const up = length({ ...inputs, [input]: inputs[input] + step })
  const down = length({ ...inputs, [input]: inputs[input] - step })
  return (up - down) / (2 * step)
}

describe('the same length through the model of a bore measured against a standard', () => {
  it('is 50.000 838 mm, as printed in H.1.5', () => {
    expect(length(inputs)).toBeCloseTo(50.000838, 6)
  })

  it('has the sensitivities of H.1.3.4: 1 to standard and difference, none to temperature, −l·α to δθ', () => {
    expect(slope('settingMm', 1e-3)).toBeCloseTo(1, 5)
    expect(slope('deviationMm', 1e-3)).toBeCloseTo(1, 5)
    expect(slope('referenceC', 1) * 1e6).toBeCloseTo(0, 1)
    expect(slope('differenceK', 1) * 1e6).toBeCloseTo(-575.007, 2)
  })

  it('has a sensitivity of −l·θ to the difference of expansions and none to what both share', () => {
    expect(slope('wallPerK', 1e-6) * 1e6).toBeCloseTo(-standardNm * theta, -3)
    expect((slope('wallPerK', 1e-6) + slope('standardPerK', 1e-6)) * 1e6).toBeCloseTo(0, -2)
  })

  it('states in its budget the sensitivities that differentiation of the model gives', () => {
    const conditions: SetUpConditions = {
      setUp,
      gauge: { id: 'comparator', kind: 'dial-0.001-ring' },
      standard: { id: 'standard', kind: 'ring' },
      bore: { id: 'b', name: 'b', role: 'of-this-engine', ports: [], belts: [], surveys: [] },
      wall: { perK: alpha, doubtPerK: 1e-6, assumed: false },
      standardExpansion: { perK: alpha, doubtPerK: 1e-6, assumed: false },
      temperatures: temperaturesOf(setUp, []),
    }
    const signed = new Map(setUpContributions(conditions)(length(inputs)).map((p) => [p.kind, p.signedMm]))
    expect(signed.get('wall-expansion')).toBeCloseTo(slope('wallPerK', 1e-6) * 1e-6, 10)
    expect(signed.get('standard-expansion')).toBeCloseTo(slope('standardPerK', 1e-6) * 1e-6, 10)
    expect(signed.get('reference-temperature')).toBeCloseTo(slope('referenceC', 1), 8)
    expect(signed.get('temperature-difference')).toBeCloseTo(slope('differenceK', 1) * 0.3, 8)
  })
})
