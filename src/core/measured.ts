/**
 * What was measured: the plain input of every computation. The saved job is parsed elsewhere and is
 * assignable to these shapes. Lengths are mm, dial deviations µm, temperatures °C, angles degrees
 * clockwise seen from the deck. A field that is absent was not recorded: an assumed value and its doubt
 * then stand in the budget, marked assumed.
 */

/** Everything that was measured on one engine or machine, with the limits that apply. */
export interface Measured {
  readonly spec: Spec
  readonly gauges: readonly Gauge[]
  readonly standards: readonly Standard[]
  readonly thermometers: readonly Thermometer[]
  readonly setUps: readonly SetUp[]
  readonly bores: readonly Bore[]
}

/** The limits of the service manual, with the rule that each shape limit is judged by. */
export interface Spec {
  /** Smallest and largest size when new, where the manual gives one band. */
  readonly newMinMm?: number
  readonly newMaxMm?: number
  /** Size grades, where the manual gives several bands. */
  readonly grades?: readonly Grade[]
  /** Largest size allowed in service. Where given, it alone is judged. */
  readonly wearLimitMm?: number
  readonly ovalityLimitMm?: number
  readonly ovalityRule?: OvalityRule
  /** The axes called X and Y by the manual, for the rules that name them. */
  readonly ovalityAxesDegrees?: { readonly x: number; readonly y: number }
  readonly taperLimitMm?: number
  readonly taperRule?: TaperRule
}

export interface Grade {
  readonly name: string
  readonly minMm: number
  readonly maxMm: number
}

export const ovalityRules = [
  'largest-less-smallest-at-a-level',
  'across-less-along-at-a-level',
  'pooled',
] as const
export type OvalityRule = (typeof ovalityRules)[number]

export const taperRules = [
  'between-levels-of-an-axis',
  'top-less-bottom-of-an-axis',
  'largest-top-less-largest-bottom',
  'largest-top-less-smallest-bottom',
  'level-means',
] as const
export type TaperRule = (typeof taperRules)[number]

export const gaugeKinds = [
  'dial-0.001-ring',
  'dial-0.001-micrometer',
  'dial-0.01',
  'dial-0.01-simple',
  'telescoping',
  'internal-micrometer-rods',
  'three-contact-micrometer',
  'air-plug',
  'radial-probe',
] as const
export type GaugeKind = (typeof gaugeKinds)[number]

/** A gauge. What is absent is taken from the typical figures of its kind. */
export interface Gauge {
  readonly id: string
  readonly name?: string
  readonly kind: GaugeKind
  /** Step actually read, µm. */
  readonly stepUm?: number
  /** Standard deviation of repeats, µm, and how many degrees of freedom it rests on. */
  readonly repeatabilityUm?: number
  readonly repeatabilityDegreesOfFreedom?: number
  /** Standard uncertainty of the setting, the standard's own doubt left out, µm. */
  readonly settingUm?: number
  /** Standard uncertainty of dial or scale, µm. */
  readonly scaleUm?: number
  /** Half-width of the drift to expect where no closing zero was read, µm. */
  readonly driftHalfWidthUm?: number
  /** Half-width of a contact's footprint on the wall, mm. */
  readonly contactHalfWidthMm?: number
  /** Doubt of the depth at which the gauge is held, standard uncertainty, mm. */
  readonly depthDoubtMm?: number
}

export const standardKinds = ['ring', 'micrometer'] as const
export type StandardKind = (typeof standardKinds)[number]

/** What the gauge was set with. */
export interface Standard {
  readonly id: string
  readonly name?: string
  readonly kind: StandardKind
  /** What it reads on its own standard less that standard's certified size, µm (a micrometer). */
  readonly errorUm?: number
  /** Its own standard uncertainty, µm. */
  readonly doubtUm?: number
  readonly expansionPerK?: number
  readonly expansionDoubtPerK?: number
}

export interface Thermometer {
  readonly id: string
  readonly name?: string
  /** Standard uncertainty, K. */
  readonly doubtK?: number
}

export const entries = ['size', 'deviation'] as const
/** How readings are written down: sizes in mm from a set gauge, or dial deviations in µm. */
export type Entry = (typeof entries)[number]

/** One setting of a gauge and the conditions it was used under. */
export interface SetUp {
  readonly id: string
  readonly gaugeId: string
  readonly standardId: string
  readonly entry: Entry
  /** Setting size as shown by the standard, mm. */
  readonly settingSizeMm: number
  /** Which way the needle goes for a larger bore, from the direction test. Needed for deviations. */
  readonly largerIs?: 'clockwise' | 'anticlockwise'
  /** Dial on the standard before and after, µm, counted positive clockwise. */
  readonly zeroOpenUm?: number
  readonly zeroCloseUm?: number
  readonly boreTemperatureC?: number
  readonly referenceTemperatureC?: number
  readonly boreThermometerId?: string
  readonly referenceThermometerId?: string
  /** Part and standard lay side by side long enough to be at one temperature. */
  readonly soakedTogether?: boolean
}

export const roles = ['of-this-engine', 'for-comparison'] as const
export type Role = (typeof roles)[number]

export const wallKinds = ['plated-aluminium', 'aluminium-silicon', 'grey-iron', 'steel'] as const
export type WallKind = (typeof wallKinds)[number]

export interface Wall {
  readonly kind: WallKind
  readonly platingUm?: number
  readonly expansionPerK?: number
  readonly expansionDoubtPerK?: number
}

/** An opening in the wall. Angles run clockwise from `fromDegrees` to `toDegrees` and may cross 0°. */
export interface Port {
  readonly id: string
  readonly name: string
  readonly fromDepthMm: number
  readonly toDepthMm: number
  readonly fromDegrees: number
  readonly toDegrees: number
}

/** A band all round that nobody could measure: blocked for readings, drawn as wall, hatched. */
export interface Belt {
  readonly id: string
  readonly name: string
  readonly fromDepthMm: number
  readonly toDepthMm: number
}

export interface Bore {
  readonly id: string
  readonly name: string
  readonly role: Role
  /** Name of the grade stamped on it, if known. */
  readonly grade?: string
  readonly lengthMm?: number
  /** Where the rings run. Levels outside are land. */
  readonly ringTravelMm?: { readonly from: number; readonly to: number }
  readonly wall?: Wall
  readonly ports: readonly Port[]
  readonly belts: readonly Belt[]
  readonly surveys: readonly Survey[]
}

/** One occasion on which a bore was measured. */
export interface Survey {
  readonly id: string
  readonly name?: string
  readonly date?: string
  readonly hoursRun?: number
  readonly setUpId: string
  readonly levelsMm: readonly number[]
  /** Axes in [0, 180). */
  readonly axesDegrees: readonly number[]
  readonly readings: readonly Reading[]
}

/** One or more repeats at a station: sizes in mm or dial deviations in µm, as the set-up's entry says. */
export interface Reading {
  readonly depthMm: number
  readonly axisDegrees: number
  readonly sizesMm?: readonly number[]
  readonly dialUm?: readonly number[]
  /** The user says that both contacts did stand on metal, though the ports say otherwise. */
  readonly confirmed?: boolean
}
