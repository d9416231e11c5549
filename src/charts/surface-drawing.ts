import type { SurfaceFinding } from '../core/measured'
import { surfaceTitle } from '../words/surface'
import type { MapScale } from './map-scale'
import { surfaceLabelBoxes } from './surface-labels'
import { surfaceOutline } from './surface-outline'

/** Colours and family that surface findings are drawn in on paper. */
export interface SurfaceHand {
  readonly fontFamily: string
  readonly ink: string
  readonly paper: string
}

const typePx = 13
const line = 16

/** Draws surface findings on a canvas as double outlines with their labels, as the page's own map shows them. */
export function drawSurface(
  pen: CanvasRenderingContext2D,
  scale: MapScale,
  surface: readonly SurfaceFinding[],
  { fontFamily, ink, paper }: SurfaceHand,
): void {
  pen.save()
  pen.font = `600 ${typePx}px ${fontFamily}`
  pen.lineJoin = 'round'
  const marks = surface.map((finding, index) => {
    const text = surfaceTitle(index + 1, finding)
    const { path, boxes } = surfaceOutline(scale, finding)
    return { text, path, boxes, width: pen.measureText(text).width, height: line }
  })
  for (const [colour, width] of [
    [ink, 4.8],
    [paper, 2.2],
  ] as const) {
    pen.strokeStyle = colour
    pen.lineWidth = width
    for (const { path } of marks) pen.stroke(new Path2D(path))
  }
  pen.textAlign = 'left'
  pen.textBaseline = 'middle'
  pen.strokeStyle = paper
  pen.lineWidth = 3
  pen.fillStyle = ink
  for (const [index, box] of surfaceLabelBoxes(scale, marks).entries()) {
    const text = marks[index]?.text
    if (!box || text === undefined) continue
    pen.strokeText(text, box.x, box.y + box.height / 2)
    pen.fillText(text, box.x, box.y + box.height / 2)
  }
  pen.restore()
}
