import { lazy, type ReactNode, Suspense } from 'react'
import type { Row } from '../../words/findings'
import { cautions, findingRows, noteTexts, temperatureSentence } from '../../words/findings'
import { growthRows } from '../../words/growth-rows'
import { surfaceSentence } from '../../words/surface'
import {
  aboutSentence,
  leanSentence,
  provisionalSentence,
  settleSentence,
  sureSentence,
  verdictSentence,
} from '../../words/verdict'
import { words } from '../../words/words'
import { today } from '../today'
import { BlockTable } from './BlockTable'
import { BudgetTable } from './BudgetTable'
import { FindingRow } from './FindingRow'
import { Questions } from './Questions'
import type { OnBench } from './use-job'

/** Seldom there with the first number: fetched once there is a piston, a ring gap or an oversize to speak of. */
const PistonFindings = lazy(async () => ({ default: (await import('./PistonFindings')).PistonFindings }))
/** Nobody waits for it before the first number. */
const DecisionPart = lazy(async () => ({ default: (await import('./DecisionPart')).DecisionPart }))

/** Right: questions, the verdict in one sentence, its lean, the findings, and what was not shown. */
export function Proof({
  bench,
  simulation,
  onOpen,
}: {
  readonly bench: OnBench
  readonly simulation: ReactNode
  /** The place of a finding was chosen. */
  readonly onOpen?: () => void
}) {
  const { finding, findings, bore, job } = bench
  const rows = [...findingRows(finding, findings), ...growthRows(job, findings, finding, today())]
  const main = rows.filter((row) => row.rank === 'main')
  return (
    <section className="proof" aria-label={words.parts.proof}>
      <BlockTable {...bench} />
      <Questions {...bench} />
      <h2 className="verdict" aria-live="polite">
        {verdictSentence(finding)}
      </h2>
      <Suspense fallback={null}>
        <DecisionPart bench={bench} />
      </Suspense>
      {beside(finding).map((sentence) => (
        <p key={sentence} className="lean">
          {sentence}
        </p>
      ))}
      {surfaceSentence(finding) ? <p className="lean surface-caution">{surfaceSentence(finding)}</p> : null}
      {main.length > 0 ? (
        <ul className="findings" aria-label={words.findings.title}>
          {main.map((row) => (
            <FindingRow key={row.id} row={row} onOpen={onOpen} />
          ))}
        </ul>
      ) : null}
      {speaksOfPistons(bench) ? (
        <Suspense fallback={null}>
          <PistonFindings bench={bench} onOpen={onOpen} />
        </Suspense>
      ) : null}
      <BudgetTable bench={bench} simulation={simulation} />
      <OtherRules rows={rows.filter((row) => row.rank === 'minor')} />
      <TextList title={words.notes.title} texts={noteTexts(finding)} />
      <TextList title={words.cautions.title} texts={cautions(finding, bore)} />
    </section>
  )
}

function speaksOfPistons({ job, survey }: OnBench): boolean {
  return job.pistons !== undefined || job.spec.oversizesMm !== undefined || survey.ringGaps !== undefined
}

function beside(finding: OnBench['finding']): string[] {
  return [
    leanSentence(finding),
    settleSentence(finding),
    temperatureSentence(finding),
    sureSentence(finding),
    provisionalSentence(finding),
    aboutSentence(finding),
  ].filter((sentence) => sentence !== undefined)
}

function OtherRules({ rows }: { readonly rows: readonly Row[] }) {
  if (rows.length === 0) return null
  return (
    <details className="other-rules">
      <summary>{words.findings.otherRules}</summary>
      <ul>
        {rows.map((row) => (
          <li key={row.id}>
            <span>
              {row.id.startsWith('taper') ? words.findings.taper : words.findings.ovality} {row.name}
            </span>
            <span className="finding-figure">{row.figure}</span>
          </li>
        ))}
      </ul>
    </details>
  )
}

function TextList({ title, texts }: { readonly title: string; readonly texts: readonly string[] }) {
  if (texts.length === 0) return null
  return (
    <section className="texts">
      <h3>{title}</h3>
      <ul>
        {texts.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </section>
  )
}
