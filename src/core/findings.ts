/**
 * What the readings prove: the output of `inspect`. Lengths mm, angles degrees, probabilities 0 to 1.
 * Texts are made from the codes elsewhere; nothing here is worded for a person.
 */
import type {
  Clamping,
  Entry,
  GaugeKind,
  OvalityRule,
  Role,
  StandardKind,
  SurfaceFinding,
  TaperRule,
} from './measured'

export interface Findings {
  /** Each bore by its latest survey. */
  readonly bores: readonly BoreFinding[]
  /** The surveys before the latest, in the order of the bores, the oldest of each first. */
  readonly earlier: readonly BoreFinding[]
  /** The checks of every gauge, in the order of the job. */
  readonly gaugeChecks: readonly GaugeCheckFinding[]
}

/** What reading one place again and again shows of a gauge. */
export interface GaugeCheckFinding {
  readonly gaugeId: string
  /** Which of the gauge's checks. */
  readonly index: number
  readonly date?: string
  readonly readings: number
  /** The step that is read with this gauge. */
  readonly stepUm: number
  /** From two readings on. */
  readonly scatter?: CheckScatter
  /** From three readings on. */
  readonly drift?: CheckDrift
  /** The gauge's own figures are those of this check. */
  readonly isInUse: boolean
  /** Absent while no bore of this engine was measured with the gauge. */
  readonly answer?: GaugeAnswer
}

/** Standard deviation of one reading with its 95 % interval, µm. */
export interface CheckScatter {
  readonly standardDeviationUm: number
  readonly degreesOfFreedom: number
  readonly lowUm: number
  readonly highUm: number
  /** So small that the step that is read decides. */
  readonly isBelowStep: boolean
}

/** Last reading less first by a straight line through all, µm, with its U. */
export interface CheckDrift {
  readonly overCheckUm: number
  readonly expandedUm: number
  readonly standsOut: boolean
}

/** What a station is worth with a gauge that scatters as it did, and what that leaves open of a bore's limits. */
export interface GaugeAnswer {
  readonly boreId: string
  readonly boreName: string
  readonly repeats: number
  readonly expandedMm: number
  readonly about: 'band' | 'wear' | 'one-limit' | 'nothing'
  /** How far inside the limits a reading must lie to be proven; absent for a band where none could be. */
  readonly marginMm?: number
  /**
   * Width of the new band or the grade, and as a share of it six standard deviations of one reading (of what the
   * step hides, where that is more).
   */
  readonly bandMm?: number
  readonly shareOfBand?: number
}

export type Verdict = 'inside' | 'above' | 'below' | 'too-close'
export type Side = 'inside' | 'above' | 'below'

/** The two cylinders a bore is judged by and drawn between. */
export interface LimitPair {
  /** `wear`: only `maxMm` is judged, `minMm` is the smallest new size and only drawn. */
  readonly kind: 'wear' | 'band' | 'grade'
  readonly gradeName?: string
  readonly minMm?: number
  readonly maxMm?: number
  /** Largest new size, where a wear limit takes the place of the max: drawn as a third thin ring. */
  readonly newMaxMm?: number
}

/** How one diameter stands to the limits it is judged by. */
export interface Conformity {
  readonly verdict: Verdict
  readonly probabilityInside: number
  readonly probabilityAbove: number
  readonly probabilityBelow: number
  /** The likeliest of the three, and its probability. */
  readonly lean: Side
  readonly leanProbability: number
  /** For too close to call: the U (95 %) at which this same value would be proven, if any could. */
  readonly settledByExpandedMm?: number
}

/** Diameters at which the verdict of a station changes, mm; infinite where there is no such limit. */
export interface DoubtEdges {
  /** Below this, proven below the min. */
  readonly belowFirmMm: number
  /** From here to `insideToMm` proven inside; empty when from exceeds to. */
  readonly insideFromMm: number
  readonly insideToMm: number
  /** Above this, proven above the max. */
  readonly aboveFirmMm: number
}

export type Scope = 'job' | 'standard' | 'thermometer' | 'set-up' | 'bore' | 'piston' | 'station' | 'repeat'

