import { useFrame, useThree } from '@react-three/fiber'
import { useEffect, useState } from 'react'
import type { LimitPair } from '../core/findings'
import type { Port } from '../core/measured'
import { rampSpan } from '../core/surface/ramp-span'
import type { WallGrid } from '../core/surface/wall-grid'
import { BorePaint } from './bore-paint'
import type { PointedPlace } from './pointed-place'
import { setPorts } from './shared-uniforms'
import { type Theme, wallPalette } from './wall-palette'

export interface PaintedBore {
  readonly grid: WallGrid
  readonly ports: readonly Port[]
  readonly pair: LimitPair | undefined
  readonly exaggeration: number
  /** Undefined: no iso-lines. */
  readonly isoStepUm: number | undefined
  readonly theme: Theme
  readonly pointed: PointedPlace | undefined
}

/** So far apart that no wall has two. */
const noIsoLinesUm = 1e9

/** Materials, textures and uniforms of a bore, kept up with it. A new exaggeration sets one uniform. */
export function useBorePaint(bore: PaintedBore): BorePaint {
  const { grid, ports, pair, exaggeration, isoStepUm = noIsoLinesUm, theme, pointed } = bore
  const invalidate = useThree((state) => state.invalidate)
  const [paint] = useState(() => new BorePaint())
  useFreedWhenLost(paint)
  useEffect(() => () => paint.dispose(), [paint])
  useEffect(() => paint.textures.write(grid), [paint, grid])
  useEffect(() => setPorts(paint.shared, ports), [paint, ports])
  useEffect(() => {
    paint.setLook({
      middleMm: grid.middleMm,
      pair,
      span: rampSpan(grid.middleMm, pair, grid.deviationsUm),
      isoStepUm,
      palette: wallPalette(theme),
    })
  }, [paint, grid, pair, isoStepUm, theme])
  useEffect(() => {
    paint.shared.exaggeration.value = exaggeration
  }, [paint, exaggeration])
  useEffect(() => paint.wall.setPointed(pointed?.depthMm), [paint, pointed])
  useEffect(() => invalidate())
  useFrame(({ size, viewport }) => {
    paint.shared.viewport.value.set(size.width, size.height)
    paint.shared.pixelRatio.value = viewport.dpr
  })
  return paint
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
