import type { KnownDecision } from '../core/decision/decision'
import type { DecisionFacts, FactName } from '../core/decision/decision-facts'
import type { Evidence } from '../core/decision/evidence'
import { roomToHoneMm } from '../core/decision/facts-of'
import { isScannedUncleaned, surfaceMeaning } from '../core/decision/surface-fact'
import type { BoreFinding, Place, ShapeFinding } from '../core/findings'
import type { OvalityRule, TaperRule } from '../core/measured'
import type { ClearanceEnd, Fit } from '../core/piston/fits'
import { decisionWords } from './decision-words'
import {
  differenceWithDoubt,
  differenceWithInterval,
  inMicrons,
  inTenthsOfMicrons,
  microns,
  percent,
  placeText,
  plain,
  plusMinusMicrons,
  sizeWithDoubt,
} from './numbers'
import { oversizeText } from './oversize'
import { pistonNamed } from './piston-names'
import { surfacePlaceText } from './surface'
import { words } from './words'

type Shape = ShapeFinding<OvalityRule> | ShapeFinding<TaperRule>
type Told = string | ((...figures: readonly string[]) => string)

/** A reason for a decision as a sentence, with its figures. Throws for a word that is no reason: our own mistake. */
export function reasonText(
  evidence: Evidence,
  { oversizeMm }: KnownDecision,
  fact: FactName,
  is: DecisionFacts[FactName],
): string {
  const said: Readonly<Record<string, Readonly<Record<string, Told>>>> = decisionWords.reasons
  const text = said[fact]?.[is]
  if (text === undefined) throw new Error(`reasonText: no words for ${fact} that is ${is}`)
  if (typeof text === 'string') return text
  const told = text(...figuresOf(evidence, fact, is, oversizeMm))
  return fact === 'size' ? [told, ...wornText(evidence)].join(' ') : told
}

function figuresOf(
  evidence: Evidence,
  fact: FactName,
  is: DecisionFacts[FactName],
  oversizeMm: number | undefined,
): string[] {
  const { finding, growth, pistons, measured, boring } = evidence
  switch (fact) {
    case 'surface':
      return [surfaceText(evidence, is)]
    case 'size':
      return [sizeText(finding, is)]
    case 'ovality':
    case 'taper':
      return shapeTexts(finding[fact][0], fact)
    case 'plating':
      return [percent(growth.wear[0]?.platingShare?.oneSide ?? 0)]
    case 'clearance':
      return fitTexts(pistons.atHand, measured)
    case 'otherPiston':
      return fitTexts(pistons.others[0], measured)
    case 'outlook': {
      const hours = growth.outlook?.known ? growth.outlook.earliestHours : undefined
      return hours === undefined ? [] : [plain(Math.floor(hours), 0)]
    }
    case 'honing':
      return [inMicrons(Math.floor((roomToHoneMm(evidence) ?? 0) * 1000) / 1000)]
    case 'oversize':
      return [oversizeText(oversizeMm ?? boring.oversizeMm ?? 0)]
    case 'readings':
    case 'stations':
    case 'grounds':
    case 'ringGap':
    case 'wall':
      return []
  }
}

/** The surface findings that have this meaning, each with its place; stuck metal that only a scan tells of. */
function surfaceText({ finding, bore }: Evidence, is: DecisionFacts[FactName]): string {
  const found = finding.surface
    .filter((one) => surfaceMeaning(one, bore) === is)
    .map((one) => words.surface.place(words.surface.kinds[one.kind], surfacePlaceText(one)))
  const isByScan = is === 'covered' && isScannedUncleaned(bore)
  return words.app.and(isByScan ? [...found, decisionWords.scannedUncleaned] : found)
}

function sizeText(
  { stations, largest, smallest, verdict }: BoreFinding,
  is: DecisionFacts[FactName],
): string {
  const isSmall = is === 'below' || is === 'under-new'
  const wanted: Place | undefined = isSmall
    ? smallest
    : verdict.known && is === 'above'
      ? verdict.deciding
      : largest
  const station = stations.find(
    (s) => s.counted && s.depthMm === wanted?.depthMm && s.axisDegrees === wanted.axisDegrees,
  )
  if (!station) throw new Error('reasonText: a size without a station')
  return decisionWords.at(sizeWithDoubt(station.diameterMm, station.expandedMm), placeText(station))
}

function wornText({ growth }: Evidence): string[] {
  const share = growth.wear[0]?.allowedShare
  if (!share) return []
  const [low, high] = [percent(Math.max(0, share.low)), percent(Math.max(0, share.high))]
  return [decisionWords.worn(low === high ? low : words.surface.between(low, high))]
}

/** Taper as it is set against its limit, by its size. */
function shapeTexts(shape: Shape | undefined, fact: 'ovality' | 'taper'): string[] {
  if (!shape?.known) return []
  const { valueMm, lowMm, highMm, interval, limitMm, limitFrom } = shape
  const isTurned = fact === 'taper' && valueMm < 0
  const [low, value, high] = isTurned ? [-highMm, -valueMm, -lowMm] : [lowMm, valueMm, highMm]
  const figure =
    interval === 'linear'
      ? differenceWithDoubt(value, (high - low) / 2)
      : differenceWithInterval(value, low, high)
  const written = limitFrom ? inTenthsOfMicrons : inMicrons
  return [figure, limitMm === undefined ? '' : written(limitMm)]
}

function fitTexts(fit: Fit | undefined, measured: Evidence['measured']): string[] {
  if (!fit?.least || !fit.most) return []
  const { one, range } = decisionWords.clearance
  const written = ({ valueMm, expandedMm }: ClearanceEnd) =>
    one(microns(valueMm), plusMinusMicrons(expandedMm))
  return [pistonNamed(fit.pistonId, measured), range(written(fit.least), written(fit.most))]
}