export const sourceKinds = [
  'wall-expansion',
  'standard-expansion',
  'reference-temperature',
  'bore-thermometer',
  'temperature-difference',
  'standard',
  'standard-error',
  'setting',
  'zero-reading',
  'gauge-warmth',
  'drift-preset',
  'repeatability',
  'scale',
  'place',
  'rocking',
  'drift-measured',
  'piston-expansion',
  'piston-reading',
  'piston-range',
] as const
export type SourceKind = (typeof sourceKinds)[number]

/** One part of a station's doubt: a source of error times its sensitivity. */
export interface Contribution {
  readonly kind: SourceKind
  /** Two contributions with one id are one and the same error. */
  readonly id: string
  readonly scope: Scope
  /** Sensitivity times standard uncertainty, mm, signed. */
  readonly signedMm: number
  /** The input where it is no length of which the diameter takes up the whole: the sensitivity is not 1. */
  readonly input?: ContributionInput
  readonly degreesOfFreedom: number
  /** Contributions that rest on one estimate share its degrees of freedom. */
  readonly estimate?: string
  /** The input was not recorded; an assumed value stands in for it. */
  readonly assumed: boolean
}

/** The input behind a contribution; what it contributes divided by its standard uncertainty is its sensitivity. */
export interface ContributionInput {
  /** Standard uncertainty, in `unit`. */
  readonly u: number
  readonly unit: 'K' | '1/K' | 'mm'
}

export interface StationFinding {
  readonly boreId: string
  readonly surveyId: string
  readonly depthMm: number
  readonly axisDegrees: number
  readonly repeats: number
  /** Each repeat as a size, as read, mm. */
  readonly sizesMm: readonly number[]
  /** Largest less smallest of the repeats, mm; absent for one repeat. */
  readonly spreadMm?: number
  /** Diameter at 20 °C, mm. */
  readonly diameterMm: number
  /** Diameter at 20 °C less the size as read, mm. */
  readonly correctionMm: number
  readonly standardUncertaintyMm: number
  /** Truncated to a whole number; may be infinite. */
  readonly degreesOfFreedom: number
  /** U, two-sided 95 %, mm. */
  readonly expandedMm: number
  /** The part shared with other stations and the station's own part, mm. */
  readonly commonMm: number
  readonly individualMm: number
  readonly individualDegreesOfFreedom: number
  readonly contributions: readonly Contribution[]
  readonly land: boolean
  /** Names of the ports or belts in the way of a contact. */
  readonly blockedBy: readonly string[]
  /** False for a reading at a blocked station that the user has not confirmed: shown, in no verdict. */
  readonly counted: boolean
  /** Where the gauge touched the wall, degrees from the axis; absent: at both ends of it. */
  readonly contactDegrees?: readonly number[]
  readonly conformity?: Conformity
  readonly doubt?: DoubtEdges
}

/** What the picture and the map need of a station. */
export type DrawnStation = Pick<
  StationFinding,
  'depthMm' | 'axisDegrees' | 'diameterMm' | 'expandedMm' | 'counted' | 'contactDegrees'
> & { readonly conformity?: Pick<Conformity, 'verdict'> }

/** Where a station is. */
export interface Place {
  readonly depthMm: number
  readonly axisDegrees: number
}

export type BoreVerdict =
  | {
      readonly known: false
      readonly why: 'no-readings' | 'no-size-over-contacts' | 'no-limits' | 'all-blocked'
    }
  | {
      readonly known: true
      readonly verdict: Verdict
      /** Factor on u at which one station among these proves the bore outside. */
      readonly factor: number
      readonly stations: number
      /** Stations outside by their own rule, and those past the limit by `factor`·u. */
      readonly above: readonly Place[]
      readonly below: readonly Place[]
      readonly provenAbove: readonly Place[]
      readonly provenBelow: readonly Place[]
      readonly tooClose: readonly Place[]
      /** The station that decides: the one furthest out, or nearest to the limit. */
      readonly deciding: Place
      readonly lean: Side
      readonly leanProbability: number
      readonly settledByExpandedMm?: number
      /**
       * False: provisional, for the reasons given in the bore's `provisional`, or about the mean of a level only
       * (three contacts, where no readings of two contacts bound the oval).
       */
      readonly firm: boolean
    }

