import type { BoreFinding, Findings } from '../core/findings'
import type { Measured } from '../core/measured'
import { blockSentence } from './block'
import { blockDecisionTexts } from './block-decision'
import { lengthUnit } from './length-unit'
import { plain } from './numbers'
import { adviceStep } from './owner-advice'
import { causesStep } from './owner-causes'
import { type OwnerEvidence, ownerEvidence } from './owner-evidence'
import { usedStep } from './owner-limits'
import type { OwnerPart, OwnerStep } from './owner-step'
import { sureStep } from './owner-sure'
import { nowStep, shapeStep } from './owner-wall'
import { ownerWords } from './owner-words'

/** How the wall is drawn beside the sentences: its form so many times too large, or flat. */
export type OwnerDrawing = { readonly exaggeration: number } | 'flat'

/**
 * What the owner of a bore is told, from what its readings prove: seven things, without readings up to three. Every figure is
 * one of the findings, or what a share leaves of the whole; nothing is said for sure that the figures leave open.
 */
export function ownerTalk(
  measured: Measured,
  findings: Findings,
  finding: BoreFinding,
  drawing: OwnerDrawing,
): readonly OwnerStep[] {
  const evidence = ownerEvidence(measured, findings, finding)
  if (!finding.stations.some(({ counted }) => counted)) return withoutSizes(evidence)
  const steps = termsOnce(
    [
      seenStep(drawing),
      nowStep(evidence),
      shapeStep(evidence),
      usedStep(evidence),
      sureStep(evidence),
      adviceStep(evidence),
      causesStep(evidence),
    ].map(headed),
  )
  // It names bores, so no trade term is looked for in it.
  const block = finding.role === 'of-this-engine' ? blockTexts(evidence) : []
  return steps.map((step) =>
    step.topic === 'advice' ? { ...step, beside: [...step.beside, ...block] } : step,
  )
}

/** How all bores of an engine stand, and what that means for it. */
function blockTexts({ measured, findings, block }: OwnerEvidence): readonly string[] {
  const standing = blockSentence(findings)
  return [
    ...(standing === undefined ? [] : [standing]),
    ...(block ? blockDecisionTexts(measured, block).slice(0, 1) : []),
  ]
}

function headed(part: OwnerPart): OwnerStep {
  return { ...part, heading: ownerWords.topics[part.topic] }
}

/** Without a size: what was seen on the wall, and what follows from that alone. */
function withoutSizes(evidence: OwnerEvidence): readonly OwnerStep[] {
  const { bore, finding, decision } = evidence
  const isScanned = (bore.scans?.length ?? 0) > 0
  const first: OwnerPart = {
    topic: 'seen',
    sentence: isScanned ? ownerWords.scanned : ownerWords.nothing,
    beside: [],
    look: { from: 'side', beside: false },
    rows: [],
  }
  const isMarked = finding.surface.some(({ stop }) => stop !== undefined)
  return termsOnce(
    [first, ...(isMarked ? [usedStep(evidence)] : []), ...(decision.known ? [adviceStep(evidence)] : [])].map(
      headed,
    ),
  )
}

function seenStep(drawing: OwnerDrawing): OwnerPart {
  const said = ownerWords.seen
  return {
    topic: 'seen',
    sentence: drawing === 'flat' ? said.flat : said.drawn(factor(drawing.exaggeration)),
    beside: [said.hair[lengthUnit()], said.colours, said.hatched],
    look: { from: 'side', beside: true },
    rows: [],
  }
}

/** As it is written on the picture. */
function factor(exaggeration: number): string {
  return plain(exaggeration, exaggeration < 10 ? 1 : 0)
}

/** Each trade term stands where it comes first and nowhere else. */
function termsOnce(steps: readonly OwnerStep[]): readonly OwnerStep[] {
  const said = new Set<string>()
  const once = (text: string) =>
    text.replace(/ \[([^\]]+)\]/g, (_, term: string) => {
      if (said.has(term)) return ''
      said.add(term)
      return ` (${term})`
    })
  return steps.map((step) => ({ ...step, sentence: once(step.sentence), beside: step.beside.map(once) }))
}
