import type { ScanMark } from '../core/scan/scan-marks'
import { isWithinSurface, surfaceNear, surfaceWidthDegrees } from '../core/surface-findings/surface-place'
import { downOf, type MapPlace } from './map-scale'
import type { ProfileScale } from './profile-scale'
import { arcPath } from './section-paths'
import { cutPx, type SectionScale } from './section-scale'
import './scan-marks.css'

/** Marks of a scan that lie at the level: one thin line beside where they are. */
export function SectionScanMarks(props: {
  readonly scale: SectionScale
  readonly marks: readonly ScanMark[]
  readonly pointed: MapPlace | undefined
  readonly depthMm: number
  readonly lengthMm: number
  readonly wallPx: (angleRad: number) => number
}) {
  const { scale, marks, pointed, depthMm, lengthMm, wallPx } = props
  const lit = pointed ? surfaceNear(marks, pointed, lengthMm) : []
  return marks.map((mark, index) => {
    if (depthMm < mark.fromDepthMm || depthMm > mark.toDepthMm) return null
    const width = (surfaceWidthDegrees(mark) * Math.PI) / 180
    const middle = (mark.fromDegrees * Math.PI) / 180 + width / 2
    const half = Math.max(width / 2, 2 / scale.outer)
    const radius = wallPx(middle) + cutPx + 4
    return (
      <path
        key={index}
        d={arcPath(radius, middle - half, middle + half)}
        className={lit.includes(mark) ? 'scan-mark-cut is-lit' : 'scan-mark-cut'}
      />
    )
  })
}

/** Marks of a scan that the axis crosses: one thin line at the left of where they are. */
export function ProfileScanMarks(props: {
  readonly scale: ProfileScale
  readonly marks: readonly ScanMark[]
  readonly pointed: MapPlace | undefined
  readonly angleDegrees: number
}) {
  const { scale, marks, pointed, angleDegrees } = props
  const lit = pointed ? surfaceNear(marks, pointed, scale.lengthMm) : []
  const x = scale.left + 5
  return marks.map((mark, index) =>
    isWithinSurface(mark, mark.fromDepthMm, angleDegrees) ? (
      <path
        key={index}
        d={`M${x},${downOf(scale, mark.fromDepthMm)}V${lowerEnd(scale, mark)}`}
        className={lit.includes(mark) ? 'scan-mark-cut is-lit' : 'scan-mark-cut'}
      />
    ) : null,
  )
}

/** At least so far below the upper end that it can be seen. */
function lowerEnd(scale: ProfileScale, { fromDepthMm, toDepthMm }: ScanMark): number {
  return Math.max(downOf(scale, fromDepthMm) + 4, downOf(scale, toDepthMm))
}