/** How the stations measured stand to one size grade, by the rule that a bore is judged by. */
export interface GradeFinding {
  readonly gradeName: string
  readonly minMm: number
  readonly maxMm: number
  readonly verdict: Verdict
  /** Stations past a limit of the grade by the bore's factor on u. */
  readonly provenAbove: readonly Place[]
  readonly provenBelow: readonly Place[]
  /** The station furthest out, or nearest to being out, and how it stands to the grade. */
  readonly deciding: Place
  readonly lean: Side
  readonly leanProbability: number
  /** False: too narrow for every station's doubt, so that no reading could be proven inside. */
  readonly canBeProven: boolean
}

export type ProvisionalReason =
  | 'no-setting-size'
  | 'no-opening-zero'
  | 'no-closing-zero'
  | 'no-bore-temperature'
  | 'no-reference-temperature'
  | 'no-micrometer-check'
  | 'no-direction-test'
  | 'no-wall-kind'
  | 'no-dial-over-contacts'
  | 'contact-changed'

/** The oval of a level as fitted on three axes or more; lengths are differences of diameters. */
export interface FittedOval {
  readonly axes: number
  readonly ovalMm: number
  readonly expandedMm: number
  /** Direction of the largest diameter with its U (95 %); absent where no direction stands out. */
  readonly longAxisDegrees?: number
  readonly longAxisExpandedDegrees?: number
  /** Where no direction stands out: the most that the oval may be, one-sided 95 %. */
  readonly atMostMm?: number
}

/** The widest fitted oval of a bore: its doubt allows for its having been chosen among several levels. */
export interface WidestOval extends FittedOval {
  readonly depthMm: number
  readonly levels: number
}

export interface LevelFinding {
  readonly depthMm: number
  readonly land: boolean
  readonly axesDegrees: readonly number[]
  readonly meanMm: number
  readonly meanExpandedMm: number
  /** Largest less smallest at this level, with its interval for this one level; two axes or more. */
  readonly ovality?: { readonly valueMm: number; readonly lowMm: number; readonly highMm: number }
  readonly fittedOval?: FittedOval
  /** Two axes: the least that the true oval is, one-sided 95 % or better; they set no upper limit. */
  readonly ovalAtLeastMm?: number
}

export type DepthFormName = 'straight' | 'tapered' | 'barrel' | 'waisted' | 'bell-mouthed' | 'stepped'

/** A difference of level means, mm, with what it must exceed to be named. */
export interface DepthContrast {
  readonly valueMm: number
  readonly expandedMm: number
}

/** The form of the bore along its depth; lengths are differences of diameters. */
export interface DepthForm {
  readonly names: readonly DepthFormName[]
  /** Top level less bottom level. */
  readonly ends?: DepthContrast
  /** The inner level furthest off the line between the ends. */
  readonly middle?: DepthContrast & { readonly depthMm: number }
  readonly bell?: DepthContrast & { readonly end: 'top' | 'bottom' }
  /** The worn level next to a land, less the land. */
  readonly step?: DepthContrast & { readonly landDepthMm: number; readonly depthMm: number }
}

export type ShapeReason =
  | 'no-readings'
  | 'one-axis-at-every-level'
  | 'one-level-on-every-axis'
  | 'axes-not-named'
  | 'named-axis-not-measured'
  | 'no-common-axis'
  | 'three-contacts-see-no-oval'

/** The limit that an ovality or a taper is judged by, the smallest of those given. */
export interface ShapeLimit {
  readonly limitMm?: number
  /** How it came about, where it was not given as a number. */
  readonly limitFrom?: LimitShare
  /** How many limits were given, where more than one. */
  readonly limitsGiven?: number
  /** A limit per mm of travel was given and no travel: it is not reckoned with, so nothing is inside. */
  readonly limitOpen?: 'no-travel'
}

/** A limit as a share of a length. */
export interface LimitShare {
  readonly of: 'bore' | 'travel'
  readonly perMm: number
  readonly lengthMm: number
}

/** An ovality or a taper by one rule. */
export type ShapeFinding<Rule extends OvalityRule | TaperRule> =
  | (ShapeLimit & { readonly known: false; readonly rule: Rule; readonly why: ShapeReason })
  | (ShapeLimit & {
      readonly known: true
      readonly rule: Rule
      /** Signed where the rule is: positive when larger at the deck, or across. */
      readonly valueMm: number
      readonly lowMm: number
      readonly highMm: number
      /** `range`: made of a largest and a smallest. `linear`: a plain difference with U from u. */
      readonly interval: 'range' | 'linear'
      readonly larger: Place
      readonly smaller: Place
      readonly verdict?: 'inside' | 'above' | 'too-close'
      readonly lean?: 'inside' | 'above'
      /** Only for linear figures. */
      readonly probabilityAbove?: number
    })

