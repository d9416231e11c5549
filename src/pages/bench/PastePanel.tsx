import './paste-panel.css'
import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react'
import { useStore } from 'zustand'
import { words } from '../../words/words'
import { mendPasted } from './paste-block'
import { dropRefused, type PasteReport, pasteReport, type RefusedCell, showPasted } from './paste-report'
import type { Refusal } from './TypedField'

/** What came of a pasted block, cell by cell; it stands beneath the grid and stops nothing. */
export function PastePanel({ jobId }: { readonly jobId: string }) {
  const report = useStore(pasteReport, (state) => state.report)
  return report?.jobId === jobId ? <Pasted key={report.id} report={report} /> : null
}

function Pasted({ report }: { readonly report: PasteReport }) {
  const said = words.paste
  const { taken, refused, unreadable, text } = report
  const panel = useRef<HTMLElement>(null)
  useEffect(() => {
    panel.current?.scrollIntoView({ block: 'nearest' })
  }, [])
  const rest =
    unreadable === undefined ? refused.map((cell) => `${cell.where}\t${cell.text}`).join('\n') : text
  return (
    <section ref={panel} className="paste-panel" aria-label={said.title}>
      <p role="status">{summary(report)}</p>
      {refused.length > 0 ? (
        <ul className="paste-refused">
          {refused.map((cell) => (
            <Refused
              key={`${cell.key} ${cell.text}`}
              cell={cell}
              isAdded={taken.some(({ key }) => isStation(key, cell))}
            />
          ))}
        </ul>
      ) : null}
      {taken.length > 0 ? (
        <details>
          <summary>{said.takenTitle}</summary>
          <ul>
            {taken.map(({ key, where, text, replaces }) => (
              <li key={key}>
                {replaces > 0 ? said.takenInPlace(where, text, replaces) : said.takenAt(where, text)}
              </li>
            ))}
          </ul>
        </details>
      ) : null}
      <p className="paste-buttons">
        {rest ? <CopyButton text={rest} /> : null}
        <button type="button" className="quiet" onClick={() => showPasted(undefined)}>
          {words.app.close}
        </button>
      </p>
    </section>
  )
}

function isStation(key: string, { to }: RefusedCell): boolean {
  return to !== undefined && key === `${to.surveyId} ${to.place.depthMm} ${to.place.axisDegrees}`
}

function summary({ taken, readings, refused, unreadable, heads = [] }: PasteReport): string {
  const said = words.paste
  if (unreadable !== undefined) return unreadable
  const replaced = taken.filter(({ replaces }) => replaces > 0).length
  const parts = [
    readings > 0 ? said.taken(readings, taken.length) : said.nothing,
    ...(replaced > 0 ? [said.replaced(replaced)] : []),
    ...(heads.length > 0 ? [said.byHeads(words.app.and(heads.map((head) => said.heads[head])))] : []),
    ...(refused.length > 0 ? [said.refused(refused.length)] : []),
  ]
  return parts.join(' ')
}

/** A cell that was not taken: its text, to be mended and entered or copied away, and why. */
function Refused({ cell, isAdded }: { readonly cell: RefusedCell; readonly isAdded: boolean }) {
  const id = useId()
  const [text, setText] = useState(cell.text)
  const [why, setWhy] = useState<Refusal>(cell.why)
  const onKeyDown = async (event: KeyboardEvent) => {
    if (event.key !== 'Enter') return
    event.preventDefault()
    const refusal = await mendPasted(cell, text, isAdded)
    setWhy(refusal)
    if (refusal === undefined) dropRefused(cell.key)
  }
  return (
    <li>
      <span>{cell.where}</span>
      <input
        type="text"
        className="field"
        autoComplete="off"
        spellCheck={false}
        aria-label={words.paste.mend(cell.where)}
        aria-invalid={why !== undefined}
        aria-describedby={id}
        readOnly={!cell.to}
        value={text}
        onChange={(event) => setText(event.target.value)}
        onKeyDown={onKeyDown}
      />
      <span id={id} className="refusal">
        {why}
      </span>
    </li>
  )
}

function CopyButton({ text }: { readonly text: string }) {
  const said = words.paste
  const [done, setDone] = useState<'copied' | 'not-copied'>()
  const copy = () =>
    navigator.clipboard.writeText(text).then(
      () => setDone('copied'),
      () => setDone('not-copied'),
    )
  return (
    <>
      <button type="button" className="quiet" onClick={copy}>
        {said.copyRest}
      </button>
      <span role="status" className="aside">
        {done === undefined ? '' : said[done]}
      </span>
    </>
  )
}
