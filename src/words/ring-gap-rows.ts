import type { BoreFinding, Verdict } from '../core/findings'
import type { Measured } from '../core/measured'
import {
  type GapAtDepth,
  type GapTaper,
  type GapVerdict,
  type RingGaps,
  ringGapsOf,
} from '../core/ring/ring-gaps'
import { lengthUnit } from './length-unit'
import {
  chances,
  depth,
  differenceWithDoubt,
  doubtInMicrons,
  isAboutEven,
  length,
  lengthFigure,
  plusMinusMicrons,
} from './numbers'
import { pistonWords } from './piston-words'
import { type Bar, joined, type Row } from './row'
import { words } from './words'

type Known = Extract<RingGaps, { readonly known: true }>

/** The ring gaps of a survey against the manual's, and the taper that they tell; none without gaps. */
export function ringGapRows(measured: Measured, finding: BoreFinding): Row[] {
  const gaps = ringGapsOf(measured, finding)
  if (!gaps.known) return []
  return [gapRow(gaps), ...(gaps.taper ? [taperRow(gaps.taper)] : [])]
}

function gapRow(gaps: Known): Row {
  const said = pistonWords.gap
  const { least, most, standing } = gaps
  const [first] = gaps.gaps
  const row = { id: 'ring-gap', name: said.name, rank: 'main' } as const
  if (!least || !most) return { ...row, figure: first ? writtenWithUnit(first) : '', detail: said.onlyLand }
  const bar = barOf(gaps, least, most)
  return {
    ...row,
    placeText:
      least === most
        ? depth(least.depthMm)
        : words.findings.between(depth(most.depthMm), depth(least.depthMm)),
    figure:
      least.gapMm === most.gapMm ? writtenWithUnit(least) : said.range(written(least), writtenWithUnit(most)),
    detail: joined(
      windowText(gaps),
      standing?.verdict === 'too-close'
        ? isAboutEven(standing.leanProbability)
          ? words.findings.chance.even
          : said.leans[standing.lean](chances(standing.leanProbability))
        : undefined,
      said.each(doubtAsLength(least.expandedMm)),
      gaps.feelerAssumed ? said.typical : undefined,
    ),
    ...(standing ? { verdict: markOf[standing.verdict], verdictText: said.verdicts[standing.verdict] } : {}),
    ...(bar ? { bar } : {}),
  }
}

const markOf: Readonly<Record<GapVerdict, Verdict>> = {
  inside: 'inside',
  'too-small': 'below',
  'too-large': 'above',
  'too-close': 'too-close',
}

function written({ gapMm }: GapAtDepth): string {
  return lengthFigure(gapMm, 3)
}

function writtenWithUnit({ gapMm }: GapAtDepth): string {
  return length(gapMm, 3)
}

/** In mm as the gap is, no less than it was computed. */
function doubtAsLength(expandedMm: number): string {
  return lengthUnit() === 'inch'
    ? plusMinusMicrons(expandedMm).replace('± ', '')
    : length(doubtInMicrons(expandedMm) / 1000, 3)
}

function windowText({ minMm, maxMm, maxIs }: Known): string {
  const said = pistonWords.gap.window
  if (minMm === undefined && maxMm === undefined) return said.none
  return joined(
    minMm === undefined ? undefined : said.min(length(minMm, 3)),
    maxMm === undefined ? undefined : said.max[maxIs](length(maxMm, 3)),
  )
}

/** Against the limit that is nearer. */
function barOf({ minMm, maxMm }: Known, least: GapAtDepth, most: GapAtDepth): Bar | undefined {
  const toMin = minMm === undefined ? Number.POSITIVE_INFINITY : least.gapMm - minMm
  const toMax = maxMm === undefined ? Number.POSITIVE_INFINITY : maxMm - most.gapMm
  const [gap, limit] = toMin < toMax ? [least, minMm] : [most, maxMm]
  if (limit === undefined) return undefined
  return { low: gap.gapMm - gap.expandedMm, value: gap.gapMm, high: gap.gapMm + gap.expandedMm, limit }
}

function taperRow({ topMm, bottomMm, taperMm, expandedMm, standsOut, byGauge }: GapTaper): Row {
  const said = pistonWords.gap
  return {
    id: 'ring-gap:taper',
    name: said.taper,
    rank: 'main',
    figure: differenceWithDoubt(taperMm, expandedMm),
    detail: joined(
      said.taperBetween(depth(topMm), depth(bottomMm)),
      byGauge && said.byGauge(differenceWithDoubt(byGauge.taperMm, byGauge.expandedMm), byGauge.differs),
      standsOut ? undefined : said.coarse(plusMinusMicrons(expandedMm).replace('± ', '')),
    ),
  }
}
