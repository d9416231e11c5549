import { useState } from 'react'
import type { CellRefusal, RefusedCell } from '../../formats/table-readings'
import type { TakenTable, TakeRefusal } from '../../job/take-table'
import { cellPlace, refusalText, refusedBlock } from '../../words/table'
import { words } from '../../words/words'

export type AnyRefusedCell = RefusedCell<CellRefusal | TakeRefusal>

/** So many are listed; all of them are copied. */
const mostListed = 200

/** What is taken, or was, and every refused cell with its place and why. */
export function TakenReport(props: {
  readonly taken: TakenTable
  readonly refused: readonly AnyRefusedCell[]
  readonly heads: readonly string[]
  readonly isTaken: boolean
}) {
  const { taken, refused, heads, isTaken } = props
  const said = words.table
  const readings = said.readings(taken.readings)
  const summary = said.report.summary(readings, taken.stations, taken.surveys.length)
  const refusedText =
    refused.length === 0 ? said.report.noneRefused : `${said.report.refused(refused.length)}.`
  return (
    <section className="import-report" aria-label={said.report.title}>
      <p role="status" className="import-summary">
        {isTaken
          ? said.taken(readings, refusedText)
          : `${taken.readings === 0 ? said.report.nothing : summary} ${refusedText}`}
      </p>
      {taken.surveys.length > 1 ? (
        <ul className="import-surveys">
          {taken.surveys.map(({ surveyId, boreName, readings: count, isNewBore, isNewSurvey }) => (
            <li key={surveyId}>
              {said.report.survey(
                words.bar.boreNamed(boreName),
                said.readings(count),
                isNewBore,
                isNewSurvey,
              )}
            </li>
          ))}
        </ul>
      ) : null}
      {refused.length > 0 ? <Refused refused={refused} heads={heads} /> : null}
    </section>
  )
}

function Refused({ refused, heads }: { refused: readonly AnyRefusedCell[]; heads: readonly string[] }) {
  const [copied, setCopied] = useState<'no' | 'yes' | 'failed'>('no')
  const { report } = words.table
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(refusedBlock(refused, heads))
      setCopied('yes')
    } catch (error) {
      // The clipboard refuses with the first; where a page may not have it at all there is nothing to call.
      if (!(error instanceof DOMException || error instanceof TypeError)) throw error
      setCopied('failed')
    }
  }
  return (
    <>
      <p>
        <button type="button" className="button" onClick={() => void copy()}>
          {report.copy}
        </button>
        {copied === 'no' ? null : (
          <span role="status" className="import-copied">
            {copied === 'yes' ? report.copied : report.notCopied}
          </span>
        )}
      </p>
      <ul className="problem-list">
        {refused.slice(0, mostListed).map((cell) => (
          <li key={`${cell.row} ${cell.column} ${cell.why}`}>
            <span className="place">{cellPlace(cell, heads)}</span> {refusalText(cell)}
          </li>
        ))}
      </ul>
      {refused.length > mostListed ? <p>{report.more(refused.length - mostListed)}</p> : null}
    </>
  )
}
