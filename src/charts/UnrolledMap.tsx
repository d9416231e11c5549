import { type KeyboardEvent, type PointerEvent, useId, useMemo } from 'react'
import type { LimitPair, StationFinding } from '../core/findings'
import type { Port } from '../core/measured'
import { isoStep } from '../core/surface/exaggeration'
import type { WallGrid } from '../core/surface/wall-grid'
import { words } from '../words/words'
import { hatchedRects } from './hatched-rects'
import { MapAxes } from './MapAxes'
import { MapMarks } from './MapMarks'
import { contactId, contactsOf, nearContact, nextContact, samePlace } from './map-contacts'
import { type MapContours, mapContours } from './map-contours'
import { downOf, type MapPlace, type MapScale, placeUnder, stretchesOf } from './map-scale'
import './unrolled-map.css'

/** Colours that the map shares with the picture of the wall. */
export interface MapPaint {
  /** Colour of the wall inside the pair at a deviation from the middle, µm. */
  readonly colour: (deviationUm: number) => string
  /** The deviations at which the ramp ends, µm. */
  readonly span: { readonly lowUm: number; readonly highUm: number }
}

export interface UnrolledMapProps {
  readonly grid: WallGrid | undefined
  readonly paint: MapPaint | undefined
  readonly lengthMm: number
  readonly levelsMm: readonly number[]
  readonly ports: readonly Port[]
  readonly stations: readonly StationFinding[]
  readonly pair: LimitPair | undefined
  readonly pointed: MapPlace | undefined
  readonly onPoint: (place: MapPlace | undefined) => void
  readonly width: number
  readonly height: number
}

const margin = { left: 44, right: 10, top: 34, bottom: 6 }

/** The wall unrolled flat, seen from inside: angle across with the front in the middle, depth down. */
export function UnrolledMap(props: UnrolledMapProps) {
  const { width, height, lengthMm, onPoint, stations, pointed } = props
  const scale = useMemo<MapScale>(
    () => ({
      left: margin.left,
      top: margin.top,
      width: width - margin.left - margin.right,
      height: height - margin.top - margin.bottom,
      lengthMm,
    }),
    [width, height, lengthMm],
  )
  const id = useId()
  const contacts = useMemo(() => contactsOf(stations), [stations])
  const chosen = contacts.find((c) => pointed !== undefined && samePlace(c, pointed))
  const point = (event: PointerEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect()
    const x = ((event.clientX - box.left) / box.width) * width
    const y = ((event.clientY - box.top) / box.height) * height
    onPoint(nearContact(contacts, scale, x, y) ?? placeUnder(scale, x, y))
  }
  const step = (event: KeyboardEvent) => {
    const next = nextContact(contacts, pointed, event.key)
    if (!next) return
    event.preventDefault()
    onPoint(next)
  }
  return (
    <div
      className="unrolled-map"
      {...(contacts.length > 0
        ? {
            role: 'listbox',
            tabIndex: 0,
            'aria-label': `${words.map.label}. ${words.map.keys}`,
            'aria-activedescendant': chosen === undefined ? undefined : contactId(id, chosen),
            onKeyDown: step,
          }
        : {})}
    >
      <svg
        viewBox={`0 0 ${width} ${height}`}
        width={width}
        height={height}
        onPointerMove={point}
        onPointerDown={point}
        onPointerLeave={() => onPoint(undefined)}
        role="presentation"
      >
        <MapWall {...props} scale={scale} />
        <MapMarks id={id} contacts={contacts} scale={scale} pointed={pointed} />
        <MapAxes scale={scale} levelsMm={props.levelsMm} />
      </svg>
    </div>
  )
}

function MapWall({ grid, paint, pair, ports, scale }: UnrolledMapProps & { readonly scale: MapScale }) {
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
      contours: mapContours(grid, scale, pair, paint.span, isoStep(high - low)),
      hatched: hatchedRects(grid, scale),
    }
  }, [grid, paint, pair, scale])
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
