import { arcDegrees, blockedBy } from '../ports/blocked'
import { type ChosenLevel, chooseLevels, type GaugePlanned } from './choose-levels'
import { type AxisRange, axisPeriodDegrees, isInRanges, withinPeriod } from './clear-axes'
import { type BorePlanned, type ClearBand, clearBands } from './clear-bands'
import { type LevelReason, type LevelTarget, levelTargets, type ShortLand } from './level-targets'
import { type AxisChoice, axisChoice, type PlanQuestion, seesNothingOf, turnsOf } from './plan-axes'

/** What a plan is made from. */
export interface PlanRequest {
  readonly bore: BorePlanned
  readonly gauge: GaugePlanned
  /** Turns mm around the bore into angle; need be no better than 1 %. */
  readonly diameterMm: number
  readonly question: PlanQuestion
  /** Levels that stand already: read in this survey, or in the one before. */
  readonly standing?: readonly { readonly depthMm: number; readonly code: 'read' | 'read-before' }[]
  /** Axes that are read already or that the manual names. */
  readonly givenAxesDegrees?: readonly number[]
}

/** A level worth measuring. */
export interface PlannedLevel {
  readonly depthMm: number
  readonly reasons: readonly LevelReason[]
  /** The axes of the plan that are clear here; never empty. */
  readonly axesDegrees: readonly number[]
  /** All that could be measured here. */
  readonly clear: readonly AxisRange[]
  /** Names of the ports in the way of the other axes. */
  readonly inTheWay: readonly string[]
}

/** Depths at which no axis at all has metal under every contact, mm. */
export interface BarredDepths {
  readonly fromMm: number
  readonly toMm: number
  readonly names: readonly string[]
  /** The middle of the ring travel, or of the bore, lies there. */
  readonly holdsMiddle: boolean
}

export type MeasuringPlan =
  | {
      readonly known: false
      readonly why: 'no-length' | 'too-short' | 'all-barred' | 'three-contacts-see-no-oval' | 'radial-probe'
    }
  | {
      readonly known: true
      readonly question: PlanQuestion
      readonly axes: AxisChoice
      /** The axes of the plan and those added for single levels, degrees in [0, 180). */
      readonly axesDegrees: readonly number[]
      readonly levels: readonly PlannedLevel[]
      /** What can be measured: the bore cut along its depth where the clear axes change. */
      readonly bands: readonly ClearBand[]
      readonly barred: readonly BarredDepths[]
      readonly shortLands: readonly ShortLand[]
      /** Ring travel is not known, so nothing can be said of lands. */
      readonly noTravel: boolean
    }

/** A gauge is held to its direction by eye, degrees either side. */
const directionDoubtDegrees = 2
/** By so little no range is wider, degrees. */
const triflingDegrees = 1e-6

/**
 * The levels and axes that should be measured for a question, each with its reasons, out of those that can be. No
 * station of it is blocked (`blockedBy`). Ports may turn the axes from 0° where that leaves more levels complete,
 * and a level that none of the axes reaches gets one of its own in the middle of its widest clear range. Own
 * derivation. Throws for a diameter that is not above 0 mm.
 */
export function measuringPlan(request: PlanRequest): MeasuringPlan {
  const { bore, gauge, question, diameterMm } = request
  const { lengthMm } = bore
  arcDegrees(0, diameterMm)
  if (gauge.kind === 'radial-probe') return { known: false, why: 'radial-probe' }
  if (seesNothingOf(question, gauge.kind)) return { known: false, why: 'three-contacts-see-no-oval' }
  if (lengthMm === undefined) return { known: false, why: 'no-length' }
  const bands = clearBands(bore, gauge, diameterMm)
  if (bands.length === 0) return { known: false, why: 'too-short' }
  if (bands.every(({ clear }) => clear.length === 0)) return { known: false, why: 'all-barred' }
  const { targets, shortLands } = levelTargets({ ...bore, lengthMm }, gauge, question, bands)
  const sound = targets.filter(({ fromMm, toMm }) => fromMm <= toMm)
  const { axes, chosen } = bestTurn(request, sound, bands)
  const axesDegrees = withOwnAxes(axes.axesDegrees, chosen, axisPeriodDegrees(gauge.kind))
  return {
    known: true,
    question,
    axes,
    axesDegrees,
    levels: chosen.flatMap((level) => planned(level, axesDegrees, request)),
    bands,
    barred: barredDepths(bands, middleOf({ ...bore, lengthMm })),
    shortLands,
    noTravel: bore.ringTravelMm === undefined,
  }
}

