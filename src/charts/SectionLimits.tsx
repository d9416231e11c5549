import type { CutPoint } from '../core/surface/grid-cuts'
import { type DrawnLimit, doubtBand } from './drawn-limits'
import { arcPath, ringPath } from './section-paths'
import type { SectionScale } from './section-scale'
import type { ShownRange } from './shown-range'

/** The limits as circles, each that is judged with the band in which it is too close to call. */
export function SectionLimits(props: {
  readonly scale: SectionScale
  readonly limits: readonly DrawnLimit[]
  readonly points: readonly CutPoint[]
  readonly range: ShownRange
}) {
  const { scale, limits, points, range } = props
  return limits.map(({ which, deviationUm, isJudged }) => (
    <g key={which} className={`chart-limit is-${which}`}>
      {isJudged ? (
        <path
          d={ringPath(scale, points, (point) => doubtBand(point, which, range))}
          className="chart-doubt"
        />
      ) : null}
      <path d={arcPath(scale.radius(deviationUm), 0, 2 * Math.PI)} className="chart-limit-line" />
    </g>
  ))
}

/** Height of a line of a label, pixels. */
const line = 16

/** Where the label of each limit stands: right of the circles near their top, those further out higher up. */
export function SectionLimitLabels(props: {
  readonly scale: SectionScale
  readonly limits: readonly DrawnLimit[]
  readonly right: number
  readonly letter: number
}) {
  const { scale, limits, right, letter } = props
  const first = -0.87 * scale.outer
  return limits.map(({ which, deviationUm, text, sizeText }, i) => {
    const y = first + i * line
    const radius = scale.radius(deviationUm)
    const on = Math.sqrt(Math.max(0, radius ** 2 - y ** 2))
    const x = Math.sqrt(Math.max(0, scale.outer ** 2 - y ** 2)) + 8
    const hasRoom = scale.x + x + text.length * letter <= right
    return (
      <g key={which} className={`chart-limit is-${which}`}>
        <line x1={on} x2={x - 3} y1={radius < Math.abs(y) ? -radius : y} y2={y} className="chart-leader" />
        <text x={x} y={y + 4}>
          {hasRoom ? text : sizeText}
        </text>
      </g>
    )
  })
}
