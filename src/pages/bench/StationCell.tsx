import type { KeyboardEvent, MouseEvent, PointerEvent } from 'react'
import type { StationFinding } from '../../core/findings'
import type { PlannedStation } from '../../job/selectors'
import { pointAt } from '../../session/session'
import { markText } from '../../words/findings'
import { placeText } from '../../words/numbers'
import { words } from '../../words/words'
import { isReachable } from './entry-order'
import type { CellAt } from './grid-block'
import type { GridFigures } from './grid-figures'
import { useSession } from './use-job'

export interface StationCellProps {
  readonly station: PlannedStation
  readonly finding: StationFinding | undefined
  /** The readings as they were typed: all there is to show while they have no size. */
  readonly asTyped: string
  readonly figures: GridFigures
  readonly at: CellAt
  /** The one cell that Tab leads to. */
  readonly isCurrent: boolean
  /** The next number goes here. */
  readonly isInHand: boolean
  readonly isChosen: boolean
  /** A question is open about its readings: whether it is shown beneath, or asked elsewhere and only marked. */
  readonly question: 'none' | 'closed' | 'open' | 'elsewhere'
  readonly onQuestion: () => void
  readonly onCorrect: () => void
  readonly onFocus: () => void
  readonly onReach: () => void
}

export function StationCell(props: StationCellProps) {
  const { station, at, isCurrent, isInHand, isChosen, question, onCorrect, onQuestion, onFocus, onReach } =
    props
  const { depthMm, axisDegrees } = station
  const isPointed = useSession(
    ({ pointed }) => pointed?.depthMm === depthMm && pointed.angleDegrees % 180 === axisDegrees,
  )
  const point = () => pointAt({ depthMm, angleDegrees: axisDegrees, from: 'sheet' })
  // A finger leaves as it is lifted: what it tapped stays pointed at.
  const leave = ({ pointerType }: PointerEvent) => {
    if (pointerType !== 'touch') pointAt(undefined)
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return
    if (event.key !== 'Enter' && event.key !== 'F2') return
    event.preventDefault()
    onCorrect()
  }
  return (
    <td {...{ role: 'gridcell', 'aria-selected': isChosen }} className={isChosen ? 'is-chosen' : undefined}>
      <button
        type="button"
        tabIndex={isCurrent ? 0 : -1}
        data-cell={`${at.row} ${at.column}`}
        data-depth={depthMm}
        data-axis={axisDegrees}
        aria-label={cellLabel(props)}
        aria-current={isInHand ? 'step' : undefined}
        className={cellClass(props, isPointed)}
        onKeyDown={onKeyDown}
        onClick={(event: MouseEvent) => (event.shiftKey ? onReach() : onCorrect())}
        onMouseDown={(event: MouseEvent) => {
          // The focus stays at the other end of what is chosen.
          if (event.shiftKey) event.preventDefault()
        }}
        onFocus={() => {
          point()
          onFocus()
        }}
        onPointerEnter={point}
        onPointerLeave={leave}
      >
        {question === 'elsewhere' ? (
          <span className="cell-question" aria-hidden="true">
            ?
          </span>
        ) : null}
        <CellText {...props} />
      </button>
      {question === 'none' || question === 'elsewhere' ? null : (
        <button
          type="button"
          className="cell-question"
          aria-label={words.grid.questionAt(placeText(station))}
          aria-expanded={question === 'open'}
          onClick={onQuestion}
        >
          ?
        </button>
      )}
    </td>
  )
}

function cellClass({ station, finding, isInHand }: StationCellProps, isPointed: boolean): string {
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

function cellLabel(props: StationCellProps): string {
  const label = stationLabel(props)
  return props.question === 'elsewhere' ? words.grid.withQuestion(label) : label
}

function stationLabel({ station, finding, asTyped, figures }: StationCellProps): string {
  const place = placeText(station)
  const { grid } = words
  return finding
    ? grid.stationRead(place, figures.spoken(finding.diameterMm), markText(finding))
    : asTyped !== ''
      ? grid.stationSizeless(place, asTyped)
      : station.isUnreachable
        ? grid.stationOutOfReach(place)
        : station.blockedBy.length > 0
          ? grid.stationBlocked(place, words.app.and(station.blockedBy))
          : grid.stationEmpty(place)
}

/** The size as read (the mean of the repeats), as it stands on the paper beside the bench. */
function CellText({ station, finding, asTyped, figures }: StationCellProps) {
  if (!finding) {
    if (asTyped !== '') return <span className="figure">{asTyped}</span>
    const name = station.isUnreachable ? words.grid.outOfReach : station.blockedBy[0]
    return name === undefined ? null : <span className="port-name">{name}</span>
  }
  const asRead = finding.diameterMm - finding.correctionMm
  const spread = finding.spreadMm
  return (
    <>
      <span className="figure">{figures.size(asRead)}</span>
      <span className="spread">
        {finding.counted ? '' : `${words.marks.blocked} `}
        {spread === undefined ? '' : figures.spread(spread)}
      </span>
    </>
  )
}