/** Axes as they stand, else turned from ports as little as completes the most levels. */
function bestTurn(request: PlanRequest, targets: readonly LevelTarget[], bands: readonly ClearBand[]) {
  const { gauge, question, givenAxesDegrees: given = [] } = request
  const turns = given.length > 0 ? [0] : turnsOf(question, gauge.kind)
  const standing = standingTargets(request)
  const period = axisPeriodDegrees(gauge.kind)
  const tried = turns.map((turn) => {
    const axes = axisChoice(question, gauge.kind, given, turn)
    const chosen = chooseLevels(targets, standing, bands, axes.axesDegrees, gauge)
    const complete = chosen.filter(({ band }) =>
      axes.axesDegrees.every((axis) => isInRanges(band.clear, axis, period)),
    )
    return { axes, chosen, complete: complete.length }
  })
  return tried.reduce((best, next) => (next.complete > best.complete ? next : best))
}

function standingTargets({ bore, standing = [] }: PlanRequest): LevelTarget[] {
  const travel = bore.ringTravelMm
  return standing.map(({ depthMm, code }) => ({
    reason: { code },
    land: travel !== undefined && (depthMm < travel.from || depthMm > travel.to),
    depthMm,
    fromMm: depthMm,
    toMm: depthMm,
  }))
}

/** The axes with one more for each level that none of them reaches. */
function withOwnAxes(
  axesDegrees: readonly number[],
  levels: readonly ChosenLevel[],
  period: number,
): readonly number[] {
  const axes = [...axesDegrees]
  for (const { band } of levels) {
    if (axes.some((axis) => isInRanges(band.clear, axis, period))) continue
    const own = middleOfWidest(band.clear, period)
    if (own !== undefined) axes.push(own)
  }
  return axes.sort((a, b) => a - b)
}

function middleOfWidest(clear: readonly AxisRange[], period: number): number | undefined {
  let widest: AxisRange | undefined
  for (const range of clear) if (!widest || widthOf(range) > widthOf(widest) + triflingDegrees) widest = range
  if (!widest || widthOf(widest) < 2 * directionDoubtDegrees) return undefined
  return withinPeriod(Math.round((widest.fromDegrees + widest.toDegrees) / 2), period)
}

function widthOf({ fromDegrees, toDegrees }: AxisRange): number {
  return toDegrees - fromDegrees
}

function planned(
  { depthMm, reasons, band }: ChosenLevel,
  axesDegrees: readonly number[],
  { bore, gauge, diameterMm }: PlanRequest,
): PlannedLevel[] {
  const barredBy = axesDegrees.map((axisDegrees) =>
    blockedBy(bore, gauge, { depthMm, axisDegrees }, diameterMm),
  )
  const clear = axesDegrees.filter((_, index) => barredBy[index]?.length === 0)
  if (clear.length === 0) return []
  const inTheWay = [...new Set(barredBy.flat())]
  return [{ depthMm, reasons, axesDegrees: clear, clear: band.clear, inTheWay }]
}

function middleOf({ ringTravelMm: travel, lengthMm }: BorePlanned & { readonly lengthMm: number }): number {
  return travel ? (travel.from + Math.min(travel.to, lengthMm)) / 2 : lengthMm / 2
}

/** Neighbouring bands without a clear axis as one. */
function barredDepths(bands: readonly ClearBand[], middleMm: number): BarredDepths[] {
  const joined: { fromMm: number; toMm: number; names: string[] }[] = []
  for (const { fromMm, toMm, clear, inTheWay } of bands) {
    if (clear.length > 0) continue
    const last = joined.at(-1)
    if (last?.toMm === fromMm) {
      last.toMm = toMm
      last.names = [...new Set([...last.names, ...inTheWay])]
    } else joined.push({ fromMm, toMm, names: [...inTheWay] })
  }
  return joined.map((one) => ({ ...one, holdsMiddle: one.fromMm <= middleMm && one.toMm >= middleMm }))
}
