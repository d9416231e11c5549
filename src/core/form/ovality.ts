import type { ShapeFinding, ShapeReason } from '../findings'
import { type GaugeKind, type OvalityRule, ovalityRules, type Spec } from '../measured'
import { type Level, largest, smallest } from './level'
import { type ChosenPair, rangeFinding } from './range-finding'
import { ovalityLimit, withLimit } from './shape-limit'

type Finding = ShapeFinding<OvalityRule>

/**
 * Ovality (out-of-round), a difference of diameters, by the spec's rule first and then by every other:
 * - largest less smallest at one level, the worst level named;
 * - |across − along| at one level, on the two named axes, the worst level named;
 * - pooled: largest over all levels across less smallest over all levels along, signed as printed; only
 *   where the spec names the axes.
 * Levels in a land are left out. Three contacts at 120° read the mean of a level and see no oval (own
 * derivation: lobes 2, 4, 5, 7 … drop out of their sum). ISO roundness (ISO 12181-1:2011) is a difference of radii, half as much
 * for a plain oval. Only the spec's own rule is set against the limit.
 */
export function ovality(levels: readonly Level[], spec: Spec, kind: GaugeKind): Finding[] {
  const chosen = spec.ovalityRule ?? ovalityRules[0]
  const others = ovalityRules.filter((rule) => rule !== chosen)
  return [chosen, ...others].map((rule) => ovalityBy(rule, levels, spec, kind))
}

/** Ovality by one rule, as for `ovality`. */
export function ovalityBy(rule: OvalityRule, levels: readonly Level[], spec: Spec, kind: GaugeKind): Finding {
  const limit = rule === (spec.ovalityRule ?? ovalityRules[0]) ? ovalityLimit(spec, levels) : {}
  if (kind === 'three-contact-micrometer') {
    return withLimit(unknown(rule, 'three-contacts-see-no-oval', limit.limitMm), limit)
  }
  return withLimit(byRule(rule, levels, spec, limit.limitMm), limit)
}

function byRule(
  rule: OvalityRule,
  levels: readonly Level[],
  spec: Spec,
  limitMm: number | undefined,
): Finding {
  const pair = ovalityPair(rule, levels, spec, limitMm)
  return typeof pair === 'string' ? unknown(rule, pair, limitMm) : rangeFinding(pair)
}

/** The two stations whose difference is the ovality by a rule, or why there are none. Levels in a land are left out. */
export function ovalityPair(
  rule: OvalityRule,
  all: readonly Level[],
  spec: Spec,
  limitMm: number | undefined,
): ChosenPair<OvalityRule> | ShapeReason {
  const levels = all.filter((level) => !level.land)
  if (levels.length === 0) return 'no-readings'
  switch (rule) {
    case 'largest-less-smallest-at-a-level':
      return atALevel(rule, levels, limitMm)
    case 'across-less-along-at-a-level':
      return acrossLessAlong(rule, levels, spec, limitMm)
    case 'pooled':
      return pooled(rule, levels, spec, limitMm)
  }
}

type Pair = ChosenPair<OvalityRule> | ShapeReason

function unknown(rule: OvalityRule, why: ShapeReason, limitMm: number | undefined): Finding {
  return { known: false, rule, why, ...(limitMm === undefined ? {} : { limitMm }) }
}

function atALevel(rule: OvalityRule, levels: readonly Level[], limitMm: number | undefined): Pair {
  const usable = levels.filter((level) => level.stations.length >= 2)
  const pairs = usable.map((level) => ({ first: largest(level.stations), second: smallest(level.stations) }))
  const worst = widest(pairs)
  if (!worst) return 'one-axis-at-every-level'
  return {
    rule,
    ...worst,
    among: usable.flatMap((level) => level.stations),
    m: Math.max(...usable.map((level) => level.stations.length)),
    groups: usable.length,
    kind: 'size',
    judged: 'size',
    widest: true,
    limitMm,
  }
}

function acrossLessAlong(
  rule: OvalityRule,
  levels: readonly Level[],
  spec: Spec,
  limitMm: number | undefined,
): Pair {
  const axes = namedAxes(levels, spec)
  if (!axes) return 'axes-not-named'
  const pairs = levels.flatMap((level) => {
    const x = level.stations.find((s) => s.axisDegrees === axes.x)
    const y = level.stations.find((s) => s.axisDegrees === axes.y)
    if (!x || !y) return []
    return [x.diameterMm >= y.diameterMm ? { first: x, second: y } : { first: y, second: x }]
  })
  const worst = widest(pairs)
  if (!worst) return 'named-axis-not-measured'
  return {
    rule,
    ...worst,
    among: pairs.flatMap((pair) => [pair.first, pair.second]),
    m: 2,
    groups: pairs.length,
    kind: 'size',
    judged: 'size',
    widest: true,
    limitMm,
  }
}

function pooled(rule: OvalityRule, levels: readonly Level[], spec: Spec, limitMm: number | undefined): Pair {
  // Which of two axes is X decides the sign, so it cannot be guessed.
  const axes = spec.ovalityAxesDegrees
  if (!axes) return 'axes-not-named'
  const on = (axis: number) => levels.flatMap((level) => level.stations.filter((s) => s.axisDegrees === axis))
  const across = on(axes.x)
  const along = on(axes.y)
  if (across.length === 0 || along.length === 0) return 'named-axis-not-measured'
  const among = [...across, ...along]
  return {
    rule,
    first: largest(across),
    second: smallest(along),
    among,
    m: among.length,
    groups: 1,
    kind: 'signed',
    judged: 'signed',
    widest: true,
    limitMm,
  }
}

/** The axes a rule calls across and along: as named, else the only two there are. */
function namedAxes(levels: readonly Level[], spec: Spec): { x: number; y: number } | undefined {
  if (spec.ovalityAxesDegrees) return spec.ovalityAxesDegrees
  const axes = [...new Set(levels.flatMap((level) => level.stations.map((s) => s.axisDegrees)))]
  const [x, y] = axes.sort((a, b) => a - b)
  return axes.length === 2 && x !== undefined && y !== undefined ? { x, y } : undefined
}

function widest<P extends { first: { diameterMm: number }; second: { diameterMm: number } }>(
  pairs: readonly P[],
): P | undefined {
  const size = (p: P) => p.first.diameterMm - p.second.diameterMm
  return pairs.reduce<P | undefined>(
    (best, pair) => (best && size(best) >= size(pair) ? best : pair),
    undefined,
  )
}
