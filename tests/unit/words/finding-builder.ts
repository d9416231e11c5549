import type {
  BoreFinding,
  BoreVerdict,
  Conformity,
  Difference,
  Findings,
  Place,
  ShapeFinding,
  StationFinding,
} from '../../../src/core/findings'
import type { OvalityRule, TaperRule } from '../../../src/core/measured'

type KnownVerdict = Extract<BoreVerdict, { readonly known: true }>
type KnownShape<Rule extends OvalityRule | TaperRule> = Extract<ShapeFinding<Rule>, { readonly known: true }>

/** Findings made by hand: the wording is tested apart from the arithmetic. All figures are invented. */
export function at(depthMm: number, axisDegrees: number): Place {
  return { depthMm, axisDegrees }
}

export function conformity(change: Partial<Conformity> = {}): Conformity {
  return {
    verdict: 'inside',
    probabilityInside: 0.999,
    probabilityAbove: 0.001,
    probabilityBelow: 0,
    lean: 'inside',
    leanProbability: 0.999,
    ...change,
  }
}

export function station(
  place: Place,
  diameterMm: number,
  change: Partial<StationFinding> = {},
): StationFinding {
  return {
    ...place,
    boreId: 'b1',
    surveyId: 's1',
    repeats: 3,
    sizesMm: [diameterMm, diameterMm, diameterMm],
    diameterMm,
    correctionMm: -0.0037,
    standardUncertaintyMm: 0.0025,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
    expandedMm: 0.0049,
    commonMm: 0.002,
    individualMm: 0.0015,
    individualDegreesOfFreedom: 20,
    contributions: [],
    land: false,
    blockedBy: [],
    counted: true,
    conformity: conformity(),
    ...change,
  }
}

export const twoStations = [station(at(8, 0), 54.028), station(at(8, 90), 54.015)]

export function verdict(change: Partial<KnownVerdict> = {}): KnownVerdict {
  return {
    known: true,
    verdict: 'inside',
    factor: 2.5,
    stations: 2,
    above: [],
    below: [],
    provenAbove: [],
    provenBelow: [],
    tooClose: [],
    deciding: at(8, 0),
    lean: 'inside',
    leanProbability: 0.999,
    firm: true,
    ...change,
  }
}

export function ovality(change: Partial<KnownShape<OvalityRule>> = {}): ShapeFinding<OvalityRule> {
  return {
    known: true,
    rule: 'largest-less-smallest-at-a-level',
    valueMm: 0.013,
    lowMm: 0.007,
    highMm: 0.019,
    interval: 'range',
    larger: at(8, 0),
    smaller: at(8, 90),
    limitMm: 0.015,
    verdict: 'too-close',
    lean: 'inside',
    ...change,
  }
}

export function taper(change: Partial<KnownShape<TaperRule>> = {}): ShapeFinding<TaperRule> {
  return {
    known: true,
    rule: 'between-levels-of-an-axis',
    valueMm: 0.016,
    lowMm: 0.01,
    highMm: 0.022,
    interval: 'range',
    larger: at(8, 0),
    smaller: at(80, 0),
    limitMm: 0.025,
    verdict: 'inside',
    lean: 'inside',
    ...change,
  }
}

export function difference(change: Partial<Difference> = {}): Difference {
  const largest = {
    ...at(8, 0),
    differenceMm: 0.024,
    standardUncertaintyMm: 0.0018,
    degreesOfFreedom: 20,
    expandedMm: 0.0037,
  }
  return {
    againstBoreId: 'b2',
    againstSurveyId: 's2',
    stations: [largest, { ...largest, ...at(8, 90), differenceMm: 0.011 }],
    largest,
    mean: { differenceMm: 0.0175, expandedMm: 0.0026 },
    asMadeExpandedMm: 0.0096,
    ...change,
  }
}

export function bore(change: Partial<BoreFinding> = {}): BoreFinding {
  return {
    boreId: 'b1',
    boreName: '1',
    role: 'of-this-engine',
    surveyId: 's1',
    entry: 'size',
    gaugeKind: 'dial-0.001-micrometer',
    pair: { kind: 'wear', minMm: 54, maxMm: 54.05, newMaxMm: 54.012 },
    stations: twoStations,
    verdict: verdict(),
    grades: [],
    provisional: [],
    largest: at(8, 0),
    smallest: at(8, 90),
    levels: [{ depthMm: 8, land: false, axesDegrees: [0, 90], meanMm: 54.0215, meanExpandedMm: 0.0045 }],
    ovality: [],
    taper: [],
    differences: [],
    notes: [],
    blunders: [],
    unseen: [],
    surface: [],
    drawnLengthMm: 88,
    ...change,
  }
}

export const band = { kind: 'band', minMm: 54, maxMm: 54.012 } as const
export const gradeA = { kind: 'grade', gradeName: 'A', minMm: 54, maxMm: 54.006 } as const

export function findingsOf(...bores: readonly BoreFinding[]): Findings {
  return { bores, earlier: [], gaugeChecks: [] }
}
