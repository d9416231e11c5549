import { useFrame, useThree } from '@react-three/fiber'
import { useEffect, useMemo, useRef, useState } from 'react'
import { PerspectiveCamera } from 'three'
import type { LimitPair } from '../core/findings'
import type { WallGrid } from '../core/surface/wall-grid'
import { BoreCamera, type PlaceAim, type ViewName } from './bore-camera'
import { boreExtent } from './bore-extent'
import { type BoreRow, drawnAt } from './bore-row'
import type { Margins } from './camera-fit'
import { PictureView } from './picture-view'
import type { Box } from './place-labels'

/** `turn` and `zoom` count steps since the view was chosen. */
export interface PictureAim {
  readonly name: ViewName
  readonly turn: number
  readonly zoom?: number
  /** With a free view: a place to go to. A new object is gone to anew. */
  readonly at?: PlaceAim
}

export interface BoreCameraProps {
  readonly grid: WallGrid
  readonly pair: LimitPair | undefined
  readonly exaggeration: number
  /** The bores drawn side by side; undefined for one alone. */
  readonly row: BoreRow | undefined
  /** Where each bore of the row stands, mm to the right; 0 for one alone. */
  readonly offsets: readonly number[]
  readonly view: PictureAim
  readonly oneFingerTurns: boolean
  /** The element that pointers act on. */
  readonly element: HTMLElement
  readonly margins: () => Margins
  readonly corners: () => readonly Box[]
  readonly onMoved: () => void
  readonly onCamera: (camera: BoreCamera | undefined) => void
  /** After the eye has moved and before the frame is drawn. */
  readonly onFrame: (view: PictureView) => void
}

/** Before whatever else is done for a frame, since that goes by where the eye is. */
const first = -1

/** The eye: made once, sent where the view says, and moved on before each frame. Gives what it sees in it. */
export function useBoreCamera(props: BoreCameraProps): PictureView {
  const { element, grid, pair, exaggeration, row, offsets, view, oneFingerTurns } = props
  const camera = useThree((state) => state.camera)
  const invalidate = useThree((state) => state.invalidate)
  const size = useThree((state) => state.size)
  const latest = useRef(props)
  const eye = useRef<BoreCamera>(undefined)
  const shown = useRef<PictureAim>(undefined)
  const [seen] = useState(() => new PictureView())
  const extent = useMemo(() => {
    const bores: readonly Pick<BoreCameraProps, 'grid' | 'pair' | 'exaggeration'>[] = row
      ? row.bores.map((bore) => ({
          grid: bore.grid,
          pair: bore.pair,
          exaggeration: drawnAt(bore, exaggeration),
        }))
      : [{ grid, pair, exaggeration }]
    return bores.map((bore, index) => ({ points: boreExtent(bore), offsetMm: offsets[index] ?? 0 }))
  }, [grid, pair, exaggeration, row, offsets])
  latest.current = props

  useEffect(() => {
    if (!(camera instanceof PerspectiveCamera)) return
    const made = new BoreCamera(camera, element, {
      margins: () => latest.current.margins(),
      corners: () => latest.current.corners(),
      onMoved: () => latest.current.onMoved(),
      invalidate: () => invalidate(),
    })
    eye.current = made
    shown.current = undefined
    latest.current.onCamera(made)
    return () => {
      eye.current = undefined
      latest.current.onCamera(undefined)
      made.dispose()
    }
  }, [camera, element, invalidate])

  useEffect(() => eye.current?.setOneFingerTurns(oneFingerTurns, element), [oneFingerTurns, element])

  useEffect(() => {
    const { name, zoom = 0, at } = latest.current.view
    eye.current?.resize(size.width, size.height)
    if (shown.current && at) eye.current?.lookAt(at, false)
    if (shown.current && name !== 'free' && zoom === 0) eye.current?.fit(false)
  }, [size])

  useEffect(() => {
    const { name, zoom = 0, at } = latest.current.view
    eye.current?.setExtent(extent)
    if (shown.current && at) eye.current?.lookAt(at, true)
    if (shown.current && name !== 'free' && zoom === 0) eye.current?.fit(true)
  }, [extent])

  useEffect(() => {
    if (eye.current) follow(eye.current, shown.current, view)
    shown.current = view
  }, [view])

  useFrame((state, seconds) => {
    if (!eye.current || !(state.camera instanceof PerspectiveCamera)) return
    seen.isMoving = eye.current.update(seconds)
    if (seen.isMoving) state.invalidate()
    const now = latest.current
    const chosen = now.row?.chosen ?? 0
    seen.see(state.camera, state.size, eye.current.distance)
    seen.holdBore(drawnAt(now.row?.bores[chosen], now.exaggeration), now.offsets[chosen] ?? 0)
    now.onFrame(seen)
  }, first)
  return seen
}

/** A named view chosen anew is gone to; else the steps since the last view are made from where the eye is. */
function follow(eye: BoreCamera, before: PictureAim | undefined, view: PictureAim): void {
  const zoom = view.zoom ?? 0
  const chosen = view.name !== before?.name || (view.turn === 0 && zoom === 0)
  if (view.name === 'free' && !before) eye.show('front', false)
  if (view.at && view.at !== before?.at) eye.lookAt(view.at, before !== undefined)
  if (view.name !== 'free' && chosen) eye.show(view.name, before !== undefined)
  const from = chosen || !before ? { turn: 0, zoom: 0 } : before
  const turns = view.turn - from.turn
  const zooms = zoom - (from.zoom ?? 0)
  if (turns !== 0) eye.turn(turns)
  if (zooms !== 0) eye.zoom(zooms)
}
