import type { Gauge, GaugeKind, StandardKind } from '../measured'

/** Typical figures of a kind of gauge, µm, standard uncertainties; `undefined` where the kind has none. */
export interface Preset {
  readonly stepUm: number
  readonly repeatabilityUm: number
  readonly repeatabilityDegreesOfFreedom: number
  /** The set-up's part of the setting, the standard's own doubt taken out in squares. */
  readonly settingUm?: number
  readonly scaleUm: number
  /** Half-width of the drift where no closing zero was read. */
  readonly driftHalfWidthUm?: number
}

const presets: Readonly<Record<GaugeKind, Preset>> = {
  'dial-0.001-ring': set(1, 1.0, 20, 0.75, 0.6, 1),
  'dial-0.001-micrometer': set(1, 1.5, 20, 2.6, 0.6, 1.5),
  'dial-0.01': set(2, 3, 20, 2.6, 2.5, 2),
  'dial-0.01-simple': set(5, 6, 10, 4, 4, 3),
  telescoping: {
    stepUm: 1,
    repeatabilityUm: 12,
    repeatabilityDegreesOfFreedom: 10,
    scaleUm: 2.6,
  },
  'internal-micrometer-rods': {
    stepUm: 10,
    repeatabilityUm: 7,
    repeatabilityDegreesOfFreedom: 10,
    settingUm: 3,
    scaleUm: 3,
  },
  'three-contact-micrometer': set(1, 1.5, 20, 1.0, 1.5, 1),
  'air-plug': set(0.5, 0.3, 20, 0.4, 0.3, 0.5),
  'radial-probe': {
    stepUm: 0.5,
    repeatabilityUm: 0.8,
    repeatabilityDegreesOfFreedom: 50,
    scaleUm: 0.5,
    driftHalfWidthUm: 1,
  },
}

function set(
  stepUm: number,
  repeatabilityUm: number,
  repeatabilityDegreesOfFreedom: number,
  settingUm: number,
  scaleUm: number,
  driftHalfWidthUm: number,
): Preset {
  return { stepUm, repeatabilityUm, repeatabilityDegreesOfFreedom, settingUm, scaleUm, driftHalfWidthUm }
}

/**
 * Typical figures of a kind of gauge in µm, for bores of 50 to 130 mm. From memory of the trade, no
 * published source; every one can be overridden on the gauge itself.
 */
export function presetOf(kind: GaugeKind): Preset {
  return presets[kind]
}

/**
 * Whether sizes written down with this kind were read off its own scale or off a micrometer, so that no zero
 * of a dial stands between standard and reading: inside micrometers and telescoping gauges.
 */
export function isReadDirectly(kind: GaugeKind): boolean {
  return kind === 'telescoping' || kind === 'internal-micrometer-rods' || kind === 'three-contact-micrometer'
}

/** Half-width of a contact's footprint on the wall where the gauge does not say, mm (typical). */
export const typicalContactHalfWidthMm = 2.5

/** Standard uncertainty of the depth at which a gauge is held where the gauge does not say, mm (typical). */
export const typicalDepthDoubtMm = 0.5

/**
 * Expansion of a bore gauge's own body, 1/K: that of gauge steel (GUM, JCGM 100:2008, H.1), so that a gauge of
 * 54 mm grows by 0.6 µm for each kelvin it warms.
 */
export const gaugeExpansionPerK = 11.5e-6

/**
 * What one whole turn of the needle is worth on most dials of this kind, µm; undefined for a gauge without a
 * dial. Common practice, no published source.
 */
export function typicalTurnUm({ kind, markedIn }: Pick<Gauge, 'kind' | 'markedIn'>): number | undefined {
  if (!kind.startsWith('dial')) return undefined
  const [fine, coarse] = markedIn === 'inch' ? [254, 2540] : [200, 1000]
  return kind.startsWith('dial-0.001') ? fine : coarse
}

/** Steps that dials and displays marked in inches are read to, µm: 0.00002 to 0.0005 in. */
const inchStepsUm = [0.508, 1.27, 2.54, 5.08, 12.7] as const

/**
 * The step that is read, µm: the gauge's own, else the typical one of its kind; marked in inches, the next larger
 * that such a gauge is read to.
 */
export function stepReadUm({ kind, stepUm, markedIn }: Pick<Gauge, 'kind' | 'stepUm' | 'markedIn'>): number {
  if (stepUm !== undefined) return stepUm
  const typical = presetOf(kind).stepUm
  return markedIn === 'inch' ? (inchStepsUm.find((step) => step >= typical) ?? typical) : typical
}

/** What a kind of gauge is set by or measured over with, where the kind itself says so. */
export function usualStandardOf(kind: GaugeKind): StandardKind | undefined {
  switch (kind) {
    case 'dial-0.001-ring':
    case 'three-contact-micrometer':
    case 'air-plug':
      return 'ring'
    case 'dial-0.001-micrometer':
    case 'telescoping':
    case 'internal-micrometer-rods':
      return 'micrometer'
    default:
      return undefined
  }
}
