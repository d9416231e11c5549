import { useFrame, useThree } from '@react-three/fiber'
import { useEffect, useRef, useState } from 'react'
import type { LimitPair } from '../core/findings'
import type { Port } from '../core/measured'
import { rampSpan } from '../core/surface/ramp-span'
import type { WallGrid } from '../core/surface/wall-grid'
import { BorePaint } from './bore-paint'
import type { PictureView } from './picture-view'
import type { PointedPlace } from './pointed-place'
import { setPorts } from './shared-uniforms'
import { type Theme, wallPalette } from './wall-palette'
import { easedShare, isUnderWay, type WallWay } from './wall-way'

export interface PaintedBore {
  readonly grid: WallGrid
  readonly ports: readonly Port[]
  readonly pair: LimitPair | undefined
  readonly exaggeration: number
  /** Undefined: no iso-lines. */
  readonly isoStepUm: number | undefined
  readonly theme: Theme
  readonly onPaper: boolean
  readonly pointed: PointedPlace | undefined
  /** The wall is the difference of two. */
  readonly isDifference: boolean
  /** The wall is drawn on its way between two surveys. */
  readonly way: WallWay | undefined
  /** How far to the right of the middle of the row it stands, mm. */
  readonly offsetMm: number
  /** What is seen in the frame that is drawn. */
  readonly seen: PictureView
}

/** The shader draws no lines where there is no step. */
const noIsoLinesUm = 0

/** Materials, textures and uniforms of a bore, kept up with it. A new exaggeration sets one uniform. */
export function useBorePaint(bore: PaintedBore): BorePaint {
  const {
    grid,
    ports,
    pair,
    exaggeration,
    isoStepUm = noIsoLinesUm,
    theme,
    onPaper,
    pointed,
    way,
    isDifference,
    offsetMm,
    seen,
  } = bore
  const invalidate = useThree((state) => state.invalidate)
  const [paint] = useState(() => new BorePaint())
  useFreedWhenLost(paint)
  useEffect(() => () => paint.dispose(), [paint])
  const [from, to] = [way?.from, way?.to]
  useEffect(() => paint.textures.write(grid, from && to && { from, to }), [paint, grid, from, to])
  useEffect(() => setPorts(paint.shared, ports), [paint, ports])
  useEffect(() => {
    paint.setLook({
      middleMm: grid.middleMm,
      pair,
      span: rampSpan(grid.middleMm, pair, grid.deviationsUm),
      isoStepUm,
      isDifference,
      palette: wallPalette(theme),
    })
  }, [paint, grid, pair, isoStepUm, isDifference, theme])
  useEffect(() => {
    paint.shared.exaggeration.value = exaggeration
  }, [paint, exaggeration])
  useEffect(() => paint.wall.setOnPaper(onPaper), [paint, onPaper])
  useEffect(() => paint.wall.setPointed(pointed?.depthMm), [paint, pointed])
  useEffect(() => invalidate())
  useFrame(({ size, viewport }) => {
    paint.shared.viewport.value.set(size.width, size.height)
    paint.shared.pixelRatio.value = viewport.dpr
    paint.shared.rowShift.value = (2 * offsetMm * seen.pixelsPerMm) / size.width
  })
  useWay(paint, way)
  return paint
}

/** Sets how far the wall is on its way; where it goes there by itself, frame by frame until it has arrived. */
function useWay(paint: BorePaint, way: WallWay | undefined): void {
  const begun = useRef<{ readonly way: WallWay; at: number | undefined }>(undefined)
  useEffect(() => {
    begun.current = way && { way, at: undefined }
    paint.shared.wallShare.value = way ? easedShare(way, 0) : 0
    paint.shared.fadesBetween.value = way?.atRandom !== true
  }, [paint, way])
  useFrame(({ clock, invalidate }) => {
    const { current } = begun
    if (!current?.way.eased) return
    current.at ??= clock.elapsedTime
    const seconds = clock.elapsedTime - current.at
    paint.shared.wallShare.value = easedShare(current.way, seconds)
    if (isUnderWay(current.way, seconds)) invalidate()
  })
}

/**
 * Lets go of what a lost context held, while it is lost: freed later it would belong to another context. It is
 * made again at the first frame after the context is back.
 */
export function useFreedWhenLost(part: { dispose(): void }): void {
  const canvas = useThree((state) => state.gl.domElement)
  useEffect(() => {
    const free = () => part.dispose()
    canvas.addEventListener('webglcontextlost', free)
    return () => canvas.removeEventListener('webglcontextlost', free)
  }, [canvas, part])
}
