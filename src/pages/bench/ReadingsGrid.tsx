import { type KeyboardEvent, type PointerEvent, useRef } from 'react'
import type { BoreFinding, LevelFinding, Place, StationFinding } from '../../core/findings'
import type { PlannedStation } from '../../job/selectors'
import { pointAt } from '../../session/session'
import { markText } from '../../words/findings'
import { inMicrons, placeText, size } from '../../words/numbers'
import { words } from '../../words/words'
import { DepthRuler } from './DepthRuler'
import { isReachable, repeatsAt } from './entry-order'
import { AxisHead, LevelHead } from './PlanHeads'
import { typedText } from './typed-text'
import type { OnBench } from './use-job'
import { useSession } from './use-job'

export interface GridActions {
  /** Takes a station in hand, its readings put into the field to be corrected. */
  readonly correct: (place: Place) => void
  /** A key typed on a cell begins a number there. */
  readonly type: (place: Place, key: string) => void
  readonly clear: (place: Place) => void
}

/** Level by axis: every station with its figure, its spread and how it stands. */
export function ReadingsGrid(props: {
  readonly bench: OnBench
  readonly rows: readonly (readonly PlannedStation[])[]
  readonly inHand: Place | undefined
  readonly actions: GridActions
}) {
  const { bench, rows, inHand, actions } = props
  const { survey, finding, bore, setUp, gauge } = bench
  const table = useRef<HTMLTableElement>(null)
  const axes = [...survey.axesDegrees].sort((a, b) => a - b)
  const move = (event: KeyboardEvent, row: number, column: number) => {
    const next = stepTo(event.key, row, column, rows.length, axes.length)
    if (!next) return
    event.preventDefault()
    table.current?.querySelector<HTMLElement>(`[data-cell="${next.row} ${next.column}"]`)?.focus()
  }
  const current = rows.flat().find((s) => isAt(s, inHand)) ?? rows[0]?.[0]
  return (
    <table ref={table} className="readings" aria-label={words.grid.title}>
      <thead>
        <tr>
          <th scope="col" className="depth-head">
            {words.grid.depthHead}, mm
          </th>
          {axes.map((axis) => (
            <AxisHead key={axis} bench={bench} axisDegrees={axis} />
          ))}
          <th scope="col" className="level-end">
            {words.grid.meanHead}
            <small>{words.grid.ovalityHead}</small>
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map((stations, row) => {
          const depthMm = stations[0]?.depthMm ?? 0
          return (
            <tr key={depthMm}>
              <LevelHead bench={bench} depthMm={depthMm}>
                <DepthRuler
                  ports={bore.ports}
                  belts={bore.belts}
                  levelsMm={survey.levelsMm}
                  depthMm={depthMm}
                />
              </LevelHead>
              {stations.map((station, column) => (
                <StationCell
                  key={station.axisDegrees}
                  station={station}
                  finding={findingAt(finding, station)}
                  asTyped={typedText(repeatsAt(station), setUp, gauge)}
                  isCurrent={isAt(station, current)}
                  isInHand={isAt(station, inHand)}
                  cell={`${row} ${column}`}
                  actions={actions}
                  onMove={(event) => move(event, row, column)}
                />
              ))}
              <LevelEnd level={finding.levels.find((level) => level.depthMm === depthMm)} />
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}

function isAt(station: Place, place: Place | undefined): boolean {
  return station.depthMm === place?.depthMm && station.axisDegrees === place.axisDegrees
}

function findingAt(finding: BoreFinding, place: Place): StationFinding | undefined {
  return finding.stations.find((station) => isAt(station, place))
}

function stepTo(key: string, row: number, column: number, rows: number, columns: number) {
  const to: Record<string, { row: number; column: number }> = {
    ArrowUp: { row: row - 1, column },
    ArrowDown: { row: row + 1, column },
    ArrowLeft: { row, column: column - 1 },
    ArrowRight: { row, column: column + 1 },
    Home: { row, column: 0 },
    End: { row, column: columns - 1 },
  }
  const next = to[key]
  return next && next.row >= 0 && next.row < rows && next.column >= 0 && next.column < columns
    ? next
    : undefined
}

function StationCell(props: {
  readonly station: PlannedStation
  readonly finding: StationFinding | undefined
  /** The readings as they were typed: all there is to show while they have no size. */
  readonly asTyped: string
  readonly isCurrent: boolean
  readonly isInHand: boolean
  readonly cell: string
  readonly actions: GridActions
  readonly onMove: (event: KeyboardEvent) => void
}) {
  const { station, finding, asTyped, isCurrent, isInHand, cell, actions, onMove } = props
  const isPointed = useSession(
    ({ pointed }) =>
      pointed?.depthMm === station.depthMm && pointed.angleDegrees % 180 === station.axisDegrees,
  )
  const place = { depthMm: station.depthMm, axisDegrees: station.axisDegrees }
  const point = () => pointAt({ depthMm: place.depthMm, angleDegrees: place.axisDegrees, from: 'sheet' })
  // A finger leaves as it is lifted: what it tapped stays pointed at.
  const leave = ({ pointerType }: PointerEvent) => {
    if (pointerType !== 'touch') pointAt(undefined)
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return
    if (event.key === 'Enter' || event.key === 'F2') {
      event.preventDefault()
      actions.correct(place)
    } else if (event.key === 'Delete' || event.key === 'Backspace') actions.clear(place)
    else if (/^[\d.,+\-\u2212]$/.test(event.key)) {
      event.preventDefault()
      actions.type(place, event.key)
    } else onMove(event)
  }
  return (
    <td>
      <button
        type="button"
        tabIndex={isCurrent ? 0 : -1}
        data-cell={cell}
        aria-label={cellLabel(station, finding, asTyped)}
        className={cellClass(station, finding, isPointed, isInHand)}
        onKeyDown={onKeyDown}
        onClick={() => actions.correct(place)}
        onFocus={point}
        onPointerEnter={point}
        onPointerLeave={leave}
      >
        <CellText station={station} finding={finding} asTyped={asTyped} />
      </button>
    </td>
  )
}

function cellClass(
  station: PlannedStation,
  finding: StationFinding | undefined,
  isPointed: boolean,
  isInHand: boolean,
): string {
  return [
    'station',
    !isReachable(station) && finding?.counted !== true ? 'is-blocked' : '',
    finding?.counted && finding.conformity ? `is-${finding.conformity.verdict}` : '',
    isPointed ? 'is-pointed' : '',
    isInHand ? 'is-in-hand' : '',
  ]
    .filter((name) => name !== '')
    .join(' ')
}

function cellLabel(station: PlannedStation, finding: StationFinding | undefined, asTyped: string): string {
  const place = placeText(station)
  if (finding) return words.grid.stationRead(place, size(finding.diameterMm), markText(finding))
  if (asTyped !== '') return words.grid.stationSizeless(place, asTyped)
  if (station.isUnreachable) return words.grid.stationOutOfReach(place)
  return station.blockedBy.length > 0
    ? words.grid.stationBlocked(place, words.app.and(station.blockedBy))
    : words.grid.stationEmpty(place)
}

/** The size as read (the mean of the repeats), as it stands on the paper beside the bench. */
function CellText({
  station,
  finding,
  asTyped,
}: {
  readonly station: PlannedStation
  readonly finding: StationFinding | undefined
  readonly asTyped: string
}) {
  if (!finding) {
    if (asTyped !== '') return <span className="figure">{asTyped}</span>
    const name = station.isUnreachable ? words.grid.outOfReach : station.blockedBy[0]
    return name === undefined ? null : <span className="port-name">{name}</span>
  }
  const asRead = finding.diameterMm - finding.correctionMm
  const spread = finding.spreadMm
  return (
    <>
      <span className="figure">{size(asRead)}</span>
      <span className="spread">
        {finding.counted ? '' : `${words.marks.blocked} `}
        {spread === undefined ? '' : words.grid.spread(inMicrons(spread))}
      </span>
    </>
  )
}

function LevelEnd({ level }: { readonly level: LevelFinding | undefined }) {
  if (!level) return <td className="level-end" />
  return (
    <td className="level-end">
      <span className="figure">{size(level.meanMm)}</span>
      <span className="spread">{level.ovality ? inMicrons(level.ovality.valueMm) : ''}</span>
    </td>
  )
}
