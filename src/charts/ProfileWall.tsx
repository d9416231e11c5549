import { useId } from 'react'
import type { StationFinding } from '../core/findings'
import type { CutStretch } from '../core/surface/cut-stretches'
import { colourRuns, judgedRuns } from './cut-runs'
import type { DrawnLimit } from './drawn-limits'
import type { MapPaint } from './MapWall'
import { dotPitch, dotRows, hatchLines } from './map-texture'
import { profileBandPath, profileCutPath, profilePath } from './profile-paths'
import type { ProfileScale } from './profile-scale'
import { uAlong } from './u-along'

/** The wall along the chosen axis, in its colours where it was measured, within the shade of its doubt. */
export function ProfileWall(props: {
  readonly scale: ProfileScale
  readonly stretches: readonly CutStretch[]
  readonly limits: readonly DrawnLimit[]
  readonly paint: MapPaint
  /** The counted readings of the axis. */
  readonly stations: readonly StationFinding[]
}) {
  const { scale, stretches, limits, paint, stations } = props
  const id = useId()
  const hatched = stretches.filter((stretch) => stretch.hatched)
  const measured = stretches.filter((stretch) => !stretch.hatched)
  const judged = measured.flatMap((stretch) => judgedRuns(stretch, limits))
  const doubtful = judged.filter(({ key }) => key === 'too-close')
  const doubtUm = (depthMm: number) => (uAlong(stations, depthMm) ?? 0) * 1000
  return (
    <>
      {measured.map(({ points }) => (
        <path
          key={points[0]?.at}
          d={profileBandPath(scale, points, ({ at, deviationUm }) => [
            deviationUm - doubtUm(at),
            deviationUm + doubtUm(at),
          ])}
          className="chart-u-band"
        />
      ))}
      {measured.flatMap((stretch) =>
        colourRuns(stretch, paint).map(({ key, points }) => (
          <path
            key={points[0]?.at}
            d={profileCutPath(scale, points)}
            fill={key}
            stroke={key}
            className="chart-cut"
          />
        )),
      )}
      {hatched.length > 0 ? (
        <>
          <clipPath id={`${id}-hatch`}>
            <path d={hatched.map(({ points }) => profileCutPath(scale, points)).join('')} />
          </clipPath>
          <path d={hatchLines(scale)} clipPath={`url(#${id}-hatch)`} className="chart-hatch" />
        </>
      ) : null}
      {doubtful.length > 0 ? (
        <>
          <clipPath id={`${id}-dots`}>
            <path d={doubtful.map(({ points }) => profileCutPath(scale, points)).join('')} />
          </clipPath>
          <path
            d={dotRows(scale)}
            strokeDasharray={`0 ${dotPitch}`}
            clipPath={`url(#${id}-dots)`}
            className="map-dots"
          />
        </>
      ) : null}
      {judged.map(({ key, points }) =>
        key === 'above' || key === 'below' ? (
          <path
            key={points[0]?.at}
            d={profileCutPath(scale, points)}
            className={`map-proven map-proven-${key}`}
          />
        ) : null,
      )}
      <path d={measured.map(({ points }) => profilePath(scale, points)).join('')} className="chart-face" />
    </>
  )
}
