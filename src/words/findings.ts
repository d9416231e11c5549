import type {
  BoreFinding,
  Conformity,
  Difference,
  Findings,
  LimitPair,
  Place,
  ShapeFinding,
  StationFinding,
  Verdict,
} from '../core/findings'
import type { OvalityRule, TaperRule } from '../core/measured'
import { depthFormRow, ovalRow } from './form-rows'
import { gradesRow } from './grade-rows'
import { ruleText } from './notes'
import {
  chances,
  depth,
  differenceWithDoubt,
  differenceWithInterval,
  inMicrons,
  isAboutEven,
  placeText,
  plusMinusMicrons,
  size,
  sizeWithDoubt,
} from './numbers'
import type { Row } from './row'
import { words } from './words'

export { cautions, noteText, noteTexts, ruleText } from './notes'
export { problemPlace, problemText } from './problems'
export { readOut } from './read-out'
export type { Bar, Row } from './row'

type Shape = ShapeFinding<OvalityRule> | ShapeFinding<TaperRule>

/** The findings of a bore in the order in which they are read; none without a counted reading. */
export function findingRows(finding: BoreFinding, findings: Findings): Row[] {
  const counted = finding.stations.filter((s) => s.counted)
  if (counted.length === 0) return []
  const judged = finding.role === 'of-this-engine'
  return [
    ...extremeRow('largest', words.findings.largest, finding, finding.largest),
    ...extremeRow('smallest', words.findings.smallest, finding, finding.smallest),
    ...gradesRow(finding),
    ...shapeRows('ovality', words.findings.ovality, finding.ovality, judged),
    ...ovalRow(finding),
    ...shapeRows('taper', words.findings.taper, finding.taper, judged),
    ...depthFormRow(finding),
    ...widestMeanRow(finding),
    ...finding.differences.flatMap((d) => differenceRows(d, findings)),
  ]
}

function extremeRow(
  id: 'largest' | 'smallest',
  name: string,
  { stations, pair, role }: BoreFinding,
  place: Place | undefined,
): Row[] {
  const station = place && stations.find((s) => s.counted && samePlace(s, place))
  if (!place || !station) return []
  const { diameterMm: value, expandedMm, conformity } = station
  const row = {
    id,
    name,
    rank: 'main',
    place,
    placeText: placeText(place),
    figure: sizeWithDoubt(value, expandedMm),
  } as const
  if (role === 'for-comparison') return [{ ...row, detail: '' }]
  if (id === 'smallest' && pair?.kind === 'wear') return [{ ...row, detail: limitText(id, pair) }]
  const limit = id === 'largest' ? pair?.maxMm : pair?.minMm
  return [
    {
      ...row,
      detail: joined(limitText(id, pair), conformity && chanceText(conformity)),
      ...(conformity ? marked(conformity.verdict) : {}),
      ...(limit === undefined
        ? {}
        : { bar: { low: value - expandedMm, value, high: value + expandedMm, limit } }),
    },
  ]
}

function limitText(id: 'largest' | 'smallest', pair: LimitPair | undefined): string {
  const { limits } = words.findings
  const limit = id === 'largest' ? pair?.maxMm : pair?.minMm
  if (!pair || limit === undefined) return limits.none
  if (pair.kind === 'wear')
    return id === 'largest' ? limits.wear(size(limit)) : limits.minNotJudged(size(limit))
  if (pair.kind === 'grade') {
    const grade = pair.gradeName ?? ''
    return id === 'largest' ? limits.gradeMax(grade, size(limit)) : limits.gradeMin(grade, size(limit))
  }
  return id === 'largest' ? limits.max(size(limit)) : limits.min(size(limit))
}

function chanceText({ lean, leanProbability }: Conformity): string {
  const { chance } = words.findings
  return isAboutEven(leanProbability) ? chance.even : chance[lean](chances(leanProbability))
}

function shapeRows(
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
  const { limits, notYet, why } = words.findings
  const { limitMm } = shape
  const limit = limitMm === undefined ? limits.none : limits.shape(inMicrons(limitMm))
  const rule = joined(judged ? limit : undefined, ruleText(shape.rule))
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
function shapeFigure(shape: Extract<Shape, { readonly known: true }>): string {
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

function widestMeanRow({ levels }: BoreFinding): Row[] {
  const [first, ...rest] = levels
  if (!first) return []
  const widest = rest.reduce((a, b) => (b.meanMm > a.meanMm ? b : a), first)
  return [
    {
      id: 'widest-mean',
      name: words.findings.widestMean,
      rank: 'main',
      placeText: depth(widest.depthMm),
      figure: sizeWithDoubt(widest.meanMm, widest.meanExpandedMm),
      detail: words.findings.meanOf(widest.axesDegrees.length),
    },
  ]
}

function differenceRows(difference: Difference, findings: Findings): Row[] {
  const { largest, mean, stations, asMadeExpandedMm: asMade, againstBoreId } = difference
  const other = findings.bores.find((bore) => bore.boreId === againstBoreId)
  if (!other) throw new Error(`findingRows: no bore ${againstBoreId} to compare with`)
  const said = words.findings
  const both = said.stationsBoth(stations.length)
  return [
    {
      id: `difference:${againstBoreId}`,
      name: said.difference(other.boreName),
      rank: 'main',
      place: { depthMm: largest.depthMm, axisDegrees: largest.axisDegrees },
      placeText: placeText(largest),
      figure: differenceWithDoubt(largest.differenceMm, largest.expandedMm),
      detail: joined(
        both,
        stations.length > 1 ? said.largestRead : undefined,
        asMade === undefined ? undefined : said.asMade(plusMinusMicrons(asMade)),
      ),
    },
    {
      id: `mean-difference:${againstBoreId}`,
      name: said.meanDifference(other.boreName),
      rank: 'main',
      figure: differenceWithDoubt(mean.differenceMm, mean.expandedMm),
      detail: both,
    },
  ]
}

function marked(verdict: Verdict): { verdict: Verdict; verdictText: string } {
  return { verdict, verdictText: words.marks[verdict] }
}

/** The word for how a station stands. */
export function markText(station: StationFinding): string {
  if (!station.counted) return words.marks.blocked
  return station.conformity ? words.marks[station.conformity.verdict] : words.marks.none
}

function samePlace(a: Place, b: Place): boolean {
  return a.depthMm === b.depthMm && a.axisDegrees === b.axisDegrees
}

function joined(...parts: readonly (string | undefined)[]): string {
  return parts.filter((part) => part !== undefined && part !== '').join(' · ')
}
