import { type RefObject, useEffect, useMemo, useRef } from 'react'
import type { DrawnStation, LimitPair } from '../core/findings'
import type { SurfaceFinding } from '../core/measured'
import type { WallGrid } from '../core/surface/wall-grid'
import { boreLabels, pointedLabel } from './bore-labels'
import { type BoreRow, plainFrom, rowOffsets } from './bore-row'
import { isoStepOf } from './iso-step-of'
import type { PictureLabels } from './picture-labels'
import { PictureOverlay } from './picture-overlay'
import type { PointedPlace } from './pointed-place'
import { rowLabels } from './row-labels'
import type { LabelKind } from './stand-labels'

interface OverlayProps {
  readonly grid: WallGrid
  readonly pair?: LimitPair
  readonly stations: readonly DrawnStation[]
  readonly surface: readonly SurfaceFinding[]
  readonly pointed?: PointedPlace
  readonly exaggeration: number
  readonly row?: BoreRow
  readonly labels: PictureLabels
}

/** Labels that stand on the wall itself: where many bores are drawn there is no room beside them. */
const onWall: ReadonlySet<LabelKind> = new Set(['sign', 'iso', 'surface'])

/** The HTML over the canvas, its labels kept up with the props. */
export function usePictureOverlay(props: OverlayProps, frame: RefObject<HTMLElement | null>) {
  const { grid, pair, stations, surface, pointed, exaggeration, row, labels } = props
  const labelHost = useRef<HTMLDivElement>(null)
  const bar = useRef<HTMLDivElement>(null)
  const barText = useRef<HTMLParagraphElement>(null)
  const current = useRef<PictureOverlay>(undefined)
  const bore = useMemo(
    () => ({ grid, pair, stations, surface, isoStepUm: isoStepOf(grid), labels }),
    [grid, pair, stations, surface, labels],
  )
  const still = useMemo(() => {
    const own = boreLabels(bore)
    if (!row) return own
    const offsets = rowOffsets(row, exaggeration)
    const inHand = offsets[row.chosen] ?? 0
    const fromChosen = offsets.map((offset) => offset - inHand)
    const isFew = row.bores.length < plainFrom
    const ofChosen = own.filter(({ kind }) => (isFew ? kind !== 'limit' : onWall.has(kind)))
    return [...rowLabels(row, fromChosen, exaggeration), ...ofChosen]
  }, [bore, row, exaggeration])

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
