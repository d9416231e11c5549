import { useId, useMemo } from 'react'
import type { LimitPair } from '../core/findings'
import type { Port } from '../core/measured'
import { isoStep } from '../core/surface/exaggeration'
import type { WallGrid } from '../core/surface/wall-grid'
import { hatchedRects } from './hatched-rects'
import { type MapContours, mapContours } from './map-contours'
import { downOf, type MapScale, stretchesOf } from './map-scale'

/** Colours that the map shares with the picture of the wall. */
export interface MapPaint {
  /** Colour of the wall inside the pair at a deviation from the middle, µm. */
  readonly colour: (deviationUm: number) => string
  /** The deviations at which the ramp ends, µm. */
  readonly span: { readonly lowUm: number; readonly highUm: number }
}

interface MapWallProps {
  readonly grid: WallGrid | undefined
  readonly paint: MapPaint | undefined
  readonly pair: LimitPair | undefined
  readonly ports: readonly Port[]
  readonly scale: MapScale
  readonly isoLines: boolean
}

/** So far apart that no wall has two. */
const noIsoLinesUm = 1e9

/** The wall itself: colours, lines, hatching, ports and frame. An element of an SVG. */
export function MapWall({ grid, paint, pair, ports, scale, isoLines }: MapWallProps) {
  const id = useId()
  const drawn = useMemo(() => {
    if (!grid || !paint) return undefined
    let low = Number.POSITIVE_INFINITY
    let high = Number.NEGATIVE_INFINITY
    for (const um of grid.deviationsUm) {
      low = Math.min(low, um)
      high = Math.max(high, um)
    }
    return {
      contours: mapContours(grid, scale, pair, paint.span, isoLines ? isoStep(high - low) : noIsoLinesUm),
      hatched: hatchedRects(grid, scale),
    }
  }, [grid, paint, pair, scale, isoLines])
  const { left: x, top: y, width, height } = scale
  return (
    <>
      <Patterns id={id} />
      <clipPath id={`${id}-wall`}>
        <rect x={x} y={y} width={width} height={height} />
      </clipPath>
      <g clipPath={`url(#${id}-wall)`}>
        <rect x={x} y={y} width={width} height={height} className="map-ground" />
        {drawn && paint ? (
          <MapContourPaths contours={drawn.contours} paint={paint} scale={scale} id={id} />
        ) : null}
        {drawn?.hatched.map((r) => (
          <g key={`${r.x} ${r.y}`}>
            <rect {...r} className="map-unmeasured" />
            <rect {...r} fill={`url(#${id}-hatch)`} />
          </g>
        ))}
        {drawn ? null : <rect x={x} y={y} width={width} height={height} fill={`url(#${id}-hatch)`} />}
        {ports.flatMap((port) =>
          stretchesOf(scale, port.fromDegrees, port.toDegrees).map((stretch) => (
            <rect
              key={`${port.id} ${stretch.x}`}
              className="map-port"
              {...stretch}
              y={downOf(scale, port.fromDepthMm)}
              height={downOf(scale, port.toDepthMm) - downOf(scale, port.fromDepthMm)}
            >
              <title>{port.name}</title>
            </rect>
          )),
        )}
      </g>
      <rect x={x} y={y} width={width} height={height} className="map-frame" />
    </>
  )
}

function Patterns({ id }: { readonly id: string }) {
  return (
    <defs>
      <pattern
        id={`${id}-hatch`}
        width="6"
        height="6"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <line x1="0" y1="0" x2="0" y2="6" className="map-hatch" />
      </pattern>
      <pattern id={`${id}-stipple`} width="5" height="5" patternUnits="userSpaceOnUse">
        <circle cx="1.25" cy="1.25" r="0.8" className="map-dot" />
        <circle cx="3.75" cy="3.75" r="0.8" className="map-dot" />
      </pattern>
    </defs>
  )
}

function MapContourPaths(props: {
  readonly contours: MapContours
  readonly paint: MapPaint
  readonly scale: MapScale
  readonly id: string
}) {
  const { contours: c, paint, scale, id } = props
  const stipple = `url(#${id}-stipple)`
  return (
    <>
      <rect
        x={scale.left}
        y={scale.top}
        width={scale.width}
        height={scale.height}
        fill={paint.colour(paint.span.lowUm)}
      />
      {c.bands.map(({ fromUm, path }) => (
        <path key={fromUm} d={path} fill={paint.colour(fromUm)} />
      ))}
      {c.isoLines.map(({ um, path }) => (
        <path key={um} d={path} className="map-iso" />
      ))}
      {c.doubtMax ? <path d={c.doubtMax} fill={stipple} className="map-doubt" /> : null}
      {c.doubtMin ? <path d={c.doubtMin} fill={stipple} className="map-doubt" /> : null}
      {c.crossingMax ? <path d={c.crossingMax} className="map-crossing" /> : null}
      {c.crossingMin ? <path d={c.crossingMin} className="map-crossing" /> : null}
      {c.provenAbove ? <path d={c.provenAbove} className="map-proven map-proven-above" /> : null}
      {c.provenBelow ? <path d={c.provenBelow} className="map-proven map-proven-below" /> : null}
    </>
  )
}