export interface DifferenceStation extends Place {
  /** This bore less the other, mm. */
  readonly differenceMm: number
  readonly standardUncertaintyMm: number
  readonly degreesOfFreedom: number
  readonly expandedMm: number
}

/** A bore less a comparison bore, at the stations both have. */
export interface Difference {
  readonly againstBoreId: string
  readonly againstSurveyId: string
  readonly stations: readonly DifferenceStation[]
  readonly largest: DifferenceStation
  readonly mean: { readonly differenceMm: number; readonly expandedMm: number }
  /** U (95 %) of how much two new bores of this band or grade may differ as made, where it is known. */
  readonly asMadeExpandedMm?: number
  /** Their mean differs by more than that and its own U may bring about together. */
  readonly beyondAsMade?: boolean
  /** What was bolted to this bore and to the other, where that is recorded and differs: bolts bend a bore. */
  readonly clampings?: readonly [Clamping, Clamping]
}

/** A stretch of the bore along its depth, mm below the deck. */
export interface DepthSpan {
  readonly fromDepthMm: number
  readonly toDepthMm: number
}

/** What bringing the readings to 20 °C does to them, mm, at a size as read. */
export interface TemperatureEffect {
  readonly sizeMm: number
  readonly boreC: number
  readonly referenceC: number
  readonly reference: StandardKind
  /** Both temperatures were recorded; else an assumed value stands in. */
  readonly recorded: boolean
  /** For what the ring or micrometer was longer, for what the bore was, and both together. */
  readonly standardMm: number
  readonly boreMm: number
  readonly totalMm: number
  /** U (95 %) of the correction by itself. */
  readonly expandedMm: number
}

export type Note =
  | {
      readonly code: 'gauge-cannot-prove-band'
      readonly expandedMm: number
      readonly neededExpandedMm: number
    }
  | { readonly code: 'below-smallest-new'; readonly place: Place }
  | { readonly code: 'blocked-reading'; readonly place: Place; readonly by: readonly string[] }
  /** Said to have been at one temperature, with two recorded, °C. */
  | {
      readonly code: 'soaked-but-apart'
      readonly boreC: number
      readonly referenceC: number
      readonly reference: StandardKind
    }
  /** Too close to call, but proven as `verdict` if the temperatures had no doubt; U with it and without. */
  | {
      readonly code: 'temperature-decides'
      readonly place: Place
      readonly expandedMm: number
      readonly withoutMm: number
      readonly verdict: Side
    }
  | { readonly code: 'correction-exceeds-half-band'; readonly correctionMm: number; readonly halfMm: number }
  /** Bore less standard. */
  | { readonly code: 'part-and-standard-apart'; readonly differenceK: number }
  | { readonly code: 'two-contacts-see-even-lobes-only' }
  | { readonly code: 'two-axes-can-miss-an-oval'; readonly axesDegrees: readonly number[] }
  | { readonly code: 'one-axis-sees-no-oval' }
  /** From the deck down. */
  | { readonly code: 'no-reading-between'; readonly gaps: readonly DepthSpan[] }
  | { readonly code: 'stations-not-read'; readonly places: readonly Place[] }
  /** Planned stations that the gauge could not reach, as the survey records. */
  | { readonly code: 'stations-out-of-reach'; readonly places: readonly Place[] }
  | { readonly code: 'length-not-known'; readonly drawnMm: number }

/** What would put a slip right: a change of the readings or of the set-up that they were taken with. */
export type Mend =
  | {
      readonly kind: 'shift-repeats'
      readonly place: Place
      readonly repeats: readonly number[]
      readonly byMm: number
    }
  | { readonly kind: 'swap-axes'; readonly depthMm: number; readonly axesDegrees: readonly [number, number] }
  | { readonly kind: 'turn-levels-over' }
  | { readonly kind: 'turn-sign-over' }
  | { readonly kind: 'shift-setting'; readonly byMm: number }
  | { readonly kind: 'say-oversize'; readonly oversizeMm: number }

