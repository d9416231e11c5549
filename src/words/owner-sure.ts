import type { BoreFinding, DepthSpan, ShapeFinding } from '../core/findings'
import type { OvalityRule, TaperRule } from '../core/measured'
import { chances, depth, inMicrons, isAboutEven, plusMinusMicrons } from './numbers'
import { type OwnerEvidence, stationAt } from './owner-evidence'
import { lookAt, type OwnerLook, type OwnerPart } from './owner-step'
import { ownerWords } from './owner-words'
import { shapeFigure } from './shape-rows'

/** How sure it is, what is too close to call, and what nobody measured. */
export function sureStep({ finding }: OwnerEvidence): OwnerPart {
  const said = ownerWords.sure
  const [sentence = said.notJudged, ...others] = [
    ...(finding.blunders.length > 0 ? [said.openQuestions] : []),
    ...tooCloseTexts(finding),
    ...sizeTexts(finding),
  ]
  const largest = stationAt(finding, finding.largest)
  const gaps = finding.notes.flatMap((note) => (note.code === 'no-reading-between' ? note.gaps : []))
  const has = (code: BoreFinding['notes'][number]['code']) => finding.notes.some((note) => note.code === code)
  return {
    topic: 'sure',
    sentence,
    beside: [
      ...others,
      ...(finding.provisional.length > 0 ? [said.provisional] : []),
      ...(largest ? [said.doubt(plusMinusMicrons(largest.expandedMm))] : []),
      ...gapTexts(gaps),
      ...(has('two-axes-can-miss-an-oval') ? [said.twoAxes] : []),
      ...(has('two-contacts-see-even-lobes-only') ? [said.bothSides] : []),
      ...(finding.surface.length === 0 ? [said.surfaceNote] : []),
    ],
    look: gapLook(gaps) ?? lookAt(finding.largest),
    rows: ['largest', 'ovality', 'taper'],
  }
}

/** What is too close to call is said first. */
function tooCloseTexts({ verdict, ovality, taper }: BoreFinding): string[] {
  const { tooClose, leans } = ownerWords.sure
  const size =
    verdict.known && verdict.verdict === 'too-close'
      ? [
          tooClose,
          isAboutEven(verdict.leanProbability)
            ? leans.even
            : leans[verdict.lean](chances(verdict.leanProbability)),
        ]
      : []
  return [...size, ...shapeText('ovality', ovality[0]), ...shapeText('taper', taper[0])]
}

function shapeText(
  which: 'ovality' | 'taper',
  shape: ShapeFinding<OvalityRule> | ShapeFinding<TaperRule> | undefined,
): string[] {
  if (!shape?.known || shape.verdict !== 'too-close' || shape.limitMm === undefined) return []
  return [ownerWords.sure.shapeTooClose[which](shapeFigure(shape), inMicrons(shape.limitMm))]
}

function sizeTexts({ verdict }: BoreFinding): string[] {
  if (!verdict.known || verdict.verdict === 'too-close') return []
  return [ownerWords.sure[verdict.verdict](chances(verdict.leanProbability))]
}

function widest(gaps: readonly DepthSpan[]): DepthSpan | undefined {
  const [first, ...others] = gaps
  const length = ({ fromDepthMm, toDepthMm }: DepthSpan) => toDepthMm - fromDepthMm
  return first && others.reduce((a, b) => (length(b) > length(a) ? b : a), first)
}

/** One gap or two are named, of more the widest. */
function gapTexts(gaps: readonly DepthSpan[]): string[] {
  const said = ownerWords.sure
  const ends = ({ fromDepthMm, toDepthMm }: DepthSpan) => [depth(fromDepthMm), depth(toDepthMm)] as const
  if (gaps.length <= 2) return gaps.map((gap) => said.gap(...ends(gap)))
  const most = widest(gaps)
  return most ? [said.widestGap(...ends(most))] : []
}

function gapLook(gaps: readonly DepthSpan[]): OwnerLook | undefined {
  const gap = widest(gaps)
  return gap && lookAt({ depthMm: (gap.fromDepthMm + gap.toDepthMm) / 2, axisDegrees: 0 })
}
