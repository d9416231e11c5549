import { type KeyboardEvent, type PointerEvent, useEffect, useId, useMemo, useRef } from 'react'
import type { DrawnStation, LimitPair } from '../core/findings'
import type { Port, SurfaceFinding } from '../core/measured'
import type { ScanMark } from '../core/scan/scan-marks'
import type { WallGrid } from '../core/surface/wall-grid'
import { surfaceNear } from '../core/surface-findings/surface-place'
import { words } from '../words/words'
import { MapAxes } from './MapAxes'
import { MapMarks } from './MapMarks'
import { MapScanMarks } from './MapScanMarks'
import { DrawnPlace, MapSurface } from './MapSurface'
import { type MapPaint, MapWall } from './MapWall'
import { contactId, contactsOf, nearContact, nextContact, samePlace } from './map-contacts'
import { type MapPlace, type MapScale, placeUnder } from './map-scale'
import { ScanMapWall } from './ScanMapWall'
import { type MapMarking, pixelUnder, useMapDrag } from './use-map-drag'
import './unrolled-map.css'

export interface UnrolledMapProps {
  readonly grid: WallGrid | undefined
  readonly paint: MapPaint | undefined
  readonly lengthMm: number
  readonly levelsMm: readonly number[]
  readonly ports: readonly Port[]
  readonly stations: readonly DrawnStation[]
  readonly surface: readonly SurfaceFinding[]
  /** What stands out in the scan that the wall is drawn from. */
  readonly scanMarks?: readonly ScanMark[] | undefined
  /** Absent: nothing is marked on this map. */
  readonly marking?: MapMarking
  readonly pair: LimitPair | undefined
  readonly pointed: MapPlace | undefined
  /** Where the next reading is taken, by one of its contacts. */
  readonly next?: MapPlace | undefined
  readonly onPoint: (place: MapPlace | undefined) => void
  readonly width: number
  readonly height: number
  /** The wall is the difference of two, its stations with it. */
  readonly isDifference?: boolean
  /** The wall is that of a scan: as an image, without lines. */
  readonly isScan?: boolean
  /** How a station's figure is written; as a size where absent. */
  readonly figureOf?: (station: DrawnStation) => string
}

const margin = { left: 44, right: 10, top: 34, bottom: 6 }

/** The wall unrolled flat, seen from inside: angle across with the front in the middle, depth down. */
export function UnrolledMap(props: UnrolledMapProps) {
  const { width, height, lengthMm, onPoint, stations, surface, pointed } = props
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
  const element = useRef<HTMLDivElement>(null)
  const byTouch = props.marking?.byTouch ?? false
  useEffect(() => {
    if (byTouch) element.current?.scrollIntoView({ block: 'nearest' })
  }, [byTouch])
  const drag = useMapDrag(scale, props.marking)
  const pixelOf = (event: PointerEvent<SVGSVGElement>) => pixelUnder(event, width, height)
  const point = (event: PointerEvent<SVGSVGElement>) => {
    const { x, y } = pixelOf(event)
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
      ref={element}
      className={byTouch ? 'unrolled-map is-marking' : 'unrolled-map'}
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
        onPointerMove={(event) => {
          if (!drag.move(event, pixelOf(event)) && !isTouch(event)) point(event)
        }}
        onPointerDown={(event) => {
          drag.start(event, pixelOf(event))
          if (!isTouch(event)) point(event)
        }}
        onPointerLeave={(event) => (isTouch(event) ? undefined : onPoint(undefined))}
        onPointerUp={(event) => {
          if (!drag.end(event)) point(event)
        }}
        onPointerCancel={drag.cancel}
        role="presentation"
      >
        {props.isScan && props.grid && props.paint ? (
          <ScanMapWall grid={props.grid} paint={props.paint} ports={props.ports} scale={scale} />
        ) : (
          <MapWall {...props} scale={scale} isoLines />
        )}
        {props.scanMarks ? (
          <MapScanMarks
            scale={scale}
            marks={props.scanMarks}
            lit={pointed ? surfaceNear(props.scanMarks, pointed, lengthMm) : []}
          />
        ) : null}
        <MapSurface
          scale={scale}
          surface={surface}
          lit={pointed ? surfaceNear(surface, pointed, lengthMm).map((found) => found.id) : []}
        />
        <MapMarks
          id={id}
          contacts={contacts}
          scale={scale}
          pointed={pointed}
          next={props.next}
          figureOf={props.figureOf}
        />
        {drag.place ? <DrawnPlace scale={scale} place={drag.place} /> : null}
        <MapAxes scale={scale} levelsMm={props.levelsMm} />
      </svg>
    </div>
  )
}

/** A finger scrolls the page; it points where it is lifted without having scrolled, and the place stays pointed at. */
function isTouch({ pointerType }: PointerEvent): boolean {
  return pointerType === 'touch'
}
