import { entryOf } from '../diameter/entry'
import { readingReference } from '../diameter/reading-reference'
import type { Contribution, ContributionInput } from '../findings'
import { gaugeExpansionPerK, presetOf, stepReadUm } from '../gauge/presets'
import type { Bore, Gauge, SetUp, Standard } from '../measured'
import type { Expansion } from '../temperature/expansion'
import type { Temperatures } from '../temperature/temperatures'

/** Everything a set-up brings to each diameter measured with it. */
export interface SetUpConditions {
  readonly setUp: SetUp
  readonly gauge: Gauge
  readonly standard: Standard
  readonly bore: Bore
  readonly wall: Expansion
  readonly standardExpansion: Expansion
  readonly temperatures: Temperatures
}

const infinite = Number.POSITIVE_INFINITY

/** Doubt of a standard where it does not say, µm (typical, from memory of the trade). */
export const typicalStandardDoubtUm = { ring: 0.5, micrometer: 1.5 } as const
/** What a micrometer not checked on its own standard may read too much or too little, half-width, µm. */
export const uncheckedMicrometerHalfWidthUm = 2

/**
 * The errors that diameters of a set-up share, mm, each with identity and scope, as a function of the diameter
 * in mm: those of temperature grow with it, those of the setting do not.
 * Sensitivities are the partial derivatives of the model of `diameterAt20` (those of lengths to within
 * α·ΔT, a few parts in ten thousand: 1 is taken); those of the temperatures are taken with respect to T_r and T_b − T_r, as in GUM (JCGM 100:2008) H.1. Two independent thermometers
 * are two sources with the sensitivities D·α_r and −D·α_b, which is the same covariance written out. Where
 * only T_b was recorded, T_b and T_b − T_r are the inputs, and the difference then moves T_r: −D·α_r.
 */
export function setUpContributions(c: SetUpConditions): (diameterMm: number) => Contribution[] {
  const perMm = temperatureContributionsPerMm(c)
  const ofSetting = settingContributions(c)
  return (diameterMm) => [
    ...perMm.map((part) => ({ ...part, signedMm: part.signedMm * diameterMm })),
    ...ofSetting,
  ]
}

/** What the temperatures bring to each mm of diameter. */
function temperatureContributionsPerMm(c: SetUpConditions): Contribution[] {
  const { temperatures: t, wall, standardExpansion: reference, setUp, standard, bore } = c
  const two = t.knowledge === 'two-thermometers'
  const named = thermometerOf(t)
  return [
    {
      kind: 'wall-expansion',
      id: `wall-expansion:${bore.wall?.kind ?? 'not-recorded'}:${wall.perK}`,
      scope: 'job',
      signedMm: -(t.boreC - 20) * wall.doubtPerK,
      input: { u: wall.doubtPerK, unit: '1/K' },
      degreesOfFreedom: infinite,
      assumed: wall.assumed,
    },
    {
      kind: 'standard-expansion',
      id: `standard-expansion:${standard.id}`,
      scope: 'standard',
      signedMm: (t.referenceC - 20 + changeInZeroK(setUp)) * reference.doubtPerK,
      input: { u: reference.doubtPerK, unit: '1/K' },
      degreesOfFreedom: infinite,
      assumed: false,
    },
    {
      kind: 'reference-temperature',
      id: named === undefined ? `temperature:${setUp.id}` : `thermometer:${named}`,
      scope: named === undefined ? 'set-up' : 'thermometer',
      signedMm: (two ? reference.perK : reference.perK - wall.perK) * t.referenceDoubtK,
      input: { u: t.referenceDoubtK, unit: 'K' },
      degreesOfFreedom: infinite,
      assumed: t.knowledge === 'none',
    },
    two
      ? {
          kind: 'bore-thermometer',
          id: `thermometer:${t.boreThermometerId}`,
          scope: 'thermometer',
          signedMm: -wall.perK * t.differenceDoubtK,
          input: { u: t.differenceDoubtK, unit: 'K' },
          degreesOfFreedom: infinite,
          assumed: false,
        }
      : {
          kind: 'temperature-difference',
          id: `temperature-difference:${setUp.id}:${bore.id}`,
          scope: 'bore',
          signedMm: -(t.knowledge === 'bore-only' ? reference : wall).perK * t.differenceDoubtK,
          input: { u: t.differenceDoubtK, unit: 'K' },
          degreesOfFreedom: infinite,
          assumed: t.knowledge !== 'one-thermometer',
        },
  ]
}

/**
 * By how much more than T_r − 20 the zero of dial deviations depends on the standard's expansion, K: the mean
 * of both zeros holds half of what was taken out of the closing one.
 */
