import type { ShapeFinding, ShapeLimit } from '../core/findings'
import type { OvalityRule, TaperRule } from '../core/measured'
import { ruleText } from './notes'
import {
  chances,
  depth,
  differenceWithDoubt,
  differenceWithInterval,
  inMicrons,
  inTenthsOfMicrons,
  isAboutEven,
  placeText,
  plain,
  sizeWithUnit,
} from './numbers'
import { joined, marked, type Row } from './row'
import { words } from './words'

type Shape = ShapeFinding<OvalityRule> | ShapeFinding<TaperRule>

/** An out-of-round or a taper by the spec's rule with its limit, then by the others. */
export function shapeRows(
  id: 'ovality' | 'taper',
  name: string,
  [own, ...others]: readonly Shape[],
  judged: boolean,
): Row[] {
  return [
    ...(own ? [ownShapeRow(id, name, own, judged)] : []),
    ...others.flatMap((shape): Row[] => (shape.known ? [minorShapeRow(id, shape)] : [])),
  ]
}

function ownShapeRow(id: string, name: string, shape: Shape, judged: boolean): Row {
  const { notYet, why } = words.findings
  const { limitMm } = shape
  const rule = joined(judged ? shapeLimitText(shape) : undefined, ruleText(shape.rule))
  if (!shape.known) {
    return { id, name, rank: 'main', figure: notYet, detail: joined(why[shape.why], rule) }
  }
  const row = {
    id,
    name,
    rank: 'main',
    place: shape.larger,
    placeText: words.findings.between(placeText(shape.larger), placeText(shape.smaller)),
    figure: shapeFigure(shape),
  } as const
  if (!judged || limitMm === undefined) return { ...row, detail: rule }
  return {
    ...row,
    detail: joined(rule, shape.verdict === 'too-close' ? shapeLean(shape) : undefined),
    ...(shape.verdict ? marked(shape.verdict) : {}),
    bar: { ...asJudged(id, shape), limit: limitMm },
  }
}

/** The limit and how it came about, where it was not given as one number. */
function shapeLimitText({ limitMm, limitFrom, limitsGiven, limitOpen }: ShapeLimit): string {
  const { limits } = words.findings
  const open = limitOpen === undefined ? undefined : limits.noTravel
  if (limitMm === undefined) return open ?? limits.none
  const limit = limitFrom
    ? limits.share[limitFrom.of](
        inTenthsOfMicrons(limitMm),
        plain(limitFrom.perMm, 6),
        limitFrom.of === 'bore' ? sizeWithUnit(limitFrom.lengthMm) : depth(limitFrom.lengthMm),
      )
    : limits.shape(inMicrons(limitMm))
  return joined(limitsGiven === undefined ? limit : limits.smallestOf(limit, limitsGiven), open)
}

function minorShapeRow(id: string, shape: Extract<Shape, { readonly known: true }>): Row {
  return {
    id: `${id}:${shape.rule}`,
    name: words.findings.byRule(ruleText(shape.rule)),
    rank: 'minor',
    place: shape.larger,
    placeText: words.findings.between(placeText(shape.larger), placeText(shape.smaller)),
    figure: shapeFigure(shape),
    detail: '',
  }
}

/** A range with the interval it has; a plain difference with its U. */
export function shapeFigure(shape: Extract<Shape, { readonly known: true }>): string {
  if (shape.interval === 'linear') {
    return differenceWithDoubt(shape.valueMm, (shape.highMm - shape.lowMm) / 2)
  }
  const { low, value, high } = bySize(shape)
  return differenceWithInterval(value, low, high)
}

/**
 * A figure whose whole interval is negative as a size: the places say which is the larger. One whose
 * interval holds both signs keeps its sign.
 */
function bySize({ lowMm, valueMm, highMm }: Extract<Shape, { readonly known: true }>) {
  return highMm <= 0 && lowMm < 0
    ? { low: -highMm, value: -valueMm, high: -lowMm }
    : { low: lowMm, value: valueMm, high: highMm }
}

/** As it is set against its limit: taper by its size, out-of-round with its sign. */
function asJudged(id: string, shape: Extract<Shape, { readonly known: true }>) {
  const { lowMm: low, valueMm: value, highMm: high } = shape
  return id === 'taper' && value < 0 ? { low: -high, value: -value, high: -low } : { low, value, high }
}

function shapeLean({
  lean,
  probabilityAbove: p,
}: Extract<Shape, { readonly known: true }>): string | undefined {
  const { leans, chance } = words.findings
  if (p === undefined) return lean && leans[lean]
  if (isAboutEven(p)) return chance.even
  return p > 0.5 ? chance.above(chances(p)) : chance.inside(chances(1 - p))
}
