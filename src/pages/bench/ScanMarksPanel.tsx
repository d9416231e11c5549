import './scan-marks-panel.css'
import { useState } from 'react'
import type { CleanedMarks } from '../../core/scan/cleaned-marks'
import type { ScanMark, ScanMarks } from '../../core/scan/scan-marks'
import { surfaceNear } from '../../core/surface-findings/surface-place'
import { findingOfMark, isRecorded } from '../../job/finding-of-mark'
import { newId } from '../../job/new-id'
import { addSurfaceFinding } from '../../job/surface-commands'
import { openSurface, pointAt } from '../../session/session'
import { scanMarkWords } from '../../words/scan-mark-words'
import {
  cleanedLines,
  roundedPlace,
  scanMarkHeight,
  scanMarkParts,
  scanMarkPlace,
  scanMarksLead,
  scanMarkTitle,
  scanPatternText,
  scanSignText,
} from '../../words/scan-marks'
import { perform } from './perform'
import { type OnBench, useSession } from './use-job'

/** So many marks are listed at first. */
const listedAtFirst = 8

/** A scan before cleaning and one after it, and what became of the marks of the first. */
export interface CleanedScans {
  readonly before: { readonly name: string; readonly found: ScanMarks }
  readonly after: { readonly name: string; readonly found: ScanMarks }
  readonly compared: CleanedMarks
}

export interface ScanMarksPanelProps {
  readonly bench: OnBench
  readonly scanId: string
  /** Undefined while they are looked for. */
  readonly found: ScanMarks | undefined
  readonly cleaned?: CleanedScans | undefined
}

/** What stands out of the smooth form of a scan, a row each, how it lies together, and what cleaning did to it. */
export function ScanMarksPanel({ bench, scanId, found, cleaned }: ScanMarksPanelProps) {
  const said = scanMarkWords
  const [isWhole, setIsWhole] = useState(false)
  const isPlated = bench.bore.wall?.kind === 'plated-aluminium'
  if (!found) {
    return (
      <section className="scan-marks" aria-label={said.title}>
        <h2>{said.title}</h2>
        <p role="status">{said.working}</p>
      </section>
    )
  }
  const { marks, patterns } = found
  const listed = isWhole ? marks : marks.slice(0, listedAtFirst)
  return (
    <section className="scan-marks" aria-label={said.title}>
      <h2>{said.title}</h2>
      {scanMarksLead(found).map((line) => (
        <p key={line}>{line}</p>
      ))}
      {marks.length === 0 ? null : (
        <ul>
          {listed.map((mark, index) => (
            <MarkRow key={index} bench={bench} scanId={scanId} mark={mark} number={index + 1} />
          ))}
        </ul>
      )}
      {marks.length > listed.length ? (
        <button type="button" className="quiet" onClick={() => setIsWhole(true)}>
          {said.more(marks.length - listed.length)}
        </button>
      ) : null}
      {patterns.length === 0 ? null : <Patterns found={found} />}
      {scanSignText(found, isPlated).map((line) => (
        <p key={line} className="aside">
          {line}
        </p>
      ))}
      {cleaned ? <Cleaned {...cleaned} /> : null}
    </section>
  )
}

interface RowProps {
  readonly bench: OnBench
  readonly scanId: string
  readonly mark: ScanMark
  /** From 1. */
  readonly number: number
}

/** One mark: focus or pointer on it lights its place, and its place pointed at lights it. */
function MarkRow({ bench, scanId, mark, number }: RowProps) {
  const { bore, survey, finding } = bench
  const said = scanMarkWords
  const isLit = useSession(
    ({ pointed }) => pointed !== undefined && surfaceNear([mark], pointed, finding.drawnLengthMm).length > 0,
  )
  const title = scanMarkTitle(number, mark)
  const place = roundedPlace(mark)
  const isKept = isRecorded(survey.surfaceFindings ?? [], scanId, place)
  const light = () => pointAt({ ...mark.peak, from: 'sheet' })
  const record = () => {
    const id = newId()
    const made = findingOfMark(mark, place, { id, scanId, note: said.note(scanMarkHeight(mark)) })
    const at = { boreId: bore.id, surveyId: survey.id }
    const refusal = perform(said.change, (job) => addSurfaceFinding(job, at, made))
    if (refusal === undefined) openSurface(id)
  }
  return (
    <li className={isLit ? 'is-lit' : ''}>
      <div className="surface-row">
        <button type="button" className="surface-name" onFocus={light} onPointerEnter={light} onClick={light}>
          <span className="surface-title">{title}</span> {scanMarkPlace(mark)}
          <span className="aside">{scanMarkParts(mark).join('; ')}</span>
        </button>
        {isKept ? (
          <span className="scan-mark-kept">{said.recorded}</span>
        ) : (
          <button
            type="button"
            className="quiet"
            aria-label={said.recordTitle(title)}
            title={said.recordTitle(title)}
            onClick={record}
          >
            {said.record}
          </button>
        )}
      </div>
    </li>
  )
}

function Patterns({ found }: { readonly found: ScanMarks }) {
  const said = scanMarkWords.patterns
  return (
    <div className="scan-patterns">
      <h3>{said.title}</h3>
      {found.patterns.map((pattern, index) => {
        const { name, causes } = scanPatternText(pattern)
        return (
          <p key={index}>
            <strong>{name}</strong> {causes}
          </p>
        )
      })}
      <p className="aside">{said.lead}</p>
    </div>
  )
}

function Cleaned({ before, after, compared }: CleanedScans) {
  const said = scanMarkWords.cleaned
  return (
    <div className="scan-patterns">
      <h3>{said.title}</h3>
      <p>{said.against(before.name, after.name)}</p>
      <ul>
        {cleanedLines(before.found, after.found, compared).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  )
}
