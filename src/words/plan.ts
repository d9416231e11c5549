import type { GaugeKind } from '../core/measured'
import { type AxisRange, axisPeriodDegrees } from '../core/plan/clear-axes'
import type { ClearBand } from '../core/plan/clear-bands'
import type { LevelReason } from '../core/plan/level-targets'
import type { BarredDepths, MeasuringPlan, PlannedLevel } from '../core/plan/measuring-plan'
import type { RepeatsAnswer } from '../core/plan/repeats-for'
import { doubtToTenths } from './budget'
import { degrees, depth, lengthFigure, plain } from './numbers'
import { words } from './words'

/** A plan that could be made. */
export type KnownPlan = Extract<MeasuringPlan, { known: true }>

/** A proposed level, worded. */
export interface PlanRow {
  readonly depthMm: number
  readonly depth: string
  readonly axes: string
  readonly why: string
}

/** Which axes, and why so many. */
export function planAxesText({ axes }: KnownPlan): string {
  const said = words.plan
  const listed = words.app.and(axes.axesDegrees.map((axis) => degrees(axis)))
  if (axes.threeContacts) return said.oneAxisIs(listed)
  return [
    said.axesAre(listed, said.axes[axes.question]),
    ...(axes.keepsGiven ? [said.keeps] : []),
    ...(axes.turnedDegrees === 0 ? [] : [said.turned(degrees(axes.turnedDegrees))]),
  ].join(' ')
}

/** The proposed levels from the deck down. */
export function planRows(plan: KnownPlan): readonly PlanRow[] {
  return plan.levels.map((level) => ({
    depthMm: level.depthMm,
    depth: depth(level.depthMm),
    axes: axesText(level, plan),
    why: whyText(level, plan),
  }))
}

function axesText({ axesDegrees }: PlannedLevel, plan: KnownPlan): string {
  const said = words.plan
  if (axesDegrees.length === plan.axesDegrees.length) return said.all
  return said.only(words.app.and(axesDegrees.map((axis) => degrees(axis))))
}

function whyText({ reasons, inTheWay, axesDegrees }: PlannedLevel, plan: KnownPlan): string {
  const said = words.plan
  const isShort = axesDegrees.length < plan.axesDegrees.length
  const isFewForOval = plan.axes.fewest > 2 && axesDegrees.length < 3
  return [
    ...reasons.toSorted((a, b) => Number(isRead(a)) - Number(isRead(b))).map(reasonText),
    ...(isShort && !reasons.some(isBeside) ? [said.inTheWay(nameList(inTheWay))] : []),
    ...(isFewForOval ? [said.tooFewForOval] : []),
  ].join('; ')
}

function isRead({ code }: LevelReason): boolean {
  return code === 'read' || code === 'read-before'
}

function isBeside({ code }: LevelReason): boolean {
  return code === 'beside-ports'
}

function reasonText(reason: LevelReason): string {
  const said = words.plan
  return 'names' in reason ? said.portReasons[reason.code](nameList(reason.names)) : said.reasons[reason.code]
}

/** All of up to three names, else the first and how many more. */
function nameList(names: readonly string[]): string {
  const [first = ''] = names
  return names.length <= 3 ? words.app.and(names) : words.plan.others(first, names.length - 1)
}

/** What must be said beside the levels: what cannot be measured, and what would make a better plan. */
export function planNotes(plan: KnownPlan): readonly string[] {
  const said = words.plan
  const barred = ({ fromMm, toMm, names, holdsMiddle }: BarredDepths) =>
    (holdsMiddle ? said.barredMiddle : said.barred)(depth(fromMm), depth(toMm), nameList(names))
  return [
    ...plan.barred.map(barred),
    ...(plan.noTravel ? [said.noTravel] : []),
    ...plan.shortLands
      .filter(({ heightMm }) => heightMm > 0)
      .map(({ which, heightMm }) => said.shortLand[which](depth(heightMm))),
  ]
}

/** What can be measured, a line for each piece of the bore; ranges in whole degrees, rounded inwards. */
export function bandTexts({ bands }: KnownPlan, kind: GaugeKind): readonly string[] {
  const said = words.plan
  const period = axisPeriodDegrees(kind)
  return bands.map(({ fromMm, toMm, clear, inTheWay }: ClearBand) => {
    const axes = clear
      .flatMap((range) => cutAtPeriod(range, period))
      .sort((a, b) => a.fromDegrees - b.fromDegrees)
      .map((range) => rangeText(range, period))
      .filter((text) => text !== '')
    return said.band(
      lengthFigure(fromMm, 1),
      depth(toMm),
      axes.length > 0 ? words.app.and(axes) : said.noAxis(nameList(inTheWay)),
    )
  })
}

function cutAtPeriod({ fromDegrees, toDegrees }: AxisRange, period: number): readonly AxisRange[] {
  if (toDegrees <= period) return [{ fromDegrees, toDegrees }]
  return [
    { fromDegrees, toDegrees: period },
    { fromDegrees: 0, toDegrees: toDegrees - period },
  ]
}

function rangeText({ fromDegrees, toDegrees }: AxisRange, period: number): string {
  const said = words.plan
  if (toDegrees - fromDegrees >= period) return said.everyAxis
  const from = Math.ceil(fromDegrees)
  const to = Math.floor(toDegrees)
  if (from > to) return ''
  return from === to ? degrees(from) : said.range(degrees(from), degrees(to))
}

/** How many readings reach a wanted doubt, or what would, a line each. */
export function repeatsTexts(answer: RepeatsAnswer): readonly string[] {
  const said = words.plan.repeats
  const once = doubtToTenths(answer.onceMm)
  if (answer.reached) {
    const { repeats, expandedMm } = answer
    const doubt = doubtToTenths(expandedMm)
    return [repeats === 1 ? said.once(doubt) : said.several(repeats, doubt, once)]
  }
  const { repeats, leastMm, remedies } = answer
  return [
    repeats === undefined ? said.never(doubtToTenths(leastMm)) : said.tooMany(plain(repeats, 0), once),
    ...remedies.map(({ kind, repeats: enough, leastMm: least }) =>
      enough === undefined
        ? said.atBest(said.remedies[kind], doubtToTenths(least))
        : said.suffices(said.remedies[kind], enough),
    ),
    ...(remedies.length === 0 ? [said.nothing] : []),
  ]
}
