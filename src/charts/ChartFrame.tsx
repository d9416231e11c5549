import { type KeyboardEvent, type PointerEvent, type ReactNode, useId } from 'react'
import type { StationFinding } from '../core/findings'
import { contactId, type MapContact, nextContact, samePlace } from './map-contacts'
import type { MapPlace } from './map-scale'
import { readingText } from './reading-text'
import './wall-chart.css'

interface ChartFrameProps {
  /** The chart as a text. */
  readonly text: string
  /** What the list of its readings is called. */
  readonly listLabel: string
  readonly readings: readonly MapContact<StationFinding>[]
  /** All readings that the arrow keys lead to. */
  readonly reachable: readonly MapContact<StationFinding>[]
  readonly pointed: MapPlace | undefined
  readonly onPoint: (place: MapPlace | undefined) => void
  /** The place under a pixel of the chart; `isPressed`: not only passed over. */
  readonly placeAt: (x: number, y: number, isPressed: boolean) => MapPlace | undefined
  readonly next?: typeof nextContact
  readonly width: number
  readonly height: number
  readonly children: ReactNode
}

/**
 * A chart as an image with a text, and over it, not to be seen, the list of its readings: the arrow keys lead
 * from one to the next. A finger scrolls the page and points where it is lifted.
 */
export function ChartFrame(props: ChartFrameProps) {
  const { readings, reachable, pointed, onPoint, placeAt, next = nextContact, width, height } = props
  const id = useId()
  const chosen = readings.find((one) => pointed !== undefined && samePlace(one, pointed))
  const point = (event: PointerEvent<SVGSVGElement>, isPressed: boolean) => {
    const box = event.currentTarget.getBoundingClientRect()
    const x = ((event.clientX - box.left) / box.width) * width
    const y = ((event.clientY - box.top) / box.height) * height
    onPoint(placeAt(x, y, isPressed))
  }
  const step = (event: KeyboardEvent) => {
    const place = next(reachable, pointed, event.key)
    if (!place) return
    event.preventDefault()
    onPoint(place)
  }
  return (
    <div className="wall-chart" style={{ width }}>
      <svg
        role="img"
        aria-label={props.text}
        viewBox={`0 0 ${width} ${height}`}
        width={width}
        height={height}
        onPointerMove={(event) => (isTouch(event) ? undefined : point(event, false))}
        onPointerLeave={(event) => (isTouch(event) ? undefined : onPoint(undefined))}
        onPointerUp={(event) => point(event, true)}
      >
        {props.children}
      </svg>
      {reachable.length > 0 ? (
        <div
          className="chart-list"
          {...{
            role: 'listbox',
            tabIndex: 0,
            'aria-label': props.listLabel,
            'aria-activedescendant': chosen && contactId(id, chosen),
            onKeyDown: step,
          }}
        >
          {readings.map((reading) => (
            <div
              key={contactId(id, reading)}
              id={contactId(id, reading)}
              {...{ role: 'option', 'aria-selected': reading === chosen }}
            >
              {readingText(reading)}
            </div>
          ))}
        </div>
      ) : null}
    </div>
  )
}

function isTouch({ pointerType }: PointerEvent): boolean {
  return pointerType === 'touch'
}
