import type { CutPoint } from '../core/surface/grid-cuts'
import { type DrawnLimit, doubtBand, type LimitName } from './drawn-limits'
import { labelRow } from './label-row'
import { profileBandPath } from './profile-paths'
import type { ProfileScale } from './profile-scale'
import type { ShownRange } from './shown-range'

const order: readonly LimitName[] = ['max', 'min', 'new-max']

/** The limits as lines down the page with their names above, and the band in which it is too close to call. */
export function ProfileLimits(props: {
  readonly scale: ProfileScale
  readonly limits: readonly DrawnLimit[]
  readonly points: readonly CutPoint[]
  readonly range: ShownRange
  readonly right: number
  readonly letter: number
}) {
  const { scale, limits, points, range, right, letter } = props
  const named = [...limits].sort((a, b) => order.indexOf(a.which) - order.indexOf(b.which))
  const labels = labelRow(
    named.map(({ deviationUm, text, sizeText }) => ({
      x: scale.across(deviationUm),
      texts: [text, sizeText],
    })),
    { left: 0, right },
    letter,
  )
  return named.map(({ which, deviationUm, isJudged }, i) => {
    const label = labels[i]
    const x = scale.across(deviationUm)
    return (
      <g key={which} className={`chart-limit is-${which}`}>
        {isJudged ? (
          <path
            d={profileBandPath(scale, points, (point) => doubtBand(point, which, range))}
            className="chart-doubt"
          />
        ) : null}
        <line x1={x} x2={x} y1={scale.top - 4} y2={scale.top + scale.height} className="chart-limit-line" />
        {label ? (
          <text x={label.x} y={scale.top - 22}>
            {label.text}
          </text>
        ) : null}
      </g>
    )
  })
}
