import { describe, expect, it } from 'vitest'
import type { Measured } from '../../src/core/measured'
import { type SimulatedStation, simulate } from '../../src/core/simulation/simulate'
import { first, measuredBore } from '../unit/core/measured-bore'

/**
 * JCGM 101:2008 9.2, the sum of four inputs, printed figures from memory: each with a standard uncertainty of 1,
 * four normal ones (9.2.2), four rectangular ones (9.2.3), or three rectangular ones of 1 and one of 10 (9.2.4).
 * Here the unit is what an unchecked micrometer brings, rectangular with a half-width of 2 µm.
 */
const unitMm = 0.002 / Math.sqrt(3)
const trials = 200_000
const table = { levelsMm: [20], axesDegrees: [0], rows: [[80]] }
const noStep = { stepUm: 1e-9, repeatabilityUm: 0, depthDoubtMm: 0 }

/** Four normal ones: standard, setting, scale and rocking. Nothing expands. */
function fourNormal(): Measured {
  const um = unitMm * 1000
  return measuredBore(table, {
    gauge: { kind: 'dial-0.001-ring', ...noStep, settingUm: um, scaleUm: um, rockingUm: um },
    standard: { kind: 'ring', doubtUm: um, expansionPerK: 0, expansionDoubtPerK: 0 },
    bore: { wall: { kind: 'steel', expansionPerK: 0, expansionDoubtPerK: 0 } },
  })
}

/**
 * Four rectangular ones: the micrometer not checked, ± 2 µm; both temperatures not recorded, 20 ± 5 °C and 1 K
 * apart, which with these expansions is ± 2 µm each; a zero that was not read again, ± `driftUm`.
 */
function fourRectangular(driftUm: number): Measured {
  const measured = measuredBore(table, {
    gauge: { kind: 'dial-0.001-micrometer', ...noStep, settingUm: 0, scaleUm: 0, driftHalfWidthUm: driftUm },
    standard: { doubtUm: 0, expansionPerK: 30e-6, expansionDoubtPerK: 0 },
    bore: { wall: { kind: 'steel', expansionPerK: 25e-6, expansionDoubtPerK: 0 } },
  })
  return {
    ...measured,
    standards: measured.standards.map(({ errorUm: _, ...standard }) => standard),
    setUps: measured.setUps.map(
      ({ boreTemperatureC: _, referenceTemperatureC: __, zeroCloseUm: ___, ...setUp }) => setUp,
    ),
  }
}

function station(measured: Measured): SimulatedStation {
  const steps = simulate(measured, trials, 101)
  for (;;) {
    const step = steps.next()
    if (step.done) return first(step.value.stations)
  }
}

/** Half of an interval in units of one input's standard uncertainty. */
function half({ lowMm, highMm }: { readonly lowMm: number; readonly highMm: number }): number {
  return (highMm - lowMm) / 2 / unitMm
}

describe('the additive model of JCGM 101:2008 9.2, seed 101 (printed figures from memory)', {
  timeout: 60_000,
}, () => {
  it('has with four normal inputs ± 3.92 both ways', () => {
    const { linear, simulated } = station(fourNormal())
    expect(half(linear)).toBeCloseTo(3.92, 2)
    expect(Math.abs(half(simulated) - 3.92)).toBeLessThan(0.02)
  })

  it('has with four rectangular inputs ± 3.88 by simulation, where the linear way gives ± 3.92', () => {
    const { linear, simulated } = station(fourRectangular(2))
    expect(half(linear)).toBeCloseTo(3.92, 2)
    expect(Math.abs(half(simulated) - 3.88)).toBeLessThan(0.015)
    // Closed form of JCGM 101:2008 annex E: 2·√3·(2 − (3/5)^(1/4)).
    expect(2 * Math.sqrt(3) * (2 - (3 / 5) ** 0.25)).toBeCloseTo(3.88, 2)
  })

  it('has with one rectangular input ten times the others ± 17.0 by simulation, where the linear way gives ± 19.9', () => {
    const { linear, simulated } = station(fourRectangular(20))
    expect(half(linear)).toBeCloseTo(19.9, 1)
    expect(Math.abs(half(simulated) - 17)).toBeLessThan(0.06)
  })
})
