import { createRoot, type RootState } from '@react-three/fiber'
import { createElement } from 'react'
import { WebGLRenderer } from 'three'
import type { DrawnStation, LimitPair } from '../core/findings'
import type { Port, SurfaceFinding } from '../core/measured'
import type { WallGrid } from '../core/surface/wall-grid'
import type { BoreCamera } from './bore-camera'
import { boreLabels } from './bore-labels'
import type { Aim } from './camera-fit'
import { cameraStart } from './camera-start'
import { isoStepOf } from './iso-step-of'
import type { PictureLabels } from './picture-labels'
import type { PictureView } from './picture-view'
import type { Box } from './place-labels'
import { StillScene } from './StillScene'
import { drawLabels, type LabelHand } from './still-labels'
import type { PictureAim } from './use-bore-camera'

export interface StillBore {
  readonly grid: WallGrid
  readonly ports: readonly Port[]
  readonly stations: readonly DrawnStation[]
  readonly surface: readonly SurfaceFinding[]
  readonly pair: LimitPair | undefined
  readonly exaggeration: number
  /** Where the eye is; the whole bore is shown from there. */
  readonly aim: Aim | Exclude<PictureAim['name'], 'free'>
  readonly labels: PictureLabels
  readonly hand: LabelHand
  /** Boxes at the corners that nothing may be drawn under. */
  readonly corners?: readonly Box[]
}

/** Room for the names of front and rear, and for the depths on the left. */
const margins = { top: 30, right: 60, bottom: 30, left: 60 }

/**
 * Draws a bore with its labels, in the light palette, into a box of a canvas whose units are CSS pixels of
 * `pixelRatio` device pixels. Gives how many of those units a drawn mm is at the middle of the bore; undefined,
 * with nothing drawn, where there is no WebGL 2.
 */
export async function drawStillBore(
  pen: CanvasRenderingContext2D,
  box: Box,
  pixelRatio: number,
  bore: StillBore,
): Promise<{ readonly pixelsPerMm: number } | undefined> {
  const canvas = document.createElement('canvas')
  const context = canvas.getContext('webgl2', { antialias: true, alpha: true, premultipliedAlpha: true })
  if (!context) return undefined
  const root = createRoot(canvas)
  try {
    await root.configure({
      flat: true,
      frameloop: 'never',
      dpr: pixelRatio,
      size: { width: box.width, height: box.height, top: 0, left: 0 },
      camera: cameraStart,
      gl: (defaults) => new WebGLRenderer({ ...defaults, context, antialias: true, alpha: true }),
    })
    return await new Promise((resolve, reject) => {
      const shot = shotOf(canvas, bore, (view) => {
        if (context.isContextLost()) throw new Error('The graphics stopped while the picture was drawn')
        // Within the frame: the canvas is empty again once this task is over.
        pen.drawImage(canvas, box.x, box.y, box.width, box.height)
        pen.save()
        pen.translate(box.x, box.y)
        const labels = boreLabels({ ...bore, isoStepUm: isoStepOf(bore.grid) })
        drawLabels(pen, labels, view, bore.hand, bore.corners)
        pen.restore()
        resolve({ pixelsPerMm: view.pixelsPerMm })
      })
      root.render(createElement(StillScene, { ...shot, onFailed: reject }))
    })
  } finally {
    root.unmount()
  }
}

/** The props of a scene that is drawn once, with what is done in that frame. */
function shotOf(element: HTMLElement, bore: StillBore, onDrawn: (view: PictureView) => void) {
  let eye: BoreCamera | undefined
  let seen: PictureView | undefined
  return {
    grid: bore.grid,
    ports: bore.ports,
    stations: bore.stations,
    surface: bore.surface,
    pair: bore.pair,
    exaggeration: bore.exaggeration,
    row: undefined,
    offsets: [0],
    theme: 'light',
    pointed: undefined,
    view: { name: typeof bore.aim === 'string' ? bore.aim : 'front', turn: 0 },
    oneFingerTurns: true,
    element,
    margins: () => margins,
    corners: () => bore.corners ?? [],
    onMoved: () => undefined,
    onCamera(camera: BoreCamera | undefined) {
      eye = camera
    },
    onFrame(view: PictureView) {
      seen = view
    },
    onReady(state: RootState) {
      if (typeof bore.aim !== 'string') eye?.lookAlong(bore.aim)
      state.advance(0)
      if (!seen) throw new Error('drawStillBore: a frame without an eye')
      onDrawn(seen)
    },
  } as const
}
