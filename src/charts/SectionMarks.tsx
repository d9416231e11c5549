import type { StationFinding } from '../core/findings'
import type { SurfaceFinding } from '../core/measured'
import { surfaceWidthDegrees } from '../core/surface-findings/surface-place'
import { surfacePlaceText, surfaceTitle } from '../words/surface'
import type { MapContact } from './map-contacts'
import { arcPath } from './section-paths'
import { cutPx, type SectionScale, sectionPlace } from './section-scale'

const about = <Scale extends SectionScale>(scale: Scale) => ({ ...scale, x: 0, y: 0 })

/** The readings at a level as discs with their U, at each contact. */
export function SectionReadings(props: {
  readonly scale: SectionScale
  readonly middleMm: number
  readonly readings: readonly MapContact<StationFinding>[]
}) {
  const { scale, middleMm, readings } = props
  return readings.map(({ angleDegrees, station }) => {
    const angle = (angleDegrees * Math.PI) / 180
    const at = (mm: number) => sectionPlace(about(scale), angle, scale.radius((mm - middleMm) * 1000))
    const disc = at(station.diameterMm)
    const least = at(station.diameterMm - station.expandedMm)
    const most = at(station.diameterMm + station.expandedMm)
    const verdict = station.counted ? station.conformity?.verdict : undefined
    const sign = sectionPlace(about(scale), angle, scale.outer + 2)
    return (
      <g key={angleDegrees}>
        <line x1={least.x} y1={least.y} x2={most.x} y2={most.y} className="chart-u" />
        <circle
          cx={disc.x}
          cy={disc.y}
          r={station.counted ? 3 : 3.4}
          className={station.counted ? 'map-station' : 'map-station map-station-open'}
        />
        {verdict === 'above' || verdict === 'below' ? (
          <text x={sign.x} y={sign.y + 5} textAnchor="middle" className={`chart-sign is-${verdict}`}>
            {verdict === 'above' ? '+' : '−'}
          </text>
        ) : null}
      </g>
    )
  })
}

/** Surface findings that lie at the level: a double line round where they are, with their names. */
export function SectionSurface(props: {
  readonly scale: SectionScale
  readonly surface: readonly SurfaceFinding[]
  readonly depthMm: number
  readonly wallPx: (angleRad: number) => number
}) {
  const { scale, surface, depthMm, wallPx } = props
  return surface.map((found, index) => {
    if (depthMm < found.fromDepthMm || depthMm > found.toDepthMm) return null
    const width = (surfaceWidthDegrees(found) * Math.PI) / 180
    const middle = (found.fromDegrees * Math.PI) / 180 + width / 2
    const half = Math.max(width / 2, 4 / scale.outer)
    const radius = wallPx(middle) + cutPx / 2
    const text = surfaceTitle(index + 1, found)
    const named = sectionPlace(about(scale), middle, radius - 16)
    return (
      <g key={found.id} className="chart-surface">
        <title>{`${text}, ${surfacePlaceText(found)}`}</title>
        <path d={arcPath(radius, middle - half, middle + half)} className="chart-surface-ink" />
        <path d={arcPath(radius, middle - half, middle + half)} className="chart-surface-paper" />
        <text x={named.x} y={named.y + 4} textAnchor={anchorAt(middle)}>
          {text}
        </text>
      </g>
    )
  })
}

/** Towards the middle of the section. */
function anchorAt(angleRad: number): 'start' | 'middle' | 'end' {
  const across = Math.sin(angleRad)
  if (Math.abs(across) < 0.4) return 'middle'
  return across > 0 ? 'end' : 'start'
}
