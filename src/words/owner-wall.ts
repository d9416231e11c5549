import type { BoreFinding, Place } from '../core/findings'
import type { Wear } from '../core/outlook/wear'
import { unitText } from './length-unit'
import {
  amountWithDoubt,
  depth,
  differenceWithDoubt,
  inMicrons,
  microns,
  size,
  sizeWithDoubt,
  sizeWithUnit,
} from './numbers'
import { type OwnerEvidence, stationAt } from './owner-evidence'
import { acrossText, standsOut } from './owner-places'
import { lookAt, type OwnerPart } from './owner-step'
import { ownerWords } from './owner-words'
import { shapeFigure } from './shape-rows'
import { words } from './words'

/** What it was when new, what it is now, and how much that is in hairs. */
export function nowStep(evidence: OwnerEvidence): OwnerPart {
  const { finding, survey, wear } = evidence
  const said = ownerWords.now
  const largest = stationAt(finding, finding.largest)
  const now = largest
    ? `${sizeWithDoubt(largest.diameterMm, largest.expandedMm)} ${unitText()}`
    : words.findings.notYet
  const [least, most] = newSizes(finding)
  const isKnown = least !== undefined || most !== undefined
  return {
    topic: 'now',
    sentence:
      least !== undefined && most !== undefined
        ? said.between(size(least), sizeWithUnit(most), now)
        : least !== undefined
          ? said.least(sizeWithUnit(least), now)
          : said.alone(now),
    beside: [
      ...(isKnown ? [] : [said.notEntered]),
      ...(finding.blunders.length > 0 ? [said.slip] : []),
      said.doubt,
      ...(survey.hoursRun === 0 ? [said.isNew] : []),
      ...(wear ? grownTexts(wear, evidence) : []),
    ],
    look: lookAt(wear?.largest ?? finding.largest, true),
    rows: ['largest', 'smallest', ...wearRows(evidence)],
  }
}

/** The sizes of a new one, as far as they are entered. */
function newSizes({ pair }: Pick<BoreFinding, 'pair'>): [number | undefined, number | undefined] {
  return [pair?.minMm, pair?.kind === 'wear' ? pair.newMaxMm : pair?.maxMm]
}

/** The rows of wear among the findings that the sentences take their figures from. */
export function wearRows({ growth, wear }: OwnerEvidence): string[] {
  const index = wear ? growth.wear.indexOf(wear) : -1
  return index < 0 ? [] : [`wear:${index}`]
}

function grownTexts(wear: Wear, { bore, finding }: OwnerEvidence): string[] {
  const { grown, grownNot } = ownerWords.now
  const { largest, since, surveyId } = wear
  const { lowMm, highMm, wearMm, expandedMm } = largest
  if (since !== 'new-band' && lowMm <= 0) return [grownNot(differenceWithDoubt(wearMm, expandedMm))]
  const figure =
    since === 'new-band'
      ? words.growth.range(microns(lowMm, { sign: true }), inMicrons(highMm, { sign: true }))
      : amountWithDoubt(wearMm, expandedMm)
  const isNew = bore.surveys.find(({ id }) => id === surveyId)?.hoursRun === 0
  const key = since === 'survey' ? (isNew ? 'whenNew' : 'since') : since
  return [grown[key](figure), ...(finding.blunders.length > 0 ? [] : hairs(lowMm, highMm))]
}

/** A hair of the head, mm: common practice, no published source. */
const hairMm = 0.07

/** An interval of growth set against a hair, and no more said than both its ends allow. */
function hairs(lowMm: number, highMm: number): string[] {
  const said = ownerWords.now.hairs
  if (highMm <= 0) return []
  const whole = Math.floor(lowMm / hairMm)
  if (whole >= 1) return [said.more(whole)]
  if (highMm < hairMm / 2) return [said.half]
  if (highMm < hairMm) return [said.one]
  return lowMm > hairMm / 2 && highMm < hairMm * 1.5 ? [said.about] : []
}

/** Where it is wide and where tight, which way it is oval, and how it changes from end to end. */
export function shapeStep({ finding }: OwnerEvidence): OwnerPart {
  const said = ownerWords.shape
  const [oval, taper] = [finding.ovality[0], finding.taper[0]]
  return {
    topic: 'shape',
    sentence: placesText(finding),
    beside: [
      ...ovalTexts(finding),
      ...(taper?.known ? [standsOut(taper) ? said.taper(shapeFigure(taper)) : said.taperOpen] : []),
      ...(standsOut(oval) || standsOut(taper) ? [said.interval] : []),
    ],
    look: lookAt(standsOut(taper) || !oval?.known ? finding.largest : oval.larger),
    rows: ['largest', 'smallest', 'ovality', 'oval', 'taper', 'depth-form'],
  }
}

/** Depths are told apart only where a taper stands out, and directions only where an oval does. */
function placesText(finding: BoreFinding): string {
  const said = ownerWords.shape
  const { largest, smallest } = finding
  const oval = finding.ovality[0]
  if (largest && smallest && standsOut(finding.taper[0])) {
    return said.places(placeIn(finding, largest), placeIn(finding, smallest))
  }
  if (!oval?.known || !standsOut(oval)) return said.even
  const { larger, smaller } = oval
  return larger.depthMm === smaller.depthMm
    ? said.ovalOnly(depth(larger.depthMm), acrossText(larger.axisDegrees), acrossText(smaller.axisDegrees))
    : said.even
}

function placeIn({ levels, ovality }: BoreFinding, { depthMm, axisDegrees }: Place): string {
  const said = ownerWords.shape
  const level = levels.find((one) => one.depthMm === depthMm)
  const isOval = standsOut(ovality[0]) && (level?.ovality?.lowMm ?? 0) > 0
  return isOval ? said.place(depth(depthMm), acrossText(axisDegrees)) : said.down(depth(depthMm))
}

function ovalTexts({ ovality: [oval], widestOval }: BoreFinding): string[] {
  const said = ownerWords.shape
  if (!oval?.known) return [said.oneAxis]
  if (!standsOut(oval)) return [said.ovalOpen]
  const direction = widestOval?.longAxisDegrees
  // A direction that may as well be the next one is none.
  const isSure = direction !== undefined && (widestOval?.longAxisExpandedDegrees ?? 90) < 22.5
  return [
    said.oval(shapeFigure(oval), depth(oval.larger.depthMm)),
    ...(isSure ? [said.longest(acrossText(direction))] : []),
  ]
}
