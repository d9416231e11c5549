import { presetOf } from '../../src/core/gauge/presets'
import type { GaugeKind, Measured, Spec, WallKind } from '../../src/core/measured'
import { boreOf, measuredBore } from '../unit/core/measured-bore'
import type { SeededRandom } from './seeded-random'

/** What is measured and how, for surveys drawn from the doubt that the budget states. */
export interface SimulatedCase {
  readonly gauge: GaugeKind
  readonly wall: WallKind
  readonly repeats: number
  readonly closingZero: boolean
  /** Absent: deviations from a setting. Reverse: zeroed in the bore, then measured over its contacts. */
  readonly entry?: 'deviation' | 'reverse'
  /** Temperatures recorded with one thermometer, °C. */
  readonly boreC: number
  readonly referenceC: number
  readonly levelsMm: readonly number[]
  readonly axesDegrees: readonly number[]
  /** True diameter at 20 °C at a depth on an axis, mm. */
  readonly trueMm: (depthMm: number, axisDegrees: number) => number
  readonly spec: Spec
}

const settingMm = 54
const standardUm = { ring: 0.5, micrometer: 1.5 } as const
const wallPerK: Record<WallKind, number> = {
  'plated-aluminium': 23e-6,
  'aluminium-silicon': 19e-6,
  'grey-iron': 10.5e-6,
  steel: 11.5e-6,
}

/** Errors that all visits to an engine share: of its gauge, of the standard, of the wall and of the thermometer. */
export interface SharedErrors {
  readonly sigmaUm: number
  readonly alphaWall: number
  readonly alphaStandard: number
  readonly referenceOffK: number
  readonly standardOffMm: number
}

export function sharedErrors(c: SimulatedCase, random: SeededRandom): SharedErrors {
  const preset = presetOf(c.gauge)
  const freedom = preset.repeatabilityDegreesOfFreedom
  return {
    sigmaUm: preset.repeatabilityUm * Math.sqrt(freedom / random.chiSquared(freedom)),
    alphaWall: wallPerK[c.wall] * (1 + random.rectangular(0.1)),
    alphaStandard: 11.5e-6 + random.rectangular(1e-6),
    referenceOffK: random.normal(1),
    standardOffMm: random.normal(standardUm[standardOf(c)] / 1000),
  }
}

function standardOf({ gauge }: SimulatedCase): 'ring' | 'micrometer' {
  return gauge === 'dial-0.001-ring' || gauge === 'air-plug' ? 'ring' : 'micrometer'
}

/**
 * A survey, and a second of a like bore with the same setting, whose errors are drawn from the typical figures
 * of the gauge: normal or rectangular as the budget has them, the gauge's own standard deviation from what its
 * degrees of freedom leave open, readings rounded to the step.
 */
export function simulatedSurvey(
  c: SimulatedCase,
  random: SeededRandom,
  shared: SharedErrors = sharedErrors(c, random),
): Measured {
  const { sigmaUm, alphaWall, alphaStandard } = shared
  const preset = presetOf(c.gauge)
  const entry = c.entry ?? 'deviation'
  const standard = standardOf(c)
  // True diameters fall anywhere between two marks, those of one bore apart by no whole number of steps.
  const readTo = (um: number, mark: number) => (Math.round(um / preset.stepUm - mark) + mark) * preset.stepUm
  const referenceC = c.referenceC + shared.referenceOffK
  const trueSettingMm = settingMm + shared.standardOffMm + random.normal((preset.settingUm ?? 0) / 1000)
  const standardMm = trueSettingMm * (1 + alphaStandard * (referenceC - 20))
  const driftUm = random.rectangular(preset.driftHalfWidthUm ?? 0)
  // Zeros are read with the gauge's own scatter; the budget lets rounding into repeatability only.
  const zeroOpenUm = random.normal(sigmaUm)
  const zeroCloseUm = driftUm + random.normal(sigmaUm)
  const dialOf = (differenceK: number) => (depthMm: number, axisDegrees: number) => {
    const atDepth = depthMm + random.normal(0.5)
    const boreC = referenceC + c.boreC - c.referenceC + differenceK
    const lengthMm = c.trueMm(atDepth, axisDegrees) * (1 + alphaWall * (boreC - 20))
    const scaleUm = random.normal(preset.scaleUm)
    const mark = random.even()
    return Array.from({ length: c.repeats }, () => {
      const drifted = c.closingZero ? driftUm * random.even() : driftUm
      return readTo(1000 * (lengthMm - standardMm) + scaleUm + drifted + random.normal(sigmaUm), mark)
    })
  }
  const tableOf = (dial: (depthMm: number, axisDegrees: number) => number[]) => ({
    levelsMm: c.levelsMm,
    axesDegrees: c.axesDegrees,
    rows: c.levelsMm.map((depth) => c.axesDegrees.map((axis) => dial(depth, axis))),
  })
  const own = measuredBore(tableOf(dialOf(random.normal(0.3))), {
    spec: c.spec,
    gauge: { kind: c.gauge },
    standard: { kind: standard },
    thermometers: [{ id: 'thermometer' }],
    bore: { id: 'used', wall: { kind: c.wall } },
    setUp: {
      entry,
      settingSizeMm: settingMm,
      // What the dial shows at the known size is read once, and the zeros in the bore tell of drift alone.
      ...(entry === 'reverse'
        ? {
            overContactsMm: settingMm,
            dialOverContactsUm: zeroOpenUm,
            zeroOpenUm: random.normal(sigmaUm),
            zeroCloseUm: driftUm + random.normal(sigmaUm),
          }
        : { zeroOpenUm, zeroCloseUm }),
      boreTemperatureC: c.boreC,
      referenceTemperatureC: c.referenceC,
      boreThermometerId: 'thermometer',
      referenceThermometerId: 'thermometer',
    },
  })
  const setUps = own.setUps.map(({ zeroCloseUm: closing, ...setUp }) =>
    c.closingZero && closing !== undefined ? { ...setUp, zeroCloseUm: closing } : setUp,
  )
  const other = boreOf(
    tableOf(dialOf(random.normal(0.3))),
    { id: 'set-up', entry },
    {
      id: 'new',
      role: 'for-comparison',
      wall: { kind: c.wall },
    },
  )
  return { ...own, setUps, bores: [...own.bores, other] }
}
