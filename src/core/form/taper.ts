import { probabilities } from '../conformity/conformity'
import type { ShapeFinding, ShapeReason, StationFinding } from '../findings'
import { type Spec, type TaperRule, taperRules } from '../measured'
import { combine, expanded } from '../uncertainty/combine'
import { type Level, largest, smallest } from './level'
import { type ChosenPair, place, rangeFinding } from './range-finding'
import { taperLimit, withLimit } from './shape-limit'

type Finding = ShapeFinding<TaperRule>

/**
 * Taper, upper less lower, positive when wider at the deck, by the spec's rule first and then by every
 * other: between two levels of one axis (the largest, named); top less bottom of an axis (the largest,
 * named); largest at the top less largest at the bottom; largest at the top less smallest at the bottom;
 * of the level means. Top and bottom are the outermost levels outside lands; where their axes differ only
 * those they have in common count. The local cylinder taper of ISO 12180-1:2011 is half of a difference of
 * diameters. Judged by its size against the limit; only the spec's own rule is.
 */
export function taper(levels: readonly Level[], spec: Spec): Finding[] {
  const chosen = spec.taperRule ?? taperRules[0]
  const others = taperRules.filter((rule) => rule !== chosen)
  return [chosen, ...others].map((rule) => taperBy(rule, levels, spec))
}

/** Taper by one rule, as for `taper`. */
export function taperBy(rule: TaperRule, levels: readonly Level[], spec: Spec): Finding {
  const limit = rule === (spec.taperRule ?? taperRules[0]) ? taperLimit(spec, levels) : {}
  return withLimit(byRule(rule, levels, limit.limitMm), limit)
}

function unknown(rule: TaperRule, why: ShapeReason, limitMm: number | undefined): Finding {
  return { known: false, rule, why, ...(limitMm === undefined ? {} : { limitMm }) }
}

function byRule(rule: TaperRule, levels: readonly Level[], limitMm: number | undefined): Finding {
  if (rule === 'level-means') {
    const ends = endsOf(levels)
    return typeof ends === 'string' ? unknown(rule, ends, limitMm) : levelMeans(rule, ends, limitMm)
  }
  const pair = taperPair(rule, levels, limitMm)
  return typeof pair === 'string' ? unknown(rule, pair, limitMm) : rangeFinding(pair)
}

/** The two stations whose difference is the taper by a rule, or why there are none. Levels in a land are left out. */
export function taperPair(
  rule: Exclude<TaperRule, 'level-means'>,
  levels: readonly Level[],
  limitMm: number | undefined,
): Pair {
  if (rule === 'between-levels-of-an-axis') return betweenLevels(rule, levels, limitMm)
  const found = endsOf(levels)
  if (typeof found === 'string') return found
  const { uppers, lowers } = found
  switch (rule) {
    case 'top-less-bottom-of-an-axis':
      return topLessBottom(rule, found, limitMm)
    case 'largest-top-less-largest-bottom':
      return ends(rule, largest(uppers), largest(lowers), [...uppers, ...lowers], limitMm)
    case 'largest-top-less-smallest-bottom':
      return ends(rule, largest(uppers), smallest(lowers), [...uppers, ...lowers], limitMm)
  }
}

/** Mean at the top less mean at the bottom, mm, or why there is none. Levels in a land are left out. */
export function taperOfMeans(levels: readonly Level[]): number | ShapeReason {
  const found = endsOf(levels)
  if (typeof found === 'string') return found
  const mean = (stations: readonly StationFinding[]) =>
    stations.reduce((sum, s) => sum + s.diameterMm, 0) / stations.length
  return mean(found.uppers) - mean(found.lowers)
}

type Pair = ChosenPair<TaperRule> | ShapeReason

/** Stations of the outermost levels outside lands, on the axes that both have, in the same order. */
interface Ends {
  readonly uppers: readonly StationFinding[]
  readonly lowers: readonly StationFinding[]
}

function endsOf(all: readonly Level[]): Ends | ShapeReason {
  const levels = all.filter((level) => !level.land)
  const top = levels[0]
  const bottom = levels[levels.length - 1]
  if (!top || !bottom) return 'no-readings'
  if (top === bottom) return 'one-level-on-every-axis'
  const pairs = top.stations.flatMap((upper) => {
    const lower = bottom.stations.find((s) => s.axisDegrees === upper.axisDegrees)
    return lower ? [{ upper, lower }] : []
  })
  if (pairs.length === 0) return 'no-common-axis'
  return { uppers: pairs.map(({ upper }) => upper), lowers: pairs.map(({ lower }) => lower) }
}

