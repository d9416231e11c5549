import { useMemo } from 'react'
import type { LimitPair } from '../core/findings'
import type { Port } from '../core/measured'
import type { WallGrid } from '../core/surface/wall-grid'
import { type MapPaint, MapWall } from './MapWall'
import './unrolled-map.css'

interface SmallMapProps {
  readonly grid: WallGrid | undefined
  readonly paint: MapPaint | undefined
  readonly lengthMm: number
  readonly ports: readonly Port[]
  readonly pair: LimitPair | undefined
  readonly width: number
  readonly height: number
}

/** The wall unrolled, small, without lines or figures: to tell bores apart at a glance. */
export function SmallMap({ width, height, lengthMm, ...wall }: SmallMapProps) {
  const scale = useMemo(
    () => ({ left: 0.5, top: 0.5, width: width - 1, height: height - 1, lengthMm }),
    [width, height, lengthMm],
  )
  return (
    <svg
      className="small-map"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      aria-hidden="true"
    >
      <MapWall {...wall} scale={scale} isoLines={false} />
    </svg>
  )
}
