import type { Gauge } from '../measured'
import { contactAngles } from '../ports/contact-angles'
import { axisPeriodDegrees, withinPeriod } from './clear-axes'

/** The questions that a plan can be made for. */
export const planQuestions = ['size', 'out-of-round', 'bolts', 'along-depth', 'wear'] as const
/**
 * What the readings are to answer: size against limits, out-of-round, a four-lobed form from bolts, taper and
 * form along the depth, or wear against the land.
 */
export type PlanQuestion = (typeof planQuestions)[number]

/** How many axes are proposed, at equal angles, and the fewest that the question needs. */
export interface AxisChoice {
  readonly question: PlanQuestion
  readonly count: number
  readonly fewest: number
  readonly spacingDegrees: number
  /** One reading is the mean of a level. */
  readonly threeContacts: boolean
  /** More than the fewest, so that axes that are named or read already are among them. */
  readonly keepsGiven: boolean
  /** How far the axes are turned from 0°, for ports that stand in the way there. */
  readonly turnedDegrees: number
  readonly axesDegrees: readonly number[]
}

/**
 * Fewest axes for a question. Two at a right angle are what manuals ask for sizes, taper and wear (common practice,
 * no published source). The oval of D̄ + a·cos 2θ + b·sin 2θ takes three. A four-lobed form adds the terms in
 * 4θ, five unknowns; six axes 30° apart find both of its phases, hold the two at a right angle and leave one check
 * (four, 45° apart, would miss it in one of its phases). Own derivation.
 */
const fewestAxes: Readonly<Record<PlanQuestion, number>> = {
  size: 2,
  'out-of-round': 3,
  bolts: 6,
  'along-depth': 2,
  wear: 2,
}

/** Numbers of axes that divide half a turn into whole or half degrees and are worth a person's time. */
const usualCounts = [1, 2, 3, 4, 6, 8, 12]

/** An axis that differs by no more is the same, degrees. */
const forgivenDegrees = 0.01

/** The questions that three contacts cannot answer: they read the mean of a level. */
export function seesNothingOf(question: PlanQuestion, kind: Gauge['kind']): boolean {
  return isThreeContact(kind) && (question === 'out-of-round' || question === 'bolts')
}

function isThreeContact(kind: Gauge['kind']): boolean {
  return contactAngles(kind).length === 3
}

/**
 * The axes for a question, degrees in [0, 180), at equal angles from 0° on or as far turned from there. `given`
 * axes (named by the manual, or read already) stay: the smallest usual number of axes that holds them all is
 * taken, else the fewest beside them, and nothing is turned.
 */
export function axisChoice(
  question: PlanQuestion,
  kind: Gauge['kind'],
  given: readonly number[],
  turnedDegrees: number,
): AxisChoice {
  const period = axisPeriodDegrees(kind)
  const fewest = isThreeContact(kind) ? 1 : fewestAxes[question]
  const base = given[0] ?? turnedDegrees
  const spaced = (count: number) =>
    Array.from({ length: count }, (_, index) => withinPeriod(base + (index * period) / count, period))
  const holdsGiven = (count: number) =>
    given.every((axis) => spaced(count).some((own) => isSameAxis(own, axis, period)))
  const found = usualCounts.find((count) => count >= fewest && holdsGiven(count))
  const count = found ?? fewest
  const others = spaced(count).filter((own) => !given.some((axis) => isSameAxis(own, axis, period)))
  const axesDegrees = [...given, ...others].sort((a, b) => a - b)
  return {
    question,
    count,
    fewest,
    spacingDegrees: period / count,
    threeContacts: isThreeContact(kind),
    keepsGiven: given.length > 0 && axesDegrees.length > fewest,
    turnedDegrees: given.length > 0 ? 0 : turnedDegrees,
    axesDegrees,
  }
}

function isSameAxis(one: number, other: number, period: number): boolean {
  const apart = withinPeriod(one - other, period)
  return Math.min(apart, period - apart) <= forgivenDegrees
}

/** How far the axes may be turned where ports stand in the way, the least first: 0°, then 5° steps to half the spacing. */
export function turnsOf(question: PlanQuestion, kind: Gauge['kind']): number[] {
  const count = isThreeContact(kind) ? 1 : fewestAxes[question]
  const half = axisPeriodDegrees(kind) / count / 2
  const steps = Math.floor(half / 5)
  return [0, ...Array.from({ length: steps }, (_, index) => 5 * (index + 1)).flatMap((turn) => [turn, -turn])]
}
