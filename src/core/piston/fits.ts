import { conditionsOf, named } from '../conditions-of'
import type { BoreFinding, Place, Side, StationFinding } from '../findings'
import { largest, smallest } from '../form/level'
import {
  type Bore,
  type ClearanceRule,
  clearanceRules,
  type Measured,
  type Piston,
  type PistonState,
  type Spec,
} from '../measured'
import { expanded } from '../uncertainty/combine'
import type { SetUpConditions } from '../uncertainty/set-up-contributions'
import {
  type Clearance,
  type ClearanceTemperatures,
  clearancesOf,
  endsOf,
  runningStations,
} from './clearance'
import { judgedWindow, type Window } from './judged-window'
import { type PistonGap, type PistonSize20, pistonSizeOf } from './piston-size'

export type FitVerdict = 'inside' | 'too-tight' | 'too-loose' | 'too-close'
export type FitSide = Exclude<FitVerdict, 'too-close'>

/** Why a piston has no clearance in a bore, or none that the manual's limits speak of. */
export type FitReason = 'no-size' | 'no-readings' | 'other-oversize' | 'other-height'

/** The least or the most clearance, mm on the diameter. */
export interface ClearanceEnd {
  readonly valueMm: number
  readonly standardUncertaintyMm: number
  readonly degreesOfFreedom: number
  readonly expandedMm: number
  /** Where the bore was measured; absent where the rule takes the mean of all. */
  readonly place?: Place
}

/** Least and most clearance at temperatures that are named. */
export interface ClearancePair extends ClearanceTemperatures {
  readonly least: ClearanceEnd
  readonly most: ClearanceEnd
}

/** What the manual allows of a clearance, mm. */
export interface ClearanceWindow {
  readonly minMm?: number
  /** The most in service where that is given, else the most when new. */
  readonly maxMm?: number
  readonly maxIs: 'service' | 'new'
  readonly newMaxMm?: number
}

/** How a clearance stands to a window. */
export interface FitStanding {
  readonly verdict: FitVerdict
  readonly lean: FitSide
  readonly leanProbability: number
}

/** A piston in a bore: its clearance and how that stands to the manual's window. */
export interface Fit {
  readonly boreId: string
  readonly pistonId: string
  readonly state: PistonState
  /** It ran in this bore. */
  readonly ranHere: boolean
  readonly sizeMm?: number
  readonly sizeFrom?: PistonSize20['from']
  readonly rule: ClearanceRule
  readonly window?: ClearanceWindow
  /** Temperature of bore and piston that least and most hold at: 20 °C, or the one that the manual names. */
  readonly atC: number
  readonly least?: ClearanceEnd
  readonly most?: ClearanceEnd
  /** At the temperatures at which bore and piston were measured, where those differ from the above. */
  readonly asMeasured?: ClearancePair
  /** Absent without a window, or where the clearance is not the one that it speaks of. */
  readonly verdict?: FitVerdict
  readonly lean?: FitSide
  readonly leanProbability?: number
  /** Against the window of new parts, where the service limit takes the place of its end. */
  readonly asNew?: FitStanding
  readonly unknown?: FitReason
  /** Not recorded of the piston; what is assumed for it stands in the doubt, and the verdict is not firm. */
  readonly gaps: readonly PistonGap[]
  /** False where the sizes of the bore or of the piston rest on something assumed. */
  readonly firm: boolean
}

/** How far the height of a measured piston may be off the manual's and still be it, mm. */
const sameHeightMm = 1

/**
 * How the pistons on offer fit a bore of this engine: each that ran in it, lies here or can be had. One that ran in
 * another bore is not on offer, since a pair that ran together stays together; for a bore for comparison there are
 * none. Clearances come from counted stations of the running surface alone. They are clearances at rest.
 *
 * Judged: the least against the window's smallest, the most against its largest, each as a bore is judged against
 * a limit (`judgedExtreme`); inside when the chances of both ends together leave 95 %. The largest is the service
 * limit wherever the manual gives one, for a piston that ran here and for another alike: it says what a pair may
 * run with, and a new piston in a worn bore is no new pair. How it stands to the window of new parts is told beside.
 * Source: as for `conformity` and `boreVerdict`.
 */
export function fitsOf(measured: Measured, finding: BoreFinding): Fit[] {
  if (finding.role !== 'of-this-engine') return []
  const bore = named(measured.bores, finding.boreId, 'bore')
  const survey = named(bore.surveys, finding.surveyId, 'survey')
  const conditions = conditionsOf(measured, bore, survey)
  const stations = runningStations(finding)
  return (measured.pistons ?? [])
    .filter((piston) => isOnOffer(measured, bore, piston))
    .map((piston) => fitOf(measured, finding, conditions, stations, piston))
}

/** The window that clearances are judged by; undefined where the manual gives no clearance. */
export function clearanceWindow(spec: Spec): ClearanceWindow | undefined {
  const { clearanceMinMm: minMm, clearanceMaxMm: newMaxMm, clearanceLimitMm: limitMm } = spec
  if (minMm === undefined && newMaxMm === undefined && limitMm === undefined) return undefined
  const maxMm = limitMm ?? newMaxMm
  return {
    ...(minMm === undefined ? {} : { minMm }),
    ...(maxMm === undefined ? {} : { maxMm }),
    maxIs: limitMm === undefined ? 'new' : 'service',
    ...(newMaxMm === undefined ? {} : { newMaxMm }),
  }
}

