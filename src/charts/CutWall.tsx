import { useId } from 'react'
import type { CutStretch } from '../core/surface/cut-stretches'
import { colourRuns, judgedRuns } from './cut-runs'
import type { DrawnLimit } from './drawn-limits'
import type { MapPaint } from './MapWall'
import type { MapScale } from './map-scale'
import { dotPitch, dotRows, hatchLines } from './map-texture'

type Points = CutStretch['points']

export interface CutWallProps {
  /** The part of the chart that the wall can lie in: hatch and dots cover it, to be clipped. */
  readonly area: MapScale
  readonly stretches: readonly CutStretch[]
  readonly limits: readonly DrawnLimit[]
  readonly paint: MapPaint
  /** The outline of a part of the cut, and the line of its face, as paths. */
  readonly outlineOf: (points: Points) => string
  readonly faceOf: (points: Points) => string
  /** Where nobody measured, the wall is drawn pale under the hatch with its face, or there is the hatch alone. */
  readonly unmeasured: 'pale' | 'open'
}

/** A wall that is cut open, in its colours: firm where it was measured, hatched where nobody did, dotted where it is too close to call. */
export function CutWall(props: CutWallProps) {
  const { stretches, limits, paint, outlineOf, faceOf } = props
  const id = useId()
  const isPale = props.unmeasured === 'pale'
  const hatched = stretches.filter((stretch) => stretch.hatched)
  const measured = stretches.filter((stretch) => !stretch.hatched)
  const judged = measured.flatMap((stretch) => judgedRuns(stretch, limits))
  const doubtful = judged.filter(({ key }) => key === 'too-close')
  const outline = joined(hatched, outlineOf)
  return (
    <>
      {(isPale ? stretches : measured).flatMap((stretch) =>
        colourRuns(stretch, paint).map(({ key, points }) => (
          <path key={points[0]?.at} d={outlineOf(points)} fill={key} stroke={key} className="chart-cut" />
        )),
      )}
      {hatched.length > 0 ? (
        <>
          {isPale ? <path d={outline} className="map-unmeasured" /> : null}
          <clipPath id={`${id}-hatch`}>
            <path d={outline} />
          </clipPath>
          <path
            d={hatchLines(props.area)}
            clipPath={`url(#${id}-hatch)`}
            className={isPale ? 'map-hatch' : 'chart-hatch'}
          />
        </>
      ) : null}
      {doubtful.length > 0 ? (
        <>
          <clipPath id={`${id}-dots`}>
            <path d={joined(doubtful, outlineOf)} />
          </clipPath>
          <path
            d={dotRows(props.area)}
            strokeDasharray={`0 ${dotPitch}`}
            clipPath={`url(#${id}-dots)`}
            className="map-dots"
          />
        </>
      ) : null}
      {judged.map(({ key, points }) =>
        key === 'above' || key === 'below' ? (
          <path key={points[0]?.at} d={outlineOf(points)} className={`map-proven map-proven-${key}`} />
        ) : null,
      )}
      {isPale ? <path d={joined(hatched, faceOf)} className="chart-face-unmeasured" /> : null}
      <path d={joined(measured, faceOf)} className="chart-face" />
    </>
  )
}

function joined(parts: readonly { readonly points: Points }[], path: (points: Points) => string): string {
  return parts.map(({ points }) => path(points)).join('')
}
