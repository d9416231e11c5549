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
  /** Pistons that ran in these bores, lie on the bench or can be had. */
  readonly pistons?: readonly Piston[]
  /** How much the machine runs, to turn hours into a date. */
  readonly hoursPerWeek?: number
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
  /** Oversizes that the manual allows the bore to be finished to, mm on the diameter over the sizes above. */
  readonly oversizesMm?: readonly number[]
  readonly ovalityLimitMm?: number
  /** As a share of the bore's diameter; of several limits given the smallest is judged. */
  readonly ovalityLimitPerMm?: number
  readonly ovalityRule?: OvalityRule
  /** The axes called X and Y by the manual, for the rules that name them. */
  readonly ovalityAxesDegrees?: { readonly x: number; readonly y: number }
  readonly taperLimitMm?: number
  /** As a share of the bore's diameter. */
  readonly taperLimitPerMmOfBore?: number
  /** As a share of `travelMm`. */
  readonly taperLimitPerMmOfTravel?: number
  readonly taperRule?: TaperRule
  /** Travel of the piston: its stroke, and for limits given in proportion to it. */
  readonly travelMm?: number
  /** How far the crown's edge stands below the deck at the top of the stroke, mm; negative above it. */
  readonly crownAtTopMm?: number
  /** Smallest and largest piston clearance when new, on the diameter. */
  readonly clearanceMinMm?: number
  readonly clearanceMaxMm?: number
  /** Largest clearance allowed in service. Where given, it takes the place of the largest new one. */
  readonly clearanceLimitMm?: number
  readonly clearanceRule?: ClearanceRule
  /** Temperature of bore and piston that the clearances hold at; 20 °C where absent. */
  readonly clearanceAtC?: number
  /** Height above the skirt's lower edge at which the manual has the piston measured. */
  readonly pistonHeightMm?: number
  /** Smallest and largest end gap of a new ring, and the largest allowed in service. */
  readonly ringGapMinMm?: number
  readonly ringGapMaxMm?: number
  readonly ringGapLimitMm?: number
  /** What boring takes off at least until the worn wall is clean, on the diameter. */
  readonly cleanUpMm?: number
  /** Whether all cylinders go to one oversize; they do where absent. */
  readonly oversizesAlike?: boolean
  /** Hours after which the manual wants the bore looked at again. */
  readonly serviceIntervalHours?: number
}

export const clearanceRules = ['smallest-to-largest', 'largest-bore', 'mean-bore', 'smallest-bore'] as const
/**
 * Which diameters of the running surface a clearance is taken from: the smallest for the least and the largest for
 * the most, or one of them alone.
 */
export type ClearanceRule = (typeof clearanceRules)[number]

export const pistonStates = ['fitted', 'at-hand', 'obtainable'] as const
/** It ran in a bore of this engine; it lies here; or it can be had. */
export type PistonState = (typeof pistonStates)[number]

/** A piston, measured across its skirt or known by the sizes that its grade may have. */
export interface Piston {
  readonly id: string
  readonly name?: string
  readonly state: PistonState
  /** The bore that it ran in. */
  readonly boreId?: string
  readonly grade?: string
  /** Which oversize it belongs to, mm; 0 for the standard size, which is taken where it is absent. */
  readonly oversizeMm?: number
  /** As the micrometer showed it, mm. */
  readonly readMm?: number
  /** Where nobody measured it: the smallest and the largest that it may be at 20 °C. */
  readonly minMm?: number
  readonly maxMm?: number
  /** Height above the skirt's lower edge at which it was measured. */
  readonly heightMm?: number
  /** The micrometer that it was measured with. */
  readonly standardId?: string
  /** Standard uncertainty of reading it, µm; 2 where absent. */
  readonly readingDoubtUm?: number
  readonly temperatureC?: number
  readonly micrometerTemperatureC?: number
  readonly thermometerId?: string
  readonly expansionPerK?: number
  readonly expansionDoubtPerK?: number
  /** From the skirt's lower edge to the crown's edge, and to the middle of the pin. */
  readonly crownHeightMm?: number
  readonly pinHeightMm?: number
  /** And to the top ring. */
  readonly topRingHeightMm?: number
  /** Sizes at other heights, as the micrometer showed them, for the drawing alone. */
  readonly profile?: readonly PistonSize[]
}

