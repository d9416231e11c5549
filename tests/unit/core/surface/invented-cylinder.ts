import { doubtEdges } from '../../../../src/core/conformity/conformity'
import type { BoreFinding, Conformity, LimitPair, StationFinding } from '../../../../src/core/findings'
import type { Bore, GaugeKind } from '../../../../src/core/measured'

/** A station of a made-up survey; `counted` unless said otherwise. */
export interface Spot {
  readonly depthMm: number
  readonly axisDegrees: number
  readonly diameterMm: number
  readonly counted?: boolean
  readonly verdict?: Conformity['verdict']
  readonly standardUncertaintyMm?: number
}

export interface Plan {
  readonly spots: readonly Spot[]
  readonly levelsMm?: readonly number[]
  readonly axesDegrees?: readonly number[]
  readonly lengthMm?: number
  readonly ports?: Bore['ports']
  readonly belts?: Bore['belts']
  readonly pair?: LimitPair
  readonly gaugeKind?: GaugeKind
}

/** A bore with one survey and the finding that a wall is drawn from, without any arithmetic of inspect. */
export function made(plan: Plan): { bore: Bore; finding: BoreFinding } {
  const distinct = (values: readonly number[]) => [...new Set(values)].sort((a, b) => a - b)
  const levelsMm = plan.levelsMm ?? distinct(plan.spots.map((s) => s.depthMm))
  const axesDegrees = plan.axesDegrees ?? distinct(plan.spots.map((s) => s.axisDegrees))
  const bore: Bore = {
    id: 'bore',
    name: '1',
    role: 'of-this-engine',
    ports: plan.ports ?? [],
    belts: plan.belts ?? [],
    surveys: [{ id: 'survey', setUpId: 'set-up', levelsMm, axesDegrees, readings: [] }],
  }
  const finding: BoreFinding = {
    boreId: 'bore',
    boreName: '1',
    role: 'of-this-engine',
    surveyId: 'survey',
    entry: 'size',
    gaugeKind: plan.gaugeKind ?? 'dial-0.001-micrometer',
    ...(plan.pair ? { pair: plan.pair } : {}),
    stations: plan.spots.map((spot) => stationOf(spot, plan)),
    verdict: { known: false, why: 'no-limits' },
    grades: [],
    provisional: [],
    levels: [],
    ovality: [],
    taper: [],
    differences: [],
    notes: [],
    blunders: [],
    unseen: [],
    surface: [],
    drawnLengthMm: plan.lengthMm ?? Math.max(0, ...levelsMm) + 10,
  }
  return { bore, finding }
}

function stationOf(spot: Spot, plan: Plan): StationFinding {
  const { depthMm, axisDegrees, diameterMm, counted, verdict } = spot
  const standardUncertainty = spot.standardUncertaintyMm ?? 0.002
  const doubtful = { value: diameterMm, standardUncertainty, degreesOfFreedom: Number.POSITIVE_INFINITY }
  return {
    boreId: 'bore',
    surveyId: 'survey',
    depthMm,
    axisDegrees,
    repeats: 1,
    sizesMm: [diameterMm],
    diameterMm,
    correctionMm: 0,
    standardUncertaintyMm: standardUncertainty,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
    expandedMm: 1.96 * standardUncertainty,
    commonMm: 0,
    individualMm: standardUncertainty,
    individualDegreesOfFreedom: Number.POSITIVE_INFINITY,
    contributions: [],
    land: false,
    blockedBy: [],
    counted: counted ?? true,
    ...(plan.pair ? { doubt: doubtEdges(doubtful, plan.pair) } : {}),
    ...(verdict ? { conformity: conformityOf(verdict) } : {}),
  }
}

function conformityOf(verdict: Conformity['verdict']): Conformity {
  return {
    verdict,
    probabilityInside: 0,
    probabilityAbove: 0,
    probabilityBelow: 0,
    lean: 'inside',
    leanProbability: 0,
  }
}

/** Ports of an invented two-stroke cylinder of 54 mm. */
export const inventedPorts: Bore['ports'] = [
  port('exhaust', 29, 55, -45, 45),
  port('main transfer right', 42, 55, 62, 100),
  port('rear transfer right', 42, 55, 108, 140),
  port('boost', 42, 55, 166, 194),
  port('rear transfer left', 42, 55, 220, 252),
  port('main transfer left', 42, 55, 260, 298),
]

function port(
  name: string,
  fromDepthMm: number,
  toDepthMm: number,
  fromDegrees: number,
  toDegrees: number,
): Bore['ports'][number] {
  return { id: name, name, fromDepthMm, toDepthMm, fromDegrees, toDegrees }
}

/** Invented readings of it after 185 h, three repeats each, mm; at 35 mm the ports leave one axis. */
const readings: readonly (readonly [depthMm: number, axisDegrees: number, ...repeats: number[]])[] = [
  [8, 0, 54.033, 54.035, 54.033],
  [8, 45, 54.026, 54.028, 54.026],
  [8, 90, 54.02, 54.02, 54.019],
  [8, 135, 54.023, 54.023, 54.024],
  [16, 0, 54.027, 54.025, 54.025],
  [16, 45, 54.021, 54.021, 54.021],
  [16, 90, 54.016, 54.016, 54.016],
  [16, 135, 54.021, 54.021, 54.02],
  [25, 0, 54.027, 54.028, 54.027],
  [25, 45, 54.02, 54.021, 54.022],
  [25, 90, 54.016, 54.017, 54.016],
  [25, 135, 54.019, 54.02, 54.018],
  [35, 90, 54.018, 54.019, 54.017],
  [62, 0, 54.014, 54.014, 54.016],
  [62, 45, 54.013, 54.013, 54.014],
  [62, 90, 54.013, 54.012, 54.012],
  [62, 135, 54.013, 54.013, 54.013],
  [80, 0, 54.017, 54.016, 54.017],
  [80, 45, 54.014, 54.012, 54.013],
  [80, 90, 54.01, 54.011, 54.01],
  [80, 135, 54.013, 54.014, 54.013],
]

export const inventedSpots: readonly Spot[] = readings.map(([depthMm, axisDegrees, ...repeats]) => ({
  depthMm,
  axisDegrees,
  diameterMm: repeats.reduce((a, b) => a + b, 0) / repeats.length,
}))

/** The invented two-stroke cylinder, 90 mm long, against a smallest new size and a wear limit. */
export function inventedCylinder(plan: Partial<Plan> = {}) {
  return made({
    spots: inventedSpots,
    lengthMm: 90,
    ports: inventedPorts,
    pair: { kind: 'wear', minMm: 54, maxMm: 54.05 },
    ...plan,
  })
}
