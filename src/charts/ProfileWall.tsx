import type { StationFinding } from '../core/findings'
import { CutWall, type CutWallProps } from './CutWall'
import { profileBandPath, profileCutPath, profilePath } from './profile-paths'
import type { ProfileScale } from './profile-scale'
import { uAlong } from './u-along'

/** The wall along the chosen axis, broken where nobody measured, within the shade of its doubt. */
export function ProfileWall(
  props: Pick<CutWallProps, 'stretches' | 'limits' | 'paint'> & {
    readonly scale: ProfileScale
    /** The counted readings of the axis. */
    readonly stations: readonly StationFinding[]
  },
) {
  const { scale, stations, ...wall } = props
  const doubtUm = (depthMm: number) => (uAlong(stations, depthMm) ?? 0) * 1000
  const measured = wall.stretches.filter((stretch) => !stretch.hatched)
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
      <CutWall
        {...wall}
        area={scale}
        outlineOf={(points) => profileCutPath(scale, points)}
        faceOf={(points) => profilePath(scale, points)}
        unmeasured="open"
      />
    </>
  )
}
