import type { Belt } from '../core/measured'
import { roundSizes, unitText } from '../words/length-unit'
import { lengthFigure, microns, size } from '../words/numbers'
import { words } from '../words/words'
import { depthLabels } from './depth-labels'
import { labelRow, labelsDown } from './label-row'
import { downOf } from './map-scale'
import { hatchLines } from './map-texture'
import type { OpenedAlong } from './openings'
import type { ProfileScale } from './profile-scale'

const lineHeight = 13

/** Depths of the levels at the left, sizes at the top. */
export function ProfileAxes(props: {
  readonly scale: ProfileScale
  readonly levelsMm: readonly number[]
  readonly middleMm: number
  readonly letter: number
  /** Deviations are written in µm and no sizes. */
  readonly inMicrons?: boolean
}) {
  const { scale, levelsMm, letter, inMicrons = false } = props
  const middleMm = inMicrons ? 0 : props.middleMm
  const right = scale.left + scale.width
  const sizes = scale.across.copy().domain(scale.across.domain().map((um) => middleMm + um / 1000))
  const ticks = roundSizes((perUnit) =>
    sizes
      .copy()
      .domain(sizes.domain().map((mm) => mm / perUnit))
      .ticks(Math.max(2, Math.floor(scale.width / 90))),
  )
  const texts = labelRow(
    ticks.map((mm) => ({ x: sizes(mm), texts: [inMicrons ? microns(mm, { sign: true }) : size(mm)] })),
    { left: scale.left - 4, right: right + 14 },
    letter,
  )
  return (
    <g className="map-axes">
      {depthLabels(scale, levelsMm, lineHeight).map(({ depthMm, y, labelled }) => (
        <g key={depthMm}>
          <line x1={scale.left} x2={right} y1={y} y2={y} className="chart-level" />
          <line x1={scale.left - 4} x2={scale.left} y1={y} y2={y} />
          {labelled ? (
            <text x={scale.left - 7} y={y + 4} textAnchor="end">
              {lengthFigure(depthMm, 1)}
            </text>
          ) : null}
        </g>
      ))}
      {ticks.map((mm, i) => (
        <g key={mm}>
          <line x1={sizes(mm)} x2={sizes(mm)} y1={scale.top - 4} y2={scale.top} />
          {texts[i] ? (
            <text x={texts[i].x} y={scale.top - 7}>
              {texts[i].text}
            </text>
          ) : null}
        </g>
      ))}
      <text x={scale.left - 7} y={scale.top - 7} textAnchor="end" className="map-unit">
        {unitText()}
      </text>
    </g>
  )
}

/** What lies along the axis: ports as holes at the left, belts hatched, and where the rings run at the right. */
export function ProfileLanes(props: {
  readonly scale: ProfileScale
  readonly opened: readonly OpenedAlong[]
  readonly belts: readonly Belt[]
  readonly ringTravelMm: { readonly from: number; readonly to: number } | undefined
  readonly id: string
}) {
  const { scale, opened, belts, ringTravelMm, id } = props
  const right = scale.left + scale.width
  const span = (from: number, to: number) => {
    const y = downOf(scale, Math.max(0, from))
    return { y, height: Math.max(1, downOf(scale, Math.min(scale.lengthMm, to)) - y) }
  }
  const names = labelsDown(
    opened.map(({ from, to }) => {
      const { y, height } = span(from, to)
      return y + height / 2
    }),
  )
  return (
    <>
      {belts.map((belt) => {
        const { y, height } = span(belt.fromDepthMm, belt.toDepthMm)
        return (
          <g key={belt.id} className="chart-lane">
            <clipPath id={`${id}-belt-${belt.id}`}>
              <rect x={scale.left} width={scale.width} y={y} height={height} />
            </clipPath>
            <path d={hatchLines(scale)} clipPath={`url(#${id}-belt-${belt.id})`} className="chart-hatch" />
            {height >= lineHeight ? (
              <text x={right - 4} y={y + height / 2 + 4} textAnchor="end" className="chart-on-ground">
                {belt.name}
              </text>
            ) : null}
          </g>
        )
      })}
      {opened.map(({ name, from, to }, i) => {
        const { y, height } = span(from, to)
        return (
          <g key={name} className="chart-lane">
            <rect x={scale.left} width="9" y={y} height={height} className="map-port">
              <title>{name}</title>
            </rect>
            {height >= lineHeight ? (
              <text x={scale.left + 14} y={(names[i] ?? y) + 4} className="chart-on-ground">
                {name}
              </text>
            ) : null}
          </g>
        )
      })}
      {ringTravelMm ? <RingTravel x={right + 8} {...span(ringTravelMm.from, ringTravelMm.to)} /> : null}
    </>
  )
}

function RingTravel({ x, y, height }: { readonly x: number; readonly y: number; readonly height: number }) {
  const middle = y + height / 2
  return (
    <g className="chart-travel">
      <path d={`M${x - 4},${y}h4v${height}h-4`} />
      <text x={x + 4} y={middle + 4} textAnchor="middle" transform={`rotate(90 ${x + 4} ${middle})`}>
        {words.profile.ringTravel}
      </text>
    </g>
  )
}