function betweenLevels(rule: TaperRule, all: readonly Level[], limitMm: number | undefined): Pair {
  const levels = all.filter((level) => !level.land)
  if (levels.length === 0) return 'no-readings'
  const byAxis = new Map<number, StationFinding[]>()
  for (const station of levels.flatMap((level) => level.stations)) {
    const axis = byAxis.get(station.axisDegrees)
    if (axis) axis.push(station)
    else byAxis.set(station.axisDegrees, [station])
  }
  const axes = [...byAxis.values()].filter((stations) => stations.length >= 2)
  let worst: { upper: StationFinding; lower: StationFinding } | undefined
  let size = -1
  for (const stations of axes) {
    const a = largest(stations)
    const b = smallest(stations)
    if (a.diameterMm - b.diameterMm <= size) continue
    size = a.diameterMm - b.diameterMm
    worst = a.depthMm <= b.depthMm ? { upper: a, lower: b } : { upper: b, lower: a }
  }
  if (!worst) return 'one-level-on-every-axis'
  return {
    rule,
    first: worst.upper,
    second: worst.lower,
    among: axes.flat(),
    m: Math.max(...axes.map((stations) => stations.length)),
    groups: axes.length,
    kind: 'size',
    judged: 'size',
    widest: true,
    limitMm,
  }
}

function topLessBottom(rule: TaperRule, { uppers, lowers }: Ends, limitMm: number | undefined): Pair {
  const pairs = uppers.flatMap((upper, index) => {
    const lower = lowers[index]
    return lower ? [{ upper, lower }] : []
  })
  const size = (p: { upper: StationFinding; lower: StationFinding }) =>
    Math.abs(p.upper.diameterMm - p.lower.diameterMm)
  const worst = pairs.reduce((a, b) => (size(b) > size(a) ? b : a))
  return {
    rule,
    first: worst.upper,
    second: worst.lower,
    among: pairs.flatMap((pair) => [pair.upper, pair.lower]),
    m: 2,
    groups: pairs.length,
    kind: 'size',
    judged: 'size',
    widest: true,
    limitMm,
  }
}

function ends(
  rule: TaperRule,
  first: StationFinding,
  second: StationFinding,
  among: readonly StationFinding[],
  limitMm: number | undefined,
): Pair {
  return {
    rule,
    first,
    second,
    among,
    m: among.length,
    groups: 1,
    kind: 'signed',
    judged: 'size',
    widest: rule === 'largest-top-less-smallest-bottom' && first.diameterMm > second.diameterMm,
    limitMm,
  }
}

function levelMeans(rule: TaperRule, { uppers, lowers }: Ends, limitMm: number | undefined): Finding {
  const share = 1 / uppers.length
  const terms = [
    ...uppers.map((s) => ({ factor: share, contributions: s.contributions })),
    ...lowers.map((s) => ({ factor: -share, contributions: s.contributions })),
  ]
  let value = 0
  for (const s of uppers) value += s.diameterMm * share
  for (const s of lowers) value -= s.diameterMm * share
  const combined = combine(terms)
  const u = expanded(combined)
  const [larger, smaller] = value < 0 ? [lowers, uppers] : [uppers, lowers]
  return {
    known: true,
    rule,
    valueMm: value,
    lowMm: value - u,
    highMm: value + u,
    interval: 'linear',
    larger: place(largest(larger)),
    smaller: place(smallest(smaller)),
    ...(limitMm === undefined ? {} : judgeSize({ value, ...combined }, limitMm)),
  }
}

function judgeSize(
  y: { value: number; standardUncertainty: number; degreesOfFreedom: number },
  limitMm: number,
) {
  const p = probabilities(y, { min: -limitMm, max: limitMm })
  const outside = 1 - p.inside
  const verdict = p.inside >= 0.95 ? 'inside' : outside >= 0.95 ? 'above' : 'too-close'
  const lean = outside > p.inside ? 'above' : 'inside'
  return { limitMm, verdict, lean, probabilityAbove: outside } as const
}
