import type { RootStore } from '@react-three/fiber'
import { createElement, type RefObject, useEffect, useMemo, useRef, useState } from 'react'
import type { DrawnStation, LimitPair } from '../core/findings'
import type { Port, SurfaceFinding } from '../core/measured'
import type { PlacedPiston } from '../core/piston/piston-in-bore'
import type { ScanMark } from '../core/scan/scan-marks'
import type { WallGrid } from '../core/surface/wall-grid'
import { BoreScene } from './BoreScene'
import type { BoreCamera } from './bore-camera'
import { type BoreRow, plainFrom, rowOffsets } from './bore-row'
import type { PictureLabels } from './picture-labels'
import type { PictureOverlay } from './picture-overlay'
import { openStage, type PictureStage, type Trouble } from './picture-stage'
import type { PictureView } from './picture-view'
import type { PointedPlace } from './pointed-place'
import type { PictureAim } from './use-bore-camera'
import { usePaperCopy } from './use-paper-copy'
import type { Theme } from './wall-palette'
import type { WallWay } from './wall-way'

/** What the picture's hooks hand one another outside of React's own state. */
export interface PictureParts {
  store?: RootStore | undefined
  camera?: BoreCamera | undefined
  /** What was seen in the last frame. */
  view?: PictureView | undefined
}

interface SceneProps {
  readonly grid: WallGrid
  readonly ports: readonly Port[]
  readonly stations: readonly DrawnStation[]
  readonly surface: readonly SurfaceFinding[]
  readonly scanMarks?: readonly ScanMark[]
  readonly piston?: PlacedPiston
  readonly pair?: LimitPair
  readonly exaggeration: number
  readonly row?: BoreRow
  readonly way?: WallWay
  readonly theme: Theme
  readonly pointed?: PointedPlace
  readonly next?: PointedPlace
  readonly view: PictureAim
  readonly onTurned: () => void
  readonly labels: PictureLabels
  readonly onTrouble: (trouble: Trouble) => void
  readonly oneFingerTurns?: boolean
  /** After the first frame that holds this wall was drawn. */
  readonly onDrawn?: (grid: WallGrid) => void
}

interface Surroundings {
  readonly frame: RefObject<HTMLElement | null>
  readonly parts: RefObject<PictureParts>
  readonly overlay: RefObject<PictureOverlay | undefined>
}

/** Below this width, CSS pixels, the depths on the left need all the room there is. */
const narrowPx = 480

/** The canvas and what is drawn on it. */
export function usePictureScene(props: SceneProps, { frame, parts, overlay }: Surroundings) {
  const host = useRef<HTMLDivElement>(null)
  const latest = useRef(props)
  const drawn = useRef<WallGrid>(undefined)
  const { row, exaggeration } = props
  const offsets = useMemo(() => rowOffsets(row, exaggeration), [row, exaggeration])
  const [stage, setStage] = useState<PictureStage | 'impossible'>()
  latest.current = props

  useEffect(() => {
    if (!host.current) return
    const opened = openStage(host.current, (trouble) => latest.current.onTrouble(trouble))
    setStage(opened ?? 'impossible')
    return () => opened?.dispose()
  }, [])

  const draw = (onPaper: boolean) => {
    const element = frame.current
    if (!element || !stage || stage === 'impossible') return undefined
    return stage.render(
      createElement(BoreScene, {
        grid: props.grid,
        ports: props.ports,
        stations: props.stations,
        surface: props.surface,
        scanMarks: props.scanMarks,
        piston: props.piston,
        pair: props.pair,
        exaggeration: props.exaggeration,
        row: props.row,
        offsets,
        way: props.way,
        theme: props.theme,
        onPaper,
        eager: !onPaper,
        pointed: props.pointed,
        next: props.next,
        view: props.view,
        oneFingerTurns: props.oneFingerTurns ?? true,
        element,
        margins: () => marginsOf(element, latest.current.row),
        corners: () => overlay.current?.corners ?? [],
        onMoved: () => latest.current.onTurned(),
        onCamera(camera) {
          parts.current.camera = camera
        },
        onFrame(view) {
          parts.current.view = view
          overlay.current?.follow(view, latest.current.labels)
          if (drawn.current === props.grid) return
          drawn.current = props.grid
          // This is called within the frame: the next one begins after it was drawn.
          requestAnimationFrame(() => latest.current.onDrawn?.(props.grid))
        },
      }),
    )
  }

  useEffect(() => {
    parts.current.store = draw(false)
  })
  usePaperCopy({ frame, host, draw, remeasure: () => overlay.current?.remeasure() })
  useRemeasured(host, parts, overlay)
  return { host, impossible: stage === 'impossible' }
}

/** Labels are measured again when the picture's size changes and when the fonts have come. */
function useRemeasured(
  host: RefObject<HTMLElement | null>,
  parts: RefObject<PictureParts>,
  overlay: RefObject<PictureOverlay | undefined>,
): void {
  useEffect(() => {
    if (!host.current) return
    const remeasure = () => {
      overlay.current?.remeasure()
      parts.current.store?.getState().invalidate()
    }
    const resized = new ResizeObserver(remeasure)
    resized.observe(host.current)
    document.fonts.addEventListener('loadingdone', remeasure)
    return () => {
      resized.disconnect()
      document.fonts.removeEventListener('loadingdone', remeasure)
    }
  }, [host, parts, overlay])
}

/** Room for the names of front and rear, for the depths on the left, and for what stands below a row. */
function marginsOf(element: HTMLElement, row: BoreRow | undefined) {
  if (row && row.bores.length >= plainFrom) return { top: 26, right: 16, bottom: 48, left: 16 }
  const left = element.clientWidth < narrowPx ? 56 : 48
  return { top: 26, right: 16, bottom: row ? 48 : 28, left }
}
