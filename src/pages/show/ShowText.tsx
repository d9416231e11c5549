import { findingRows, type Row } from '../../words/findings'
import { growthRows } from '../../words/growth-rows'
import { ownerWords } from '../../words/owner-words'
import { unbroken } from '../../words/unbroken'
import type { Talk } from './use-talk'

/** What is told now: one sentence in large type, what goes with it, and the figures behind it on a press. */
export function ShowText({ talk }: { readonly talk: Talk }) {
  const { step, bore } = talk
  return (
    <section className="show-text" aria-live="polite" aria-atomic="true">
      {/* Made anew for each thing told, so that it begins at its beginning. */}
      <div className="show-told" key={`${bore.id} ${step.topic}`}>
        <h2 className="show-topic">{step.heading}</h2>
        <p className="show-sentence">{unbroken(step.sentence)}</p>
        {step.beside.length > 0 ? (
          <ul className="show-beside">
            {step.beside.map((text) => (
              <li key={text} dir="auto">
                {unbroken(text)}
              </li>
            ))}
          </ul>
        ) : null}
        <Figures talk={talk} />
      </div>
    </section>
  )
}

function Figures({ talk: { job, findings, finding, step } }: { readonly talk: Talk }) {
  const all = [...findingRows(finding, findings), ...growthRows(job, findings, finding)]
  const rows = step.rows.flatMap((id) => all.find((row) => row.id === id) ?? [])
  if (rows.length === 0) return null
  return (
    <details className="show-figures">
      <summary>{ownerWords.show.behind}</summary>
      <dl>
        {rows.map((row) => (
          <Figure key={row.id} row={row} />
        ))}
      </dl>
    </details>
  )
}

function Figure({ row }: { readonly row: Row }) {
  const { name, figure, placeText, detail, verdictText } = row
  return (
    <div>
      <dt dir="auto">{name}</dt>
      <dd>
        {verdictText === undefined ? figure : `${figure} · ${verdictText}`}
        <small>{[placeText ?? '', detail].filter((text) => text !== '').join(' · ')}</small>
      </dd>
    </div>
  )
}
