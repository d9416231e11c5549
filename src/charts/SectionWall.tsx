import { useId } from 'react'
import type { CutStretch } from '../core/surface/cut-stretches'
import { colourRuns, judgedRuns } from './cut-runs'
import type { DrawnLimit } from './drawn-limits'
import type { MapPaint } from './MapWall'
import { dotPitch, dotRows, hatchLines } from './map-texture'
import { cutPath, facePath } from './section-paths'
import type { SectionScale } from './section-scale'

/** The wall cut across, in its colours: firm where it was measured, hatched where nobody did, open at the ports. */
export function SectionWall(props: {
  readonly scale: SectionScale
  readonly stretches: readonly CutStretch[]
  readonly limits: readonly DrawnLimit[]
  readonly paint: MapPaint
}) {
  const { scale, stretches, limits, paint } = props
  const id = useId()
  const area = {
    left: -scale.outer,
    top: -scale.outer,
    width: 2 * scale.outer,
    height: 2 * scale.outer,
    lengthMm: 1,
  }
  const hatched = stretches.filter((stretch) => stretch.hatched)
  const measured = stretches.filter((stretch) => !stretch.hatched)
  const judged = measured.flatMap((stretch) => judgedRuns(stretch, limits))
  const doubtful = judged.filter(({ key }) => key === 'too-close')
  return (
    <>
      {stretches.flatMap((stretch) =>
        colourRuns(stretch, paint).map(({ key, points }) => (
          <path
            key={points[0]?.at}
            d={cutPath(scale, points)}
            fill={key}
            stroke={key}
            className="chart-cut"
          />
        )),
      )}
      {hatched.length > 0 ? (
        <>
          <path d={joined(hatched, (one) => cutPath(scale, one.points))} className="map-unmeasured" />
          <clipPath id={`${id}-hatch`}>
            <path d={joined(hatched, (one) => cutPath(scale, one.points))} />
          </clipPath>
          <path d={hatchLines(area)} clipPath={`url(#${id}-hatch)`} className="map-hatch" />
        </>
      ) : null}
      {doubtful.length > 0 ? (
        <>
          <clipPath id={`${id}-dots`}>
            <path d={joined(doubtful, ({ points }) => cutPath(scale, points))} />
          </clipPath>
          <path
            d={dotRows(area)}
            strokeDasharray={`0 ${dotPitch}`}
            clipPath={`url(#${id}-dots)`}
            className="map-dots"
          />
        </>
      ) : null}
      {judged.map(({ key, points }) =>
        key === 'above' || key === 'below' ? (
          <path key={points[0]?.at} d={cutPath(scale, points)} className={`map-proven map-proven-${key}`} />
        ) : null,
      )}
      <path d={joined(hatched, (one) => facePath(scale, one.points))} className="chart-face-unmeasured" />
      <path d={joined(measured, (one) => facePath(scale, one.points))} className="chart-face" />
    </>
  )
}

function joined<One>(all: readonly One[], path: (one: One) => string): string {
  return all.map(path).join('')
}
