import { blockDecisionOf } from '../core/decision/block-decision'
import { decisionFrom } from '../core/decision/decision'
import { evidenceOf } from '../core/decision/evidence'
import { type Sureness, usualSureness } from '../core/decision/sureness'
import type { BoreFinding, Findings } from '../core/findings'
import type { Measured } from '../core/measured'
import { blockDecisionTexts } from './block-decision'
import { type Decided, decisionTexts, surenessTexts } from './decision'
import { decisionWords } from './decision-words'
import type { Passage } from './passage'

/** A decision with how sure it is. */
export interface DecidedSurely extends Decided {
  readonly sureness: Sureness | undefined
}

/** The decision about a bore of this engine by its latest survey, with the usual trials; undefined for any other. */
export function decidedOf(
  measured: Measured,
  findings: Findings,
  finding: BoreFinding,
): DecidedSurely | undefined {
  if (finding.role !== 'of-this-engine' || !findings.bores.includes(finding)) return undefined
  const evidence = evidenceOf(measured, findings, finding)
  return { evidence, decision: decisionFrom(evidence), sureness: usualSureness(evidence) }
}

/** What to do with a bore, why, and what would change it, for the page of findings. */
export function decisionPassages(measured: Measured, findings: Findings, finding: BoreFinding): Passage[] {
  const made = decidedOf(measured, findings, finding)
  const texts = made && decisionTexts(made)
  if (!made || !texts) return []
  return [
    { kind: 'subheading', text: decisionWords.title },
    ...[texts.headline, ...texts.beneath, ...texts.how, ...surenessTexts(made.decision, made.sureness)].map(
      (text): Passage => ({ kind: 'paragraph', text }),
    ),
    ...listed(
      decisionWords.reasonsTitle,
      texts.reasons.map(({ text }) => text),
    ),
    ...listed(decisionWords.changesTitle, texts.changes),
    ...listed(decisionWords.hintsTitle, texts.hints),
    ...listed(decisionWords.cautionsTitle, texts.cautions),
  ]
}

function listed(title: string, items: readonly string[]): Passage[] {
  return items.length === 0
    ? []
    : [
        { kind: 'paragraph', text: decisionWords.listOf(title) },
        { kind: 'list', items },
      ]
}

/** What to do with an engine of several bores, for the page of findings. */
export function blockDecisionPassages(measured: Measured, findings: Findings): Passage[] {
  const block = blockDecisionOf(measured, findings)
  if (!block) return []
  return [
    { kind: 'subheading', text: decisionWords.block.title },
    ...blockDecisionTexts(measured, block).map((text): Passage => ({ kind: 'paragraph', text })),
  ]
}
