import type { LimitPair, Place, SurfaceFound } from '../core/findings'
import { surfaceWidthDegrees } from '../core/surface-findings/surface-place'
import { inMicrons, percent, plain, size, sizeWithUnit } from './numbers'
import { type OwnerEvidence, stationAt } from './owner-evidence'
import { lookAt, type OwnerPart } from './owner-step'
import { wearRows } from './owner-wall'
import { ownerWords } from './owner-words'
import { shapeFigure } from './shape-rows'
import { surfacePlaceText } from './surface'
import { words } from './words'

/** What ends it or is used up, what is left, and when it would meet its limit. */
export function usedStep(evidence: OwnerEvidence): OwnerPart {
  const { finding, wear } = evidence
  const stop = finding.surface.find((found) => found.stop !== undefined)
  const over = overTexts(evidence)
  const share = shareTexts(evidence)
  const [sentence = standingText(evidence), ...others] = [
    ...(stop ? [stopText(stop)] : []),
    ...over,
    ...(over.length > 0 ? share.slice(0, 1) : share),
  ]
  const needsStanding = stop !== undefined && over.length === 0 && share.length === 0
  return {
    topic: 'used',
    sentence,
    beside: [
      ...others,
      ...(needsStanding ? [standingText(evidence)] : []),
      ...platingTexts(evidence),
      ...outlookTexts(evidence),
    ],
    look: stop ? lookAt(middleOf(stop)) : lookAt(wear?.allowedShare ?? finding.largest),
    rows: ['largest', ...wearRows(evidence), 'ovality', 'taper', 'outlook'],
  }
}

function stopText(found: SurfaceFound): string {
  const { stops } = ownerWords.used
  return found.stop === undefined
    ? ''
    : stops[found.stop](surfacePlaceText(found), words.surface.kinds[found.kind])
}

function middleOf(found: SurfaceFound): Place {
  return {
    depthMm: (found.fromDepthMm + found.toDepthMm) / 2,
    axisDegrees: (found.fromDegrees + surfaceWidthDegrees(found) / 2) % 360,
  }
}

/** Limits that it is proven to be past. */
function overTexts({ finding }: OwnerEvidence): string[] {
  const said = ownerWords.used
  const { verdict, pair, ovality, taper } = finding
  const max = pair?.maxMm
  const min = pair?.minMm
  const isAbove = verdict.known && verdict.verdict === 'above'
  const isBelow = verdict.known && verdict.verdict === 'below'
  const shapes = ([['ovality', ovality[0]] as const, ['taper', taper[0]] as const] as const).flatMap(
    ([which, shape]) =>
      shape?.known && shape.verdict === 'above' && shape.limitMm !== undefined
        ? [said.shapeOver[which](shapeFigure(shape), inMicrons(shape.limitMm))]
        : [],
  )
  return [
    ...(isAbove && max !== undefined
      ? [pair?.kind === 'wear' ? said.over(sizeWithUnit(max)) : said.overNew(sizeWithUnit(max))]
      : []),
    ...(isBelow && min !== undefined ? [said.under(sizeWithUnit(min))] : []),
    ...shapes,
  ]
}

/** How much of the wear that the limit allows is used, and what that leaves. */
function shareTexts({ wear }: OwnerEvidence): string[] {
  const said = ownerWords.used
  const share = wear?.allowedShare
  if (!share) return []
  const [lowShare, highShare] = [Math.max(0, share.low), Math.max(0, share.high)]
  const [low, high] = [percent(lowShare), percent(highShare)]
  const used = low === high ? said.shareOne(low) : said.share(low, high)
  if (highShare >= 1) return [used, said.mayBeAll]
  const [most, least] = [restOf(lowShare), restOf(highShare)]
  return [used, low === high ? said.leftOne(least) : said.left(least, most)]
}

/** What the share as it is written leaves of the whole. */
function restOf(share: number): string {
  return percent(1 - Math.round(share * 100) / 100)
}

/** How it stands to its limits, where no share of the wear can be told. */
function standingText({ finding }: OwnerEvidence): string {
  const said = ownerWords.used
  const { verdict, pair } = finding
  if (!verdict.known) return said.none[verdict.why]
  if (verdict.verdict === 'inside') return insideText(pair)
  if (pair?.kind === 'wear' && pair.maxMm !== undefined) return said.tooClose(sizeWithUnit(pair.maxMm))
  return said.tooCloseNew
}

function insideText(pair: LimitPair | undefined): string {
  const said = ownerWords.used
  if (pair?.kind === 'wear' && pair.maxMm !== undefined) return said.insideLimit(sizeWithUnit(pair.maxMm))
  if (pair?.minMm !== undefined && pair.maxMm !== undefined) {
    return said.insideNew(size(pair.minMm), sizeWithUnit(pair.maxMm))
  }
  return said.notSaid
}

function platingTexts({ wear }: OwnerEvidence): string[] {
  const said = ownerWords.used
  const share = wear?.platingShare
  if (!share) return []
  return [
    said.plating(percent(share.bothSides), percent(share.oneSide)),
    said.platingDoubt(percent(share.low), percent(share.high)),
  ]
}

function outlookTexts({ finding, growth: { outlook } }: OwnerEvidence): string[] {
  const said = ownerWords.used
  const isOut = finding.verdict.known && finding.verdict.verdict === 'above'
  if (!outlook?.known || isOut) return []
  if (outlook.now) return stationAt(finding, outlook.place) ? [said.atLimit] : []
  if (outlook.earliestHours === undefined) return []
  return [said.earliest(sizeWithUnit(outlook.limitMm), plain(Math.floor(outlook.earliestHours), 0))]
}
