import type { StationFinding } from '../core/findings'
import type { SurfaceFinding } from '../core/measured'
import { isWithinSurface } from '../core/surface-findings/surface-place'
import { degrees } from '../words/numbers'
import { surfacePlaceText, surfaceTitle } from '../words/surface'
import { labelRow, labelsDown } from './label-row'
import type { MapContact } from './map-contacts'
import { downOf } from './map-scale'
import type { ProfileScale } from './profile-scale'

/** The readings of the axis as discs with bars of ± U. */
export function ProfileReadings(props: {
  readonly scale: ProfileScale
  readonly middleMm: number
  readonly readings: readonly MapContact<StationFinding>[]
}) {
  const { scale, middleMm, readings } = props
  const across = (mm: number) => scale.across((mm - middleMm) * 1000)
  return readings.map(({ depthMm, station }) => {
    const y = downOf(scale, depthMm)
    const verdict = station.counted ? station.conformity?.verdict : undefined
    const [least, most] = [-1, 1].map((way) => across(station.diameterMm + way * station.expandedMm))
    return (
      <g key={depthMm}>
        <path d={`M${least},${y - 3}v6m0,-3H${most}m0,-3v6`} className="chart-u" />
        <circle
          cx={across(station.diameterMm)}
          cy={y}
          r={station.counted ? 3 : 3.4}
          className={station.counted ? 'map-station' : 'map-station map-station-open'}
        />
        {verdict === 'above' || verdict === 'below' ? (
          <text
            x={across(station.diameterMm)}
            y={y - 6}
            textAnchor="middle"
            className={`chart-sign is-${verdict}`}
          >
            {verdict === 'above' ? '+' : '−'}
          </text>
        ) : null}
      </g>
    )
  })
}

/** An axis that is not the chosen one. */
export interface FaintAxis {
  readonly axisDegrees: number
  readonly path: string
  /** Where it ends, pixels. */
  readonly end: { readonly x: number; readonly y: number } | undefined
}

/** The other axes, faint, with their angles beneath where there is room; the chosen one has its own first. */
export function ProfileFaint(props: {
  readonly scale: ProfileScale
  readonly axes: readonly FaintAxis[]
  readonly chosen: Pick<FaintAxis, 'axisDegrees' | 'end'>
  readonly letter: number
}) {
  const { scale, axes, chosen, letter } = props
  const named = [chosen, ...axes].flatMap(({ axisDegrees, end }) => (end ? [{ axisDegrees, end }] : []))
  const labels = labelRow(
    named.map(({ axisDegrees, end }) => ({ x: end.x, texts: [degrees(axisDegrees)] })),
    { left: scale.left, right: scale.left + scale.width },
    letter,
  )
  const bottom = scale.top + scale.height
  return (
    <>
      {axes.map(({ axisDegrees, path }) => (
        <path key={axisDegrees} d={path} className="chart-faint" />
      ))}
      {named.map(({ axisDegrees }, i) => {
        const label = labels[i]
        const isChosen = axisDegrees === chosen.axisDegrees
        return label ? (
          <text
            key={axisDegrees}
            x={label.x}
            y={bottom + 13}
            className={isChosen ? 'chart-axis-name is-chosen' : 'chart-axis-name'}
          >
            {label.text}
          </text>
        ) : null
      })}
    </>
  )
}

const laneWidth = 12

/**
 * Surface findings that the axis crosses: a double line at the right of where they are, the shorter ones first,
 * each with a line to its name.
 */
export function ProfileSurface(props: {
  readonly scale: ProfileScale
  readonly surface: readonly SurfaceFinding[]
  readonly angles: readonly number[]
}) {
  const { scale, surface, angles } = props
  const crossed = surface
    .map((found, index) => ({ found, text: surfaceTitle(index + 1, found) }))
    .filter(({ found }) => angles.some((angle) => isWithinSurface(found, found.fromDepthMm, angle)))
    .sort((a, b) => lengthOf(a.found) - lengthOf(b.found))
  const first = scale.left + scale.width - 8 - (crossed.length - 1) * laneWidth
  const named = first - 8
  const downs = labelsDown(
    crossed.map(({ found }) => downOf(scale, (found.fromDepthMm + found.toDepthMm) / 2)),
  )
  return crossed.map(({ found, text }, lane) => {
    const x = first + lane * laneWidth
    const from = downOf(scale, found.fromDepthMm)
    const to = Math.max(from + 8, downOf(scale, found.toDepthMm))
    const y = downs[lane] ?? from
    return (
      <g key={found.id} className="chart-surface">
        <title>{`${text}, ${surfacePlaceText(found)}`}</title>
        <line x1={named + 2} x2={x} y1={y} y2={y} className="chart-surface-leader" />
        <path d={`M${x},${from}V${to}`} className="chart-surface-ink" />
        <path d={`M${x},${from}V${to}`} className="chart-surface-paper" />
        <text x={named} y={y + 4} textAnchor="end" className="chart-on-ground">
          {text}
        </text>
      </g>
    )
  })
}

function lengthOf({ fromDepthMm, toDepthMm }: SurfaceFinding): number {
  return toDepthMm - fromDepthMm
}
