import { type PointerEvent, useEffect, useState } from 'react'
import type { SurfacePlace } from '../core/measured'
import { draggedPlace } from './dragged-place'
import type { MapScale } from './map-scale'

interface Drag {
  readonly pointerId: number
  readonly from: { readonly x: number; readonly y: number }
  readonly to: { readonly x: number; readonly y: number }
  /** It has moved far enough to be more than a press. */
  readonly isDrawn: boolean
}

/** A press that moves less, pixels, points and marks nothing. */
const least = 6

/** Marking on the map. */
export interface MapMarking {
  /** A finger marks too, and does not scroll the page. */
  readonly byTouch: boolean
  readonly onMarked: (place: SurfacePlace) => void
}

/** Where a pointer is on the map, in its own pixels. */
export function pixelUnder(event: PointerEvent<SVGSVGElement>, width: number, height: number) {
  const box = event.currentTarget.getBoundingClientRect()
  return {
    x: ((event.clientX - box.left) / box.width) * width,
    y: ((event.clientY - box.top) / box.height) * height,
  }
}

/** A mark drawn by dragging, which Escape takes back; `place` is where it lies while it is drawn. */
export function useMapDrag(scale: MapScale, marking: MapMarking | undefined) {
  const [drag, setDrag] = useState<Drag>()
  const isHeld = drag !== undefined
  useEffect(() => {
    if (!isHeld) return
    const cancel = (event: KeyboardEvent) => {
      if (event.key === 'Escape') setDrag(undefined)
    }
    window.addEventListener('keydown', cancel)
    return () => window.removeEventListener('keydown', cancel)
  }, [isHeld])
  const place = drag?.isDrawn ? draggedPlace(scale, drag.from, drag.to) : undefined
  return {
    place,
    /** Each says whether the pointer is marking, so that it does not point as well. */
    start(event: PointerEvent<SVGSVGElement>, at: Drag['from']): boolean {
      if (!marking || !event.isPrimary || event.button !== 0) return false
      if (event.pointerType === 'touch' && !marking.byTouch) return false
      if (!isOnMap(scale, at)) return false
      event.currentTarget.setPointerCapture(event.pointerId)
      setDrag({ pointerId: event.pointerId, from: at, to: at, isDrawn: false })
      return true
    },
    move(event: PointerEvent<SVGSVGElement>, to: Drag['to']): boolean {
      if (drag?.pointerId !== event.pointerId) return false
      const isDrawn = drag.isDrawn || Math.hypot(to.x - drag.from.x, to.y - drag.from.y) >= least
      setDrag({ ...drag, to, isDrawn })
      return isDrawn
    },
    end(event: PointerEvent<SVGSVGElement>): boolean {
      if (drag?.pointerId !== event.pointerId) return false
      setDrag(undefined)
      if (place) marking?.onMarked(place)
      return place !== undefined
    },
    /** The browser took the pointer for something else. */
    cancel() {
      setDrag(undefined)
    },
  }
}

function isOnMap({ left, top, width, height }: MapScale, { x, y }: Drag['from']): boolean {
  return x >= left && x <= left + width && y >= top && y <= top + height
}
