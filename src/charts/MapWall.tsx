import { useId, useMemo } from 'react'
import type { LimitPair } from '../core/findings'
import type { Port } from '../core/measured'
import { isoStep } from '../core/surface/exaggeration'
import type { WallGrid } from '../core/surface/wall-grid'
import { roundStepUm } from '../words/length-unit'
import { hatchedRects } from './hatched-rects'
import { MapPorts } from './MapPorts'
import { MapUnmeasured } from './MapUnmeasured'
import { type MapContours, mapContours } from './map-contours'
import type { MapScale } from './map-scale'
import { dotPitch, dotRows, hatchLines, pathOfRects } from './map-texture'

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
  /** The wall is the difference of two: no limits, dots where it may be none. */
  readonly isDifference?: boolean
}

/** So far apart that no wall has two. */
const noIsoLinesUm = 1e9

/** The wall itself: colours, lines, hatching, ports and frame. An element of an SVG. */
export function MapWall({ grid, paint, pair, ports, scale, isoLines, isDifference = false }: MapWallProps) {
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
      contours: mapContours(
        grid,
        scale,
        pair,
        paint.span,
        isoLines ? isoStep(high - low, roundStepUm()) : noIsoLinesUm,
        isDifference,
      ),
      hatched: pathOfRects(hatchedRects(grid, scale)),
    }
  }, [grid, paint, pair, scale, isoLines, isDifference])
  const { left: x, top: y, width, height } = scale
  return (
    <>
      <clipPath id={`${id}-wall`}>
        <rect x={x} y={y} width={width} height={height} />
      </clipPath>
      <g clipPath={`url(#${id}-wall)`}>
        <rect x={x} y={y} width={width} height={height} className="map-ground" />
        {drawn && paint ? (
          <MapContourPaths
            contours={drawn.contours}
            hatched={drawn.hatched}
            paint={paint}
            scale={scale}
            id={id}
          />
        ) : null}
        {drawn ? <MapUnmeasured path={drawn.hatched} scale={scale} id={id} /> : null}
        {drawn ? null : <path d={hatchLines(scale)} className="map-hatch" />}
        <MapPorts ports={ports} scale={scale} />
      </g>
      <rect x={x} y={y} width={width} height={height} className="map-frame" />
    </>
  )
}

interface Textured {
  /** The part of the wall that carries the texture. */
  readonly path: string
  readonly scale: MapScale
  readonly id: string
}

/** Dots where it is too close to call. */
function Doubtful({ path, scale, id }: Textured) {
  return (
    <>
      <clipPath id={id}>
        <path d={path} />
      </clipPath>
      <path
        d={dotRows(scale)}
        strokeDasharray={`0 ${dotPitch}`}
        clipPath={`url(#${id})`}
        className="map-dots"
      />
    </>
  )
}

function MapContourPaths(props: {
  readonly contours: MapContours
  /** The part that nobody measured: nothing is said of limits there. */
  readonly hatched: string
  readonly paint: MapPaint
  readonly scale: MapScale
  readonly id: string
}) {
  const { contours: c, hatched, paint, scale, id } = props
  const { left, top, width, height } = scale
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
      <clipPath id={`${id}-measured`}>
        <path d={`M${left},${top}h${width}v${height}h${-width}Z${hatched}`} clipRule="evenodd" />
      </clipPath>
      <g clipPath={`url(#${id}-measured)`}>
        {c.withinDoubt ? <Doubtful path={c.withinDoubt} scale={scale} id={`${id}-within`} /> : null}
        {c.standsOut ? <path d={c.standsOut} className="map-stands-out" /> : null}
        {c.doubtMax ? <Doubtful path={c.doubtMax} scale={scale} id={`${id}-at-max`} /> : null}
        {c.doubtMin ? <Doubtful path={c.doubtMin} scale={scale} id={`${id}-at-min`} /> : null}
        {c.crossingMax ? <path d={c.crossingMax} className="map-crossing" /> : null}
        {c.crossingMin ? <path d={c.crossingMin} className="map-crossing" /> : null}
        {c.provenAbove ? <path d={c.provenAbove} className="map-proven map-proven-above" /> : null}
        {c.provenBelow ? <path d={c.provenBelow} className="map-proven map-proven-below" /> : null}
      </g>
    </>
  )
}
