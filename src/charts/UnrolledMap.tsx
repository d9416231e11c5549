import { type KeyboardEvent, type PointerEvent, useId, useMemo } from 'react'
import type { LimitPair, StationFinding } from '../core/findings'
import type { Port } from '../core/measured'
import type { WallGrid } from '../core/surface/wall-grid'
import { words } from '../words/words'
import { MapAxes } from './MapAxes'
import { MapMarks } from './MapMarks'
import { type MapPaint, MapWall } from './MapWall'
import { contactId, contactsOf, nearContact, nextContact, samePlace } from './map-contacts'
import { type MapPlace, type MapScale, placeUnder } from './map-scale'
import './unrolled-map.css'

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
        onPointerMove={(event) => (isTouch(event) ? undefined : point(event))}
        onPointerDown={(event) => (isTouch(event) ? undefined : point(event))}
        onPointerLeave={(event) => (isTouch(event) ? undefined : onPoint(undefined))}
        onPointerUp={point}
        role="presentation"
      >
        <MapWall {...props} scale={scale} isoLines />
        <MapMarks id={id} contacts={contacts} scale={scale} pointed={pointed} />
        <MapAxes scale={scale} levelsMm={props.levelsMm} />
      </svg>
    </div>
  )
}

/** A finger scrolls the page; it points where it is lifted without having scrolled, and the place stays pointed at. */
function isTouch({ pointerType }: PointerEvent): boolean {
  return pointerType === 'touch'
}
