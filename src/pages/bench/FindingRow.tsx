import { pointAt, showChart } from '../../session/session'
import type { Bar, Row } from '../../words/findings'
import { inMicrons, size } from '../../words/numbers'
import { words } from '../../words/words'

/** A finding: name and place left, figure right, limit and rule beneath, and a bar against its limit. */
export function FindingRow({
  row,
  onOpen,
}: {
  readonly row: Row
  /** Its place was chosen. */
  readonly onOpen?: (() => void) | undefined
}) {
  const { place } = row
  const point = () => {
    if (place) pointAt({ depthMm: place.depthMm, angleDegrees: place.axisDegrees, from: 'findings' })
  }
  const isOverHours = row.id === 'outlook'
  const mark = row.verdict ? ` is-${row.verdict}` : ''
  return (
    <li className={`finding${mark}`} data-row={row.id} onPointerEnter={point}>
      <div className="finding-main">
        {place ? (
          <button
            type="button"
            className="finding-name"
            onClick={() => {
              point()
              if (isOverHours) showChart('hours')
              onOpen?.()
            }}
            onFocus={point}
            title={isOverHours ? words.hours.point : words.findings.point(row.name)}
          >
            {row.name}
          </button>
        ) : (
          <span className="finding-name">{row.name}</span>
        )}
        <span className="finding-figure">{row.figure}</span>
      </div>
      <div className="finding-detail">
        <span>{[row.placeText, row.detail].filter(Boolean).join(' · ')}</span>
        <span className="finding-mark">
          {row.bar ? <LimitBar bar={row.bar} /> : null}
          {row.verdictText}
        </span>
      </div>
    </li>
  )
}

const width = 60
const height = 12

/** The figure with its interval as a bar, the limit as a tick across it. */
function LimitBar({ bar }: { readonly bar: Bar }) {
  const least = Math.min(bar.low, bar.limit)
  const most = Math.max(bar.high, bar.limit)
  const pad = (most - least) * 0.1 || 1
  const x = (mm: number) => ((mm - least + pad) / (most - least + 2 * pad)) * width
  const written = bar.limit > 1 ? size : inMicrons
  return (
    <svg
      className="limit-bar"
      width={width}
      height={height}
      role="img"
      aria-label={words.findings.barLabel(written(bar.low), written(bar.high), written(bar.limit))}
    >
      <line className="limit-range" x1={x(bar.low)} x2={x(bar.high)} y1={height / 2} y2={height / 2} />
      <circle className="limit-figure" cx={x(bar.value)} cy={height / 2} r="2.5" />
      <line className="limit-tick" x1={x(bar.limit)} x2={x(bar.limit)} y1="0" y2={height} />
    </svg>
  )
}
