import { type PointerEvent, type RefObject, useRef } from 'react'
import { PerspectiveCamera } from 'three'
import type { StationFinding } from '../core/findings'
import type { WallGrid } from '../core/surface/wall-grid'
import { type BoreRow, boreUnder, rowOffsets } from './bore-row'
import { placeUnder } from './picture-pointer'
import type { PointedPlace } from './pointed-place'
import type { PictureParts } from './use-picture-scene'

interface PointerProps {
  readonly grid: WallGrid
  readonly stations: readonly StationFinding[]
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
    point(placeUnder(props, view, camera, event.clientX - left, event.clientY - top))
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
  const offsets = rowOffsets(row, exaggeration)
  const inHand = offsets[row.chosen] ?? 0
  const x = event.clientX - event.currentTarget.getBoundingClientRect().left
  const under = boreUnder(
    row,
    offsets.map((offset) => offset - inHand),
    view,
    x,
  )
  return under && under !== row.bores[row.chosen] ? under.id : undefined
}
