import { type RefObject, useEffect, useMemo, useRef } from 'react'
import type { LimitPair, StationFinding } from '../core/findings'
import type { WallGrid } from '../core/surface/wall-grid'
import { boreLabels, pointedLabel } from './bore-labels'
import { isoStepOf } from './iso-step-of'
import type { PictureLabels } from './picture-labels'
import { PictureOverlay } from './picture-overlay'
import type { PointedPlace } from './pointed-place'

interface OverlayProps {
  readonly grid: WallGrid
  readonly pair?: LimitPair
  readonly stations: readonly StationFinding[]
  readonly pointed?: PointedPlace
  readonly labels: PictureLabels
}

/** The HTML over the canvas, its labels kept up with the props. */
export function usePictureOverlay(props: OverlayProps, frame: RefObject<HTMLElement | null>) {
  const { grid, pair, stations, pointed, labels } = props
  const labelHost = useRef<HTMLDivElement>(null)
  const bar = useRef<HTMLDivElement>(null)
  const barText = useRef<HTMLParagraphElement>(null)
  const current = useRef<PictureOverlay>(undefined)
  const bore = useMemo(
    () => ({ grid, pair, stations, isoStepUm: isoStepOf(grid), labels }),
    [grid, pair, stations, labels],
  )
  const still = useMemo(() => boreLabels(bore), [bore])

  useEffect(() => {
    if (!frame.current || !labelHost.current || !bar.current || !barText.current) return
    const overlay = new PictureOverlay({
      frame: frame.current,
      labels: labelHost.current,
      bar: bar.current,
      barText: barText.current,
    })
    current.current = overlay
    return () => {
      overlay.setLabels([])
      current.current = undefined
    }
  }, [frame])

  useEffect(() => {
    current.current?.setLabels(pointed ? [pointedLabel(bore, pointed.depthMm), ...still] : still)
  }, [bore, still, pointed])

  return { labels: labelHost, bar, barText, current }
}
