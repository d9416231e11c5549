import { type PointerEvent, type RefObject, useRef } from 'react'
import { PerspectiveCamera } from 'three'
import type { DrawnStation } from '../core/findings'
import type { WallGrid } from '../core/surface/wall-grid'
import { type BoreRow, boreUnder, drawnAt, rowOffsets } from './bore-row'
import { placeUnder } from './picture-pointer'
import type { PointedPlace } from './pointed-place'
import type { PictureParts } from './use-picture-scene'

interface PointerProps {
  readonly grid: WallGrid
  readonly stations: readonly DrawnStation[]
  readonly exaggeration: number
  readonly row?: BoreRow
  readonly onPoint: (place: PointedPlace | undefined) => void
  /** Another bore of the row was pressed. */
  readonly onChoose?: (boreId: string) => void
}

/** A press that moves less than this, CSS pixels, points and does not turn. */
const tapPx = 6

/** Pointing: a mouse points as it moves, a finger by a tap; whoever drags is turning the bore. */
export function usePicturePointer(props: PointerProps, parts: RefObject<PictureParts>) {
  const pressed = useRef<{ x: number; y: number }>(undefined)
  const last = useRef<PointedPlace>(undefined)

  const point = (place: PointedPlace | undefined) => {
    const same =
      place?.depthMm === last.current?.depthMm && place?.angleDegrees === last.current?.angleDegrees
    last.current = place
    if (!same || place) props.onPoint(place)
  }
  const pointUnder = (event: PointerEvent<HTMLElement>) => {
    const { view, store } = parts.current
    const camera = store?.getState().camera
    if (!view || !(camera instanceof PerspectiveCamera)) return
    const { left, top } = event.currentTarget.getBoundingClientRect()
    const [x, y] = [event.clientX - left, event.clientY - top]
    const { row, exaggeration } = props
    const under = row?.isLinked ? boreUnder(row, fromChosen(row, exaggeration), view, x) : undefined
    if (!row || !under) {
      const inHand = drawnAt(row?.bores[row.chosen], exaggeration)
      point(placeUnder({ ...props, exaggeration: inHand }, view, camera, x, y))
      return
    }
    const away = fromChosen(row, exaggeration)[row.bores.indexOf(under)] ?? 0
    const own = { ...under, exaggeration: drawnAt(under, exaggeration) }
    // Bores of a row are drawn alike: what is asked is what the bore in hand would show there.
    point(placeUnder(own, view, camera, x - away * view.pixelsPerMm, y))
  }
  return {
    onPointerDown(event: PointerEvent<HTMLElement>) {
      pressed.current = { x: event.clientX, y: event.clientY }
    },
    onPointerMove(event: PointerEvent<HTMLElement>) {
      if (event.pointerType !== 'touch' && event.buttons === 0) pointUnder(event)
    },
    onPointerUp(event: PointerEvent<HTMLElement>) {
      const from = pressed.current
      pressed.current = undefined
      if (!from || Math.hypot(event.clientX - from.x, event.clientY - from.y) >= tapPx) return
      const other = otherUnder(props, parts, event)
      if (other === undefined) pointUnder(event)
      else props.onChoose?.(other)
    },
    onPointerLeave(event: PointerEvent<HTMLElement>) {
      if (event.pointerType !== 'touch' && event.buttons === 0) point(undefined)
    },
  }
}

/** The id of the bore pressed, where that is not the one in hand. */
function otherUnder(
  { row, exaggeration }: PointerProps,
  parts: RefObject<PictureParts>,
  event: PointerEvent<HTMLElement>,
): string | undefined {
  const { view } = parts.current
  if (!row || !view) return undefined
  const x = event.clientX - event.currentTarget.getBoundingClientRect().left
  const under = boreUnder(row, fromChosen(row, exaggeration), view, x)
  return under && under !== row.bores[row.chosen] ? under.id : undefined
}

/** Where the bores of a row stand, mm to the right of the one in hand. */
function fromChosen(row: BoreRow, exaggeration: number): readonly number[] {
  const offsets = rowOffsets(row, exaggeration)
  return offsets.map((offset) => offset - (offsets[row.chosen] ?? 0))
}
