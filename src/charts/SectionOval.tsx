import type { FittedOval } from '../core/findings'
import { type OvalCurve, ovalDiameter } from '../core/form/oval-curve'
import { closedPath, wedgePath } from './section-paths'
import { type SectionScale, sectionPlace } from './section-scale'

/**
 * The oval as fitted, where a direction stands out: its curve, its long axis within the angles that it may have,
 * and at both ends how far the oval may be more or less.
 */
export function SectionOval(props: {
  readonly scale: SectionScale
  readonly middleMm: number
  readonly oval: FittedOval
  readonly curve: OvalCurve
}) {
  const { scale, middleMm, oval, curve } = props
  const { longAxisDegrees, longAxisExpandedDegrees } = oval
  if (longAxisDegrees === undefined || longAxisExpandedDegrees === undefined) return null
  const um = (mm: number) => (mm - middleMm) * 1000
  const axis = (longAxisDegrees * Math.PI) / 180
  const doubt = (longAxisExpandedDegrees * Math.PI) / 180
  const longest = um(ovalDiameter(curve, axis))
  const half = oval.expandedMm * 500
  return (
    <g className="chart-oval">
      {[axis, axis + Math.PI].map((angle) => {
        const tip = sectionPlace({ ...scale, x: 0, y: 0 }, angle, scale.radius(longest))
        const from = sectionPlace({ ...scale, x: 0, y: 0 }, angle, scale.radius(longest - half))
        const to = sectionPlace({ ...scale, x: 0, y: 0 }, angle, scale.radius(longest + half))
        return (
          <g key={angle}>
            <path
              d={wedgePath(scale.radius(longest), angle - doubt, angle + doubt)}
              className="chart-oval-doubt"
            />
            <line x1="0" y1="0" x2={tip.x} y2={tip.y} />
            <line x1={from.x} y1={from.y} x2={to.x} y2={to.y} className="chart-oval-size" />
          </g>
        )
      })}
      <path d={closedPath(scale, (angle) => um(ovalDiameter(curve, angle)))} className="chart-oval-curve" />
    </g>
  )
}