/** Whether a piston ran in this bore; where it is not said of a fitted one, in the only bore that there is. */
export function ranIn(measured: Measured, { id }: Bore, { state, boreId }: Piston): boolean {
  if (state !== 'fitted') return false
  if (boreId !== undefined) return boreId === id
  return measured.bores.filter(({ role }) => role === 'of-this-engine').length === 1
}

function isOnOffer(measured: Measured, bore: Bore, piston: Piston): boolean {
  return piston.state !== 'fitted' || piston.boreId === undefined || ranIn(measured, bore, piston)
}

function fitOf(
  measured: Measured,
  finding: BoreFinding,
  { bore, wall, temperatures }: SetUpConditions,
  stations: readonly StationFinding[],
  piston: Piston,
): Fit {
  const { spec } = measured
  const ranHere = ranIn(measured, bore, piston)
  const size = pistonSizeOf(measured, piston)
  const rule = spec.clearanceRule ?? clearanceRules[0]
  const window = clearanceWindow(spec)
  const atC = spec.clearanceAtC ?? 20
  const isRead = size?.from === 'reading'
  const start = {
    boreId: bore.id,
    pistonId: piston.id,
    state: piston.state,
    ranHere,
    rule,
    atC,
    ...(size ? { sizeMm: size.sizeMm, sizeFrom: size.from } : {}),
    ...(window ? { window } : {}),
    gaps: size?.gaps ?? [],
    firm: isFirm(finding) && (size?.gaps ?? []).length === 0,
  }
  if (!ranHere && (piston.oversizeMm ?? 0) !== (bore.oversizeMm ?? 0))
    return { ...start, unknown: 'other-oversize' }
  if (!size) return { ...start, unknown: 'no-size' }
  if (stations.length === 0) return { ...start, unknown: 'no-readings' }
  const at = { boreC: atC, pistonC: atC }
  const clearances = clearancesOf(stations, wall, size, rule, at)
  const known = { ...start, ...pairOf(clearances, rule), ...asMeasured() }
  if (isRead && isOtherHeight(spec, piston)) return { ...known, unknown: 'other-height' }
  return { ...known, ...standings(clearances, rule, window) }

  function asMeasured(): Pick<Fit, 'asMeasured'> {
    if (temperatures.knowledge === 'none' || !size) return {}
    const { boreC } = temperatures
    const measuredAt = { boreC, pistonC: size.pistonC ?? boreC }
    if (measuredAt.boreC === atC && measuredAt.pistonC === atC) return {}
    const ends = rule === 'mean-bore' ? stations : [smallest(stations), largest(stations)]
    const there = clearancesOf(ends, wall, size, rule, measuredAt)
    return { asMeasured: { ...measuredAt, ...pairOf(there, rule) } }
  }
}

function isFirm({ provisional, verdict }: BoreFinding): boolean {
  return provisional.length === 0 && (!verdict.known || verdict.firm)
}

function isOtherHeight({ pistonHeightMm }: Spec, { heightMm }: Piston): boolean {
  if (pistonHeightMm === undefined || heightMm === undefined) return false
  return Math.abs(heightMm - pistonHeightMm) > sameHeightMm
}

function pairOf(
  clearances: readonly Clearance[],
  rule: ClearanceRule,
): { readonly least: ClearanceEnd; readonly most: ClearanceEnd } {
  const { least, most } = endsOf[rule]
  return { least: endOf(clearances, least), most: endOf(clearances, most) }
}

function endOf(clearances: readonly Clearance[], which: 'smallest' | 'largest'): ClearanceEnd {
  const { valueMm, standardUncertaintyMm, degreesOfFreedom, place } = clearances.reduce((a, b) =>
    (which === 'largest' ? b.valueMm > a.valueMm : b.valueMm < a.valueMm) ? b : a,
  )
  return {
    valueMm,
    standardUncertaintyMm,
    degreesOfFreedom,
    expandedMm: expanded({ standardUncertainty: standardUncertaintyMm, degreesOfFreedom }),
    ...(place ? { place } : {}),
  }
}

function standings(
  clearances: readonly Clearance[],
  rule: ClearanceRule,
  window: ClearanceWindow | undefined,
): Pick<Fit, 'verdict' | 'lean' | 'leanProbability' | 'asNew'> {
  if (!window) return {}
  const { minMm, maxMm, maxIs, newMaxMm } = window
  const standing = standingOf(clearances, rule, { minMm, maxMm })
  if (maxIs === 'new' || newMaxMm === undefined) return standing
  return { ...standing, asNew: standingOf(clearances, rule, { minMm, maxMm: newMaxMm }) }
}

function standingOf(clearances: readonly Clearance[], rule: ClearanceRule, window: Window): FitStanding {
  const { verdict, lean, leanProbability } = judgedWindow(clearances, endsOf[rule], window)
  return {
    verdict: verdict === 'too-close' ? verdict : fitSides[verdict],
    lean: fitSides[lean],
    leanProbability,
  }
}

const fitSides: Readonly<Record<Side, FitSide>> = { inside: 'inside', below: 'too-tight', above: 'too-loose' }
