import type { ShapeFinding, ShapeLimit } from '../findings'
import type { OvalityRule, Spec, TaperRule } from '../measured'
import type { Level } from './level'

/**
 * The limit for ovality: the smaller of the number and the share of the bore that the spec gives. The bore's
 * size is the mean of its level means outside lands (of all levels where every one is in a land), mm; its own
 * doubt, parts in ten thousand, is left out. Own derivation: a share of a length is a length.
 */
export function ovalityLimit(spec: Spec, levels: readonly Level[]): ShapeLimit {
  return smallestOf([number(spec.ovalityLimitMm), ofBore(spec.ovalityLimitPerMm, levels)])
}

/** The limit for taper: the smallest of the number, the share of the bore and the share of the travel. */
export function taperLimit(spec: Spec, levels: readonly Level[]): ShapeLimit {
  const { taperLimitPerMmOfTravel: perMm, travelMm: lengthMm } = spec
  const given = smallestOf([
    number(spec.taperLimitMm),
    ofBore(spec.taperLimitPerMmOfBore, levels),
    perMm === undefined || lengthMm === undefined
      ? undefined
      : { limitMm: perMm * lengthMm, limitFrom: { of: 'travel', perMm, lengthMm } },
  ])
  return perMm !== undefined && lengthMm === undefined ? { ...given, limitOpen: 'no-travel' } : given
}

/** A finding with the limit it was judged by. While one that was given is open, it is not said to be inside. */
export function withLimit<Rule extends OvalityRule | TaperRule>(
  finding: ShapeFinding<Rule>,
  limit: ShapeLimit,
): ShapeFinding<Rule> {
  if (!finding.known || finding.verdict !== 'inside' || limit.limitOpen === undefined) {
    return { ...finding, ...limit }
  }
  const { verdict: _, lean: __, probabilityAbove: ___, ...unjudged } = finding
  return { ...unjudged, ...limit }
}

function number(limitMm: number | undefined): ShapeLimit | undefined {
  return limitMm === undefined ? undefined : { limitMm }
}

function ofBore(perMm: number | undefined, levels: readonly Level[]): ShapeLimit | undefined {
  const running = levels.filter((level) => !level.land)
  const measured = running.length > 0 ? running : levels
  if (perMm === undefined || measured.length === 0) return undefined
  const lengthMm = mean(measured.map((level) => mean(level.stations.map((s) => s.diameterMm))))
  return { limitMm: perMm * lengthMm, limitFrom: { of: 'bore', perMm, lengthMm } }
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}

function smallestOf(limits: readonly (ShapeLimit | undefined)[]): ShapeLimit {
  const given = limits.filter((limit) => limit !== undefined)
  const [first, ...others] = given
  if (!first) return {}
  const smallest = others.reduce((a, b) => ((b.limitMm ?? 0) < (a.limitMm ?? 0) ? b : a), first)
  return given.length > 1 ? { ...smallest, limitsGiven: given.length } : smallest
}
