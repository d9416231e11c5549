import './decision-part.css'
import { Suspense, useContext, useEffect, useMemo, useState } from 'react'
import { blockDecisionOf } from '../../core/decision/block-decision'
import { decisionFrom } from '../../core/decision/decision'
import { type Evidence, evidenceOf } from '../../core/decision/evidence'
import { type Sureness, surenessOf, usualSeed, usualTrials } from '../../core/decision/sureness'
import { pointAt } from '../../session/session'
import { blockDecisionTexts } from '../../words/block-decision'
import { decisionTexts, type ReasonText, surenessTexts } from '../../words/decision'
import { decisionWords } from '../../words/decision-words'
import { whatIfWords } from '../../words/what-if-words'
import { comeIntoView } from './come-into-view'
import type { OnBench } from './use-job'
import { WhatIfSlot } from './what-if-slot'

/** What to do with the bore on the bench, in a sentence; why, what would change it and what it rests on, folded. */
export function DecisionPart({ bench }: { readonly bench: OnBench }) {
  const { job, findings, finding } = bench
  const evidence = useMemo(() => evidenceOf(job, findings, finding), [job, findings, finding])
  const decision = useMemo(() => decisionFrom(evidence), [evidence])
  const block = useMemo(() => blockDecisionOf(job, findings), [job, findings])
  const sureness = useSureness(evidence)
  const texts = decisionTexts({ evidence, decision })
  if (!texts) return null
  const said = decisionWords
  const beneath = [...texts.beneath, ...surenessTexts(decision, sureness)]
  return (
    <section className="decision" aria-label={said.title}>
      {block ? (
        <p className="decision-outcome" aria-live="polite">
          {blockDecisionTexts(job, block).join(' ')}
        </p>
      ) : null}
      <p className={block ? 'decision-own' : 'decision-outcome'} aria-live="polite">
        {block ? said.byItself(finding.boreName, texts.headline) : texts.headline}
      </p>
      {beneath.map((text) => (
        <p key={text} className="lean">
          {text}
        </p>
      ))}
      {decision.known ? (
        <details className="other-rules" onToggle={comeIntoView}>
          <summary>{said.why}</summary>
          {texts.how.map((text) => (
            <p key={text}>{text}</p>
          ))}
          <Reasons reasons={texts.reasons} />
          <Listed title={said.changesTitle} texts={texts.changes} />
          <Listed title={said.hintsTitle} texts={texts.hints} />
          <Listed title={said.cautionsTitle} texts={texts.cautions} />
        </details>
      ) : null}
      {decision.known ? <TryOut evidence={evidence} /> : null}
    </section>
  )
}

/** A place that opens, where the decision is tried out. */
function TryOut({ evidence }: { readonly evidence: Evidence }) {
  const WhatIf = useContext(WhatIfSlot)
  const [isOpen, setOpen] = useState(false)
  return (
    <details className="other-rules" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{whatIfWords.title}</summary>
      {isOpen ? (
        <Suspense fallback={null}>
          <WhatIf evidence={evidence} />
        </Suspense>
      ) : null}
    </details>
  )
}

/** A reason leads to the row that holds its figures. */
function Reasons({ reasons }: { readonly reasons: readonly ReasonText[] }) {
  return (
    <div className="decision-list">
      <h3>{decisionWords.reasonsTitle}</h3>
      <ul>
        {reasons.map(({ text, decides, row, place }) => (
          <li key={text} className={decides ? 'decides' : undefined}>
            {row === undefined ? (
              text
            ) : (
              <button
                type="button"
                className="decision-reason"
                title={decisionWords.toRow}
                onClick={({ currentTarget }) => {
                  if (place) {
                    pointAt({ depthMm: place.depthMm, angleDegrees: place.axisDegrees, from: 'findings' })
                  }
                  showRow(currentTarget, row)
                }}
              >
                {text}
              </button>
            )}
          </li>
        ))}
      </ul>
    </div>
  )
}

/** The row among the findings beside it, brought into view with the focus on it. */
function showRow(from: Element, row: string): void {
  const proof = from.closest('.proof')
  const found =
    proof?.querySelector<HTMLElement>(`[data-row="${CSS.escape(row)}"]`) ??
    proof?.querySelector<HTMLElement>(`[data-row="${CSS.escape(`${row.split(':')[0]}:others`)}"]`)
  if (!found) return
  found.closest('details')?.setAttribute('open', '')
  found.scrollIntoView({ block: 'center' })
  const target = found.querySelector<HTMLElement>('button') ?? found
  if (target === found) found.tabIndex = -1
  target.focus({ preventScroll: true })
}

function Listed({ title, texts }: { readonly title: string; readonly texts: readonly string[] }) {
  if (texts.length === 0) return null
  return (
    <div className="decision-list">
      <h3>{title}</h3>
      <ul>
        {texts.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </div>
  )
}

/** How sure the decision is, worked out in short steps so that no key waits for it. */
function useSureness(evidence: Evidence): Sureness | undefined {
  const [found, setFound] = useState<{ readonly of: Evidence; readonly sureness: Sureness | undefined }>()
  useEffect(() => {
    if (evidence.finding.role !== 'of-this-engine') return
    const steps = surenessOf(evidence, usualTrials, usualSeed)
    let timer = 0
    const next = () => {
      const step = steps.next()
      if (step.done) setFound({ of: evidence, sureness: step.value })
      else timer = window.setTimeout(next)
    }
    timer = window.setTimeout(next)
    return () => window.clearTimeout(timer)
  }, [evidence])
  return found?.of === evidence ? found.sureness : undefined
}