/** The size of a piston across its skirt at a height above the skirt's lower edge, mm. */
export interface PistonSize {
  readonly heightMm: number
  readonly readMm: number
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

export const markings = ['mm', 'inch'] as const
/** The unit that a dial, a sleeve or a display is marked in; readings are typed in it. */
export type Marking = (typeof markings)[number]

/** A gauge. What is absent is taken from the typical figures of its kind. */
export interface Gauge {
  readonly id: string
  readonly name?: string
  readonly kind: GaugeKind
  /** Absent: mm. */
  readonly markedIn?: Marking
  /** What one whole turn of the needle is worth, µm. */
  readonly turnValueUm?: number
  /** Day of its last calibration, as in 2024-05-31. */
  readonly calibratedOn?: string
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
  /**
   * How far each of the centraliser's two feet stands from the contact between them, mm along the wall; none
   * when absent.
   */
  readonly feetOffsetMm?: number
  /** Doubt of the depth at which the gauge is held, standard uncertainty, mm. */
  readonly depthDoubtMm?: number
  /** Doubt of a reading from a tilt that rocking did not take out, standard uncertainty, µm; none when absent. */
  readonly rockingUm?: number
  /** Times when one place was read again and again to see how the gauge repeats. */
  readonly checks?: readonly GaugeCheck[]
  /** Times when several people read several parts, each as often, to see what gauge and people bring. */
  readonly crossedStudies?: readonly CrossedStudy[]
}

/** Readings of one place in the order in which they were taken: sizes, or what the dial showed. */
export interface GaugeCheck {
  readonly date?: string
  readonly sizesMm?: readonly number[]
  readonly dialUm?: readonly number[]
}

export interface CrossedStudy {
  readonly date?: string
  readonly readings: readonly CrossedReading[]
}

/** Repeats of one part by one person: sizes, or what the dial showed; the same throughout a study. */
export interface CrossedReading {
  readonly person: string
  readonly part: string
  readonly sizesMm?: readonly number[]
  readonly dialUm?: readonly number[]
}

export const standardKinds = ['ring', 'micrometer'] as const
export type StandardKind = (typeof standardKinds)[number]

/** What the gauge was set with. */
export interface Standard {
  readonly id: string
  readonly name?: string
  readonly kind: StandardKind
  /** Absent: mm. */
  readonly markedIn?: Marking
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

export const entries = ['size', 'deviation', 'reverse', 'direct'] as const
/**
 * How readings are written down: sizes in mm from a gauge set to a known size; dial readings in µm of such a
 * gauge; dial readings in µm of a gauge that was zeroed in the bore and then measured over its contacts (the
 * reverse method); sizes in mm straight off an internal instrument.
 */
export type Entry = (typeof entries)[number]

/** One setting of a gauge and the conditions it was used under. */
export interface SetUp {
  readonly id: string
  readonly name?: string
  readonly gaugeId: string
  readonly standardId: string
  readonly entry: Entry
  /** Setting size as shown by the standard, mm; where the gauge is not set to a size, roughly that of the bore. */
  readonly settingSizeMm: number
  /** Nobody wrote the setting size down: it only stands in until somebody does. */
  readonly settingAssumed?: boolean
  /** Reverse method: the gauge over its contacts as the micrometer shows it, mm. */
  readonly overContactsMm?: number
  /** Reverse method: the dial while the micrometer held the gauge, µm, counted positive clockwise. */
  readonly dialOverContactsUm?: number
  /** Which way the needle goes for a larger bore, from the direction test. Needed for dial readings. */
  readonly largerIs?: 'clockwise' | 'anticlockwise'
  /** Dial on the standard before and after (reverse method: at one place in the bore), µm, clockwise positive. */
  readonly zeroOpenUm?: number
  readonly zeroCloseUm?: number
  readonly boreTemperatureC?: number
  readonly referenceTemperatureC?: number
  /** Temperature of the standard at the closing zero, where it was read again. */
  readonly referenceTemperatureCloseC?: number
  readonly boreThermometerId?: string
  readonly referenceThermometerId?: string
  /** Part and standard lay side by side long enough to be at one temperature. */
  readonly soakedTogether?: boolean
  /** How much the gauge may have warmed since its setting, K. */
  readonly gaugeWarmedK?: number
}

export const roles = ['of-this-engine', 'for-comparison'] as const
export type Role = (typeof roles)[number]

export const wallKinds = ['plated-aluminium', 'aluminium-silicon', 'grey-iron', 'steel'] as const
export type WallKind = (typeof wallKinds)[number]

export interface Wall {
  readonly kind: WallKind
  /** Of one wall: its thickness less its tolerance. */
  readonly platingUm?: number
  /** It is a liner that can be taken out. */
  readonly liner?: boolean
  /** What the manual says of boring and honing, where it differs from what is usual for the kind. */
  readonly mayBeBored?: boolean
  readonly mayBeHoned?: boolean
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
  /** The oversize that it was finished to, mm; 0 for the standard size, which is taken where it is absent. */
  readonly oversizeMm?: number
  readonly lengthMm?: number
  /** Where the rings run. Levels outside are land. */
  readonly ringTravelMm?: { readonly from: number; readonly to: number }
  readonly wall?: Wall
  readonly ports: readonly Port[]
  readonly belts: readonly Belt[]
  readonly surveys: readonly Survey[]
  /** Turns of a probe in the bore, kept apart from the job under the hash of their content. */
  readonly scans?: readonly Scan[]
}

export const scanCleanings = ['before', 'after'] as const

/** A dense scan of radii: its form alone, unless stations of a survey tie it to a size. */
export interface Scan {
  readonly id: string
  readonly name?: string
  readonly date?: string
  readonly hoursRun?: number
  readonly clamping?: Clamping
  /** Taken before or after stuck metal was cleaned off. */
  readonly cleaning?: (typeof scanCleanings)[number]
  readonly gaugeId?: string
  /** SHA-256 of its record, 64 hexadecimal digits. */
  readonly hash: string
  readonly levels: number
  readonly angles: number
  /** Places with a value; the others are ports. */
  readonly values: number
  /** The survey whose stations give it a size. */
  readonly tieSurveyId?: string
  /** Undulations per revolution that the filter passes half of. */
  readonly cutOffUndulations?: number
}

export const clampings = ['bare', 'torque-plate', 'assembled'] as const
/** What was bolted to the bore while it was measured. */
export type Clamping = (typeof clampings)[number]

/** One occasion on which a bore was measured. */
export interface Survey {
  readonly id: string
  readonly name?: string
  readonly date?: string
  readonly hoursRun?: number
  readonly measuredBy?: string
  readonly clamping?: Clamping
  /** To what the bolts of a torque plate were tightened, N·m. */
  readonly plateTorqueNm?: number
  /** Hours since the part was last warm from running, washing or honing. */
  readonly restedHours?: number
  /** The bore by caliper, mm: rough, but free of the slips that a set gauge can hide. */
  readonly caliperMm?: number
  /** Questions about readings that were answered with "it is right", by their kind and place. */
  readonly answered?: readonly string[]
  /** A contact of the gauge was changed after its setting. */
  readonly contactChanged?: boolean
  readonly setUpId: string
  readonly levelsMm: readonly number[]
  /** Axes in [0, 180). */
  readonly axesDegrees: readonly number[]
  readonly readings: readonly Reading[]
  /** What the wall itself showed, beside its sizes. */
  readonly surfaceFindings?: readonly SurfaceFinding[]
  /** End gaps of a ring pushed into the bore, at some depths. */
  readonly ringGaps?: readonly RingGap[]
  /** Standard uncertainty of a gap by feeler, µm; 12 where absent. */
  readonly feelerDoubtUm?: number
  /** Stations of the plan that the gauge could not reach: without a reading, and wall that nobody measured. */
  readonly unreachable?: readonly UnreachableStation[]
}

/** The end gap of a ring at a depth, as the feeler showed it, mm. */
export interface RingGap {
  readonly depthMm: number
  readonly gapMm: number
}

/** A level on an axis where the gauge could not be put. */
export interface UnreachableStation {
  readonly depthMm: number
  readonly axisDegrees: number
}

/** One or more repeats at a station: sizes in mm or dial readings in µm, as the set-up's entry says. */
export interface Reading {
  readonly depthMm: number
  readonly axisDegrees: number
  readonly sizesMm?: readonly number[]
  readonly dialUm?: readonly number[]
  /** The user says that both contacts did stand on metal, though the ports say otherwise. */
  readonly confirmed?: boolean
}

export const surfaceKinds = [
  'scratch',
  'scuff',
  'stuck-metal',
  'bare-aluminium',
  'flaking',
  'ridge',
  'pits',
  'rust',
  'glaze',
  'cross-hatch-worn-off',
  'cross-hatch-seen',
] as const
/** What was seen or felt on the wall. */
export type SurfaceKind = (typeof surfaceKinds)[number]

export const surfaceShapes = ['patch', 'streak'] as const
/** A streak runs along the stroke and is narrow. */
export type SurfaceShape = (typeof surfaceShapes)[number]

/**
 * Where something lies on the wall. Angles run clockwise from `fromDegrees` to `toDegrees` and may cross 0°; a
 * whole turn apart they go all round, and equal ones are a line along the stroke.
 */
export interface SurfacePlace {
  readonly fromDepthMm: number
  readonly toDepthMm: number
  readonly fromDegrees: number
  readonly toDegrees: number
}

/** A mark on the wall that figures do not show. */
export interface SurfaceFinding extends SurfacePlace {
  readonly id: string
  readonly kind: SurfaceKind
  readonly shape: SurfaceShape
  /** Whether a fingernail drawn across it catches. Absent: not tried. */
  readonly catchesNail?: boolean
  /** Width around the bore and length along it, where they were measured; else they follow from the place. */
  readonly acrossMm?: number
  readonly alongMm?: number
  readonly note?: string
  readonly photos?: readonly Photograph[]
  /** The scan in which it was found. */
  readonly scanId?: string
}

/** A photograph by its content: the picture itself is kept apart from the job. */
export interface Photograph {
  /** SHA-256 of its bytes, 64 hexadecimal digits. */
  readonly hash: string
  readonly name: string
  readonly widthPx: number
  readonly heightPx: number
}