function changeInZeroK(setUp: SetUp): number {
  const { entry, zeroCloseUm, referenceTemperatureC: before, referenceTemperatureCloseC: after } = setUp
  if (entry !== 'deviation' || zeroCloseUm === undefined) return 0
  return before === undefined || after === undefined ? 0 : (after - before) / 2
}

/** The thermometer that the reference temperature (or the one temperature recorded) was read with. */
function thermometerOf(t: Temperatures): string | undefined {
  switch (t.knowledge) {
    case 'none':
      return undefined
    case 'bore-only':
      return t.boreThermometerId
    case 'reference-only':
      return t.referenceThermometerId
    default:
      return t.referenceThermometerId ?? t.boreThermometerId
  }
}

function settingContributions({
  setUp,
  gauge,
  standard,
  standardExpansion,
}: SetUpConditions): Contribution[] {
  const preset = presetOf(gauge.kind)
  const entry = entryOf(setUp, gauge)
  const parts: Contribution[] = [
    {
      kind: 'standard',
      id: `standard:${standard.id}`,
      scope: 'standard',
      signedMm: (standard.doubtUm ?? typicalStandardDoubtUm[standard.kind]) / 1000,
      degreesOfFreedom: infinite,
      assumed: false,
    },
  ]
  if (standard.kind === 'micrometer' && standard.errorUm === undefined) {
    parts.push({
      kind: 'standard-error',
      id: `standard-error:${standard.id}`,
      scope: 'standard',
      signedMm: -uncheckedMicrometerHalfWidthUm / Math.sqrt(3) / 1000,
      degreesOfFreedom: infinite,
      assumed: true,
    })
  }
  const ofSetUp = (
    kind: 'setting' | 'gauge-warmth' | 'drift-preset',
    um: number | undefined,
    input?: ContributionInput,
  ) => {
    if (um === undefined) return
    const signedMm = um / 1000
    const id = `${kind}:${setUp.id}`
    const assumed = kind === 'drift-preset'
    const inputOf = input && { input }
    parts.push({ kind, id, scope: 'set-up', signedMm, ...inputOf, degreesOfFreedom: infinite, assumed })
  }
  ofSetUp('setting', settingUm(setUp, gauge))
  if (entry !== 'direct') {
    parts.push(zeroReading(setUp, gauge))
    const lengthMm = readingReference(setUp, standardExpansion.perK)?.sizeMm ?? setUp.settingSizeMm
    const warmedK = setUp.gaugeWarmedK
    if (warmedK !== undefined) {
      const um = 1000 * lengthMm * gaugeExpansionPerK * warmedK
      ofSetUp('gauge-warmth', um, { u: warmedK, unit: 'K' })
    }
  }
  const driftUm = gauge.driftHalfWidthUm ?? preset.driftHalfWidthUm
  if (setUp.zeroCloseUm === undefined && driftUm !== undefined) {
    ofSetUp('drift-preset', driftUm / Math.sqrt(3))
  }
  return parts
}

/** A gauge measured over its contacts by a micrometer is known no better than one that was set by it. */
function settingUm({ entry }: SetUp, gauge: Gauge): number | undefined {
  const byMicrometer = entry === 'reverse' && gauge.kind === 'dial-0.001-ring'
  return gauge.settingUm ?? presetOf(byMicrometer ? 'dial-0.001-micrometer' : gauge.kind).settingUm
}

/**
 * Reading of the zero: max(s/√n, g/√12) with the gauge's own s. The zero of a dial deviation is the mean
 * of opening and closing, n = 2; a size written down was read from the opening zero alone, n = 1; in the
 * reverse method the dial between the micrometer's faces takes the zero's place, read once. A size read
 * directly has no such part.
 */
function zeroReading(setUp: SetUp, gauge: Gauge): Contribution {
  const preset = presetOf(gauge.kind)
  const s = gauge.repeatabilityUm ?? preset.repeatabilityUm
  const step = stepReadUm(gauge) / Math.sqrt(12)
  const zeros = setUp.entry === 'deviation' && setUp.zeroCloseUm !== undefined ? 2 : 1
  const fromRepeats = s / Math.sqrt(zeros)
  const byStep = step > fromRepeats
  return {
    kind: 'zero-reading',
    id: `zero:${setUp.id}`,
    scope: 'set-up',
    signedMm: -Math.max(step, fromRepeats) / 1000,
    degreesOfFreedom: byStep
      ? infinite
      : (gauge.repeatabilityDegreesOfFreedom ?? preset.repeatabilityDegreesOfFreedom),
    ...(byStep ? {} : { estimate: `repeatability:${gauge.id}` }),
    assumed: setUp.entry === 'reverse' && setUp.dialOverContactsUm === undefined,
  }
}