/** A question about the readings: each may be a blunder, none is changed without the user. */
export type Blunder =
  | { readonly code: 'whole-turn'; readonly place: Place; readonly turns: number; readonly mend: Mend }
  | {
      readonly code: 'digits'
      readonly place: Place
      readonly readMm: number
      readonly likelierMm: number
      readonly mend: Mend
    }
  | {
      readonly code: 'axes-swapped'
      readonly depthMm: number
      readonly axesDegrees: readonly [number, number]
      readonly mend: Mend
    }
  | { readonly code: 'levels-upside-down'; readonly by: 'land' | 'wear'; readonly mend: Mend }
  | { readonly code: 'sign'; readonly knownMm: number; readonly readMm: number; readonly mend: Mend }
  | {
      readonly code: 'setting'
      readonly cause: 'sleeve' | 'turn'
      readonly by: 'known-size' | 'caliper'
      readonly byMm: number
      readonly mend: Mend
    }
  | { readonly code: 'oversize-open'; readonly nearestMm: number; readonly mend: Mend }
  | { readonly code: 'caliper-disagrees'; readonly caliperMm: number; readonly readMm: number }
  | {
      readonly code: 'repeats-spread'
      readonly place: Place
      readonly spreadMm: number
      readonly usualMm: number
    }
  | { readonly code: 'drift-with-order'; readonly overSurveyMm: number; readonly expandedMm: number }

/** A slip that these readings could not have shown. */
export type Unseen =
  | 'setting-and-sign'
  | 'whole-turn'
  | 'digits'
  | 'levels-upside-down'
  | 'axes-swapped'
  | 'drift-with-order'

/** Why a surface finding can end a bore that is in size. */
export type SurfaceStop =
  | 'bare-aluminium'
  | 'flaking'
  | 'catches-nail'
  | 'pits-in-ring-path'
  /** Where the rings run is not recorded. */
  | 'pits-perhaps-in-ring-path'

/** A length of a surface finding as it was measured, or as it follows from its place. */
export interface SurfaceLength {
  readonly mm: number
  readonly from: 'measured' | 'place'
}

/** A surface finding with its size and what it means for a decision. */
export interface SurfaceFound extends SurfaceFinding {
  /** Around the bore; absent where it was not measured and its place is a line along the stroke. */
  readonly across?: SurfaceLength
  /** Along the bore; absent where it was not measured and its place is at one depth. */
  readonly along?: SurfaceLength
  /** Absent where it cannot end the bore by itself, as far as is recorded. */
  readonly stop?: SurfaceStop
  /** Whether a fingernail catches would decide, and was not tried. */
  readonly nailWouldTell: boolean
}

export interface BoreFinding {
  readonly boreId: string
  readonly boreName: string
  readonly role: Role
  readonly surveyId: string
  readonly entry: Entry
  readonly gaugeKind: GaugeKind
  readonly pair?: LimitPair
  readonly stations: readonly StationFinding[]
  readonly verdict: BoreVerdict
  /** Each grade, where there are several or a wear limit is judged in their place; none for comparison. */
  readonly grades: readonly GradeFinding[]
  readonly provisional: readonly ProvisionalReason[]
  /** Absent without a counted reading that has a size. */
  readonly temperature?: TemperatureEffect
  readonly largest?: Place
  readonly smallest?: Place
  readonly levels: readonly LevelFinding[]
  /** By the spec's rule first, then by the others. */
  readonly ovality: readonly ShapeFinding<OvalityRule>[]
  readonly taper: readonly ShapeFinding<TaperRule>[]
  readonly widestOval?: WidestOval
  readonly depthForm?: DepthForm
  readonly differences: readonly Difference[]
  readonly notes: readonly Note[]
  /** Questions about readings that may be blunders, those left out that the user has answered. */
  readonly blunders: readonly Blunder[]
  /** Blunders that these readings could not have shown. */
  readonly unseen: readonly Unseen[]
  /** What was recorded of the surface; it weighs in a decision and never in the verdict on sizes. */
  readonly surface: readonly SurfaceFound[]
  /** Length drawn, mm: the bore's own, or 10 mm past the outermost levels and marks. */
  readonly drawnLengthMm: number
}
