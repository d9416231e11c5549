import './budget-table.css'
import type { ReactNode } from 'react'
import { budgetOf } from '../../core/uncertainty/budget'
import { budgetRows, improvementTexts, largestPart } from '../../words/budget'
import { inShownUnit } from '../../words/length-unit'
import { placeText, plusMinusMicrons } from '../../words/numbers'
import { words } from '../../words/words'
import { comeIntoView } from './come-into-view'
import type { OnBench } from './use-job'
import { useSession } from './use-job'

interface BudgetTableProps {
  readonly bench: OnBench
  /** Where the figures are checked by simulation on request. */
  readonly simulation: ReactNode
}

/** The budget of the station pointed at, else of the largest, with what would shrink its doubt. */
export function BudgetTable({ bench: { finding, standard }, simulation }: BudgetTableProps) {
  const pointed = useSession((state) => state.pointed)
  const counted = finding.stations.filter((station) => station.counted)
  const at = (depthMm: number | undefined, angle: number | undefined) =>
    counted.find((s) => s.depthMm === depthMm && angle !== undefined && s.axisDegrees === angle % 180)
  const station =
    at(pointed?.depthMm, pointed?.angleDegrees) ?? at(finding.largest?.depthMm, finding.largest?.axisDegrees)
  if (!station) return null
  const budget = budgetOf(station, standard.kind)
  const { title, of, heads } = words.budget
  const largest = largestPart(budget)
  return (
    <details className="other-rules budget" onToggle={comeIntoView}>
      <summary>{title}</summary>
      <p>
        {of(placeText(station), plusMinusMicrons(budget.expandedMm))} {largest}
      </p>
      <table className="budget-table">
        <thead>
          <tr>
            <th scope="col">{heads.part}</th>
            <th scope="col">{inShownUnit(heads.amount)}</th>
            <th scope="col">{heads.share}</th>
          </tr>
        </thead>
        <tbody>
          {budgetRows(budget).map((row) => (
            <tr key={row.kind}>
              <th scope="row">
                {row.name}
                <small>{row.detail}</small>
              </th>
              <td>{row.amount}</td>
              <td>
                <span className="budget-bar" aria-hidden="true">
                  <span style={{ width: `${100 * row.share}%` }} />
                </span>
                {row.shareText}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {improvementTexts(budget).map((text) => (
        <p key={text}>{text}</p>
      ))}
      {simulation}
    </details>
  )
}
