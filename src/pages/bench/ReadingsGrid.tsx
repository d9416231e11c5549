import { Fragment, useRef, useState } from 'react'
import type { BoreFinding, LevelFinding, Place, StationFinding } from '../../core/findings'
import type { PlannedStation } from '../../job/selectors'
import { unitText } from '../../words/length-unit'
import { placeText } from '../../words/numbers'
import { words } from '../../words/words'
import { DepthRuler } from './DepthRuler'
import { repeatsAt, samePlace } from './entry-order'
import type { CellAt } from './grid-block'
import { type GridFigures, gridFigures } from './grid-figures'
import { openQuestions } from './open-questions'
import { AxisHead, LevelHead } from './PlanHeads'
import { QuestionHere } from './QuestionHere'
import { concerns } from './question'
import { StationCell } from './StationCell'
import { typedText } from './typed-text'
import { useGridBlock } from './use-grid-block'
import type { OnBench } from './use-job'

export interface GridActions {
  /** Takes a station in hand, its readings put into the field to be corrected. */
  readonly correct: (place: Place) => void
  readonly clear: (places: readonly Place[]) => void
  /** A block of text laid against a cell. */
  readonly paste?: (text: string, from: CellAt) => void
}

/** Rows and heads stay those of a table; a grid has cells that can be chosen beside. */
const asGrid = { role: 'grid', 'aria-multiselectable': true } as const

/** Level by axis: every station with its figure, its spread and how it stands. */
export function ReadingsGrid(props: {
  readonly bench: OnBench
  readonly rows: readonly (readonly PlannedStation[])[]
  readonly inHand: Place | undefined
  readonly actions: GridActions
  /** Questions are shown beneath their row; else their cells are only marked. */
  readonly asksInPlace: boolean
}) {
  const { bench, rows, inHand, actions, asksInPlace } = props
  const { survey, finding, bore, setUp, gauge } = bench
  const table = useRef<HTMLTableElement>(null)
  const [asked, setAsked] = useState<Place>()
  const figures = gridFigures(gauge)
  const questions = openQuestions(bench)
  const axes = [...survey.axesDegrees].sort((a, b) => a - b)
  const chosen = useGridBlock({ table, rows, bench, clear: actions.clear, paste: actions.paste })
  const current = chosen.block?.to ?? cellOf(rows, inHand) ?? { row: 0, column: 0 }
  return (
    <table
      ref={table}
      className="readings"
      {...asGrid}
      aria-label={words.grid.title}
      aria-description={words.grid.keys}
      {...chosen.handlers}
    >
      <thead>
        <tr>
          <th scope="col" className="depth-head">
            {words.grid.depthHead}, {unitText()}
          </th>
          {axes.map((axis) => (
            <AxisHead key={axis} bench={bench} axisDegrees={axis} />
          ))}
          <th scope="col" className="level-end">
            {figures.unit === undefined
              ? words.grid.meanHead
              : words.grid.headIn(words.grid.meanHead, figures.unit)}
            <small>{words.grid.ovalityHead}</small>
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map((stations, row) => {
          const depthMm = stations[0]?.depthMm ?? 0
          const askedHere = asked?.depthMm === depthMm ? asked : undefined
          return (
            <Fragment key={depthMm}>
              <tr>
                <LevelHead bench={bench} depthMm={depthMm}>
                  <DepthRuler
                    ports={bore.ports}
                    belts={bore.belts}
                    levelsMm={survey.levelsMm}
                    depthMm={depthMm}
                  />
                </LevelHead>
                {stations.map((station, column) => {
                  const at = { row, column }
                  const isAsked = asked !== undefined && samePlace(station, asked)
                  const hasQuestion = questions.some((question) => concerns(question, station))
                  return (
                    <StationCell
                      key={station.axisDegrees}
                      station={station}
                      finding={findingAt(finding, station)}
                      asTyped={typedText(repeatsAt(station), setUp, gauge)}
                      figures={figures}
                      at={at}
                      isCurrent={current.row === row && current.column === column}
                      isInHand={inHand !== undefined && samePlace(station, inHand)}
                      isChosen={chosen.isChosen(at)}
                      question={
                        !hasQuestion ? 'none' : !asksInPlace ? 'elsewhere' : isAsked ? 'open' : 'closed'
                      }
                      onQuestion={() => setAsked(isAsked ? undefined : station)}
                      onCorrect={() => actions.correct({ depthMm, axisDegrees: station.axisDegrees })}
                      onFocus={() => chosen.onCellFocus(at)}
                      onReach={() => chosen.reachTo(at)}
                    />
                  )
                })}
                <LevelEnd
                  level={finding.levels.find((level) => level.depthMm === depthMm)}
                  figures={figures}
                />
              </tr>
              {askedHere && questions.some((question) => concerns(question, askedHere)) ? (
                <tr className="question-row">
                  <td colSpan={axes.length + 2} aria-label={words.grid.questionAt(placeText(askedHere))}>
                    <QuestionHere questions={questions} places={[askedHere]} />
                  </td>
                </tr>
              ) : null}
            </Fragment>
          )
        })}
      </tbody>
    </table>
  )
}

/** Where a station stands in the grid. */
export function cellOf(
  rows: readonly (readonly PlannedStation[])[],
  place: Place | undefined,
): CellAt | undefined {
  if (!place) return undefined
  const row = rows.findIndex((stations) => stations.some((station) => samePlace(station, place)))
  const column = rows[row]?.findIndex((station) => samePlace(station, place)) ?? -1
  return row < 0 ? undefined : { row, column }
}

function findingAt(finding: BoreFinding, place: Place): StationFinding | undefined {
  return finding.stations.find((station) => samePlace(station, place))
}

function LevelEnd(props: { readonly level: LevelFinding | undefined; readonly figures: GridFigures }) {
  const { level, figures } = props
  if (!level) return <td className="level-end" />
  return (
    <td className="level-end">
      <span className="figure">{figures.size(level.meanMm)}</span>
      <span className="spread">{level.ovality ? figures.difference(level.ovality.valueMm) : ''}</span>
    </td>
  )
}
