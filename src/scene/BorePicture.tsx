import './bore-picture.css'
import { type KeyboardEvent, memo, type Ref, useId, useImperativeHandle, useMemo, useRef } from 'react'
import type { DrawnStation, LimitPair } from '../core/findings'
import type { Belt, Port, SurfaceFinding } from '../core/measured'
import type { PlacedPiston } from '../core/piston/piston-in-bore'
import type { ScanMark } from '../core/scan/scan-marks'
import { rampSpan } from '../core/surface/ramp-span'
import type { WallGrid } from '../core/surface/wall-grid'
import type { ViewName } from './bore-camera'
import { type BoreRow, drawnAt } from './bore-row'
import type { Aim } from './camera-fit'
import { marksPresent } from './marks-present'
import { MarkLegend, PairKey, ScaleCorner } from './PictureCorners'
import { moveOfKey } from './picture-keys'
import type { PictureLabels } from './picture-labels'
import type { Trouble } from './picture-stage'
import type { PointedPlace } from './pointed-place'
import type { PictureAim } from './use-bore-camera'
import { usePictureOverlay } from './use-picture-overlay'
import { usePicturePointer } from './use-picture-pointer'
import { type PictureParts, usePictureScene } from './use-picture-scene'
import type { Theme } from './wall-palette'
import type { WallWay } from './wall-way'

/** Moves of the picture for buttons beside it. */
export interface BorePictureHandle {
  show(name: Exclude<ViewName, 'free'>): void
  /** Steps of 15°, the wall in view moving on clockwise seen from the deck. */
  turn(steps: number): void
  zoom(steps: number): void
  fit(): void
  /** Where the eye is; undefined while nothing is drawn. */
  aim(): Aim | undefined
}

export interface BorePictureProps {
  readonly grid: WallGrid
  readonly ports: readonly Port[]
  readonly belts: readonly Belt[]
  readonly stations: readonly DrawnStation[]
  readonly surface: readonly SurfaceFinding[]
  /** What stands out in the scan that the wall is drawn from. */
  readonly scanMarks?: readonly ScanMark[]
  /** A piston where it stands in the bore. */
  readonly piston?: PlacedPiston
  readonly pair?: LimitPair
  readonly exaggeration: number
  /** The bores to draw side by side, this one among them; undefined for this one alone. */
  readonly row?: BoreRow
  /** Another bore of the row was pressed. */
  readonly onChoose?: (boreId: string) => void
  /** The wall is drawn on its way from one to another. */
  readonly way?: WallWay
  readonly theme: Theme
  readonly pointed?: PointedPlace
  /** Where the next reading is taken, by one of its contacts. */
  readonly next?: PointedPlace
  readonly onPoint: (place: PointedPlace | undefined) => void
  /** A new object chooses the view; steps of turn and zoom are counted from there. */
  readonly view: PictureAim
  /** The picture was moved by hand: no named view holds any longer. */
  readonly onTurned: () => void
  readonly labels: PictureLabels
  readonly onTrouble: (trouble: Trouble) => void
  /** False: one finger scrolls the page and two turn the bore. */
  readonly oneFingerTurns?: boolean
  /** After the first frame that holds this wall was drawn. */
  readonly onDrawn?: (grid: WallGrid) => void
  readonly ref?: Ref<BorePictureHandle>
}

/** A bore, or a row of them, as a 3D picture: you look into it, its far wall carries the colour. Nothing without WebGL 2. */
export const BorePicture = memo(function BorePicture(props: BorePictureProps) {
  const { grid, pair, surface, exaggeration, row, theme, labels } = props
  const inHand = row?.bores[row.chosen]
  const isDifference = inHand?.isDifference === true
  const frame = useRef<HTMLElement>(null)
  const parts = useRef<PictureParts>({})
  const keysId = useId()
  const span = useMemo(() => rampSpan(grid.middleMm, pair, grid.deviationsUm), [grid, pair])
  const present = useMemo(
    () => marksPresent(grid, pair, surface, isDifference),
    [grid, pair, surface, isDifference],
  )
  const overlay = usePictureOverlay(props, frame)
  const scene = usePictureScene(props, { frame, parts, overlay: overlay.current })
  const pointer = usePicturePointer(props, parts)
  usePictureHandle(props.ref, parts)
  if (scene.impossible) return null

  const keys = {
    tabIndex: 0,
    onKeyDown(event: KeyboardEvent) {
      const move = moveOfKey(event)
      if (!move || !parts.current.camera) return
      event.preventDefault()
      move(parts.current.camera)
      props.onTurned()
    },
  }

  return (
    <section
      ref={frame}
      className="bore-picture"
      role="application"
      aria-label={labels.picture}
      aria-describedby={keysId}
      {...keys}
      {...pointer}
    >
      <div className="picture-canvas" ref={scene.host} />
      <div className="picture-labels" ref={overlay.labels} aria-hidden="true" />
      <ScaleCorner
        exaggeration={drawnAt(inHand, exaggeration)}
        labels={labels}
        bar={overlay.bar}
        barText={overlay.barText}
      />
      <PairKey middleMm={grid.middleMm} pair={pair} span={span} theme={theme} labels={labels} />
      <MarkLegend
        present={present}
        hasNext={props.next !== undefined}
        hasScanMarks={(props.scanMarks?.length ?? 0) > 0}
        labels={labels}
      />
      <p id={keysId} hidden>
        {labels.keys}
      </p>
    </section>
  )
})

function usePictureHandle(
  ref: Ref<BorePictureHandle> | undefined,
  parts: { readonly current: PictureParts },
): void {
  useImperativeHandle(
    ref,
    () => ({
      show: (name) => parts.current.camera?.show(name, true),
      turn: (steps) => parts.current.camera?.turn(steps),
      zoom: (steps) => parts.current.camera?.zoom(steps),
      fit: () => parts.current.camera?.fit(true),
      aim: () => parts.current.camera?.aim,
    }),
    [parts],
  )
}
