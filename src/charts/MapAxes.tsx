import { unitText } from '../words/length-unit'
import { lengthFigure } from '../words/numbers'
import { angleLabel } from './angle-label'
import { depthLabels } from './depth-labels'
import { acrossOf, type MapScale } from './map-scale'

const lineHeight = 13

/** Below this width the rear, at both edges, would run into the sides. */
const narrowPx = 310

/** Angles with the names of the sides along the top, depths of the levels down the left side. */
export function MapAxes({
  scale,
  levelsMm,
}: {
  readonly scale: MapScale
  readonly levelsMm: readonly number[]
}) {
  return (
    <g className="map-axes">
      {[270, 0, 90].map((angle) => (
        <AngleTick
          key={angle}
          scale={scale}
          x={acrossOf(scale, angle)}
          label={angleLabel(angle)}
          anchor="middle"
        />
      ))}
      {scale.width < narrowPx ? null : (
        <>
          <AngleTick scale={scale} x={scale.left} label={angleLabel(180)} anchor="start" />
          <AngleTick scale={scale} x={scale.left + scale.width} label={angleLabel(180)} anchor="end" />
        </>
      )}
      {depthLabels(scale, levelsMm, lineHeight).map(({ depthMm, y, labelled }) => (
        <g key={depthMm}>
          <line x1={scale.left - 4} x2={scale.left} y1={y} y2={y} />
          {labelled ? (
            <text x={scale.left - 7} y={y + 4} textAnchor="end">
              {lengthFigure(depthMm, 1)}
            </text>
          ) : null}
        </g>
      ))}
      <text x={scale.left - 7} y={scale.top - 8} textAnchor="end" className="map-unit">
        {unitText()}
      </text>
    </g>
  )
}

function AngleTick(props: {
  readonly scale: MapScale
  readonly x: number
  readonly label: string
  readonly anchor: 'start' | 'middle' | 'end'
}) {
  const { scale, x, label, anchor } = props
  return (
    <>
      <line x1={x} x2={x} y1={scale.top - 4} y2={scale.top} />
      <text x={x} y={scale.top - 8} textAnchor={anchor}>
        {label}
      </text>
    </>
  )
}
