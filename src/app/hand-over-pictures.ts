import { drawBoreOnPaper, legendOf, whitePaper } from './bore-on-paper'
import type { ShownWall } from './hand-over-bores'
import { setType } from './send-hand'
import { drawLegend, drawScale, legendHeight, markText, scaleHeight } from './send-legend'

/** A picture that a page holds in itself. */
export interface HeldPicture {
  readonly address: string
  readonly width: number
  readonly height: number
}

const size = { width: 640, height: 480 }
const legendWidth = 220
/** Device pixels that all pictures of a file may have together, and for one unit of the layout at least and at most. */
const pixelsOfAll = 1.6e6
const ratios = { least: 1, most: 2, legend: 1.5 }
const room = 12

/** The wall as it stands, one of so many, with its labels and its scale; undefined without WebGL 2. */
export async function stillOf(wall: ShownWall, ofAll: number): Promise<HeldPicture | undefined> {
  const ratio = ratioFor(ofAll)
  const paper = whitePaper(size, ratio)
  if (!paper) return undefined
  const drawn = await drawBoreOnPaper(paper.pen, { x: 0, y: 0, ...size }, ratio, wall, {
    corners: [{ x: 0, y: 0, width: 150, height: scaleHeight + room }],
  })
  if (!drawn) return undefined
  setType(paper.pen, 13)
  paper.pen.textBaseline = 'middle'
  drawScale(paper.pen, room, room / 2, wall.exaggeration, drawn.pixelsPerMm)
  return heldPicture(paper.canvas, size)
}

/** What colours and marks of a wall mean, and the same in words. */
export function heldLegend(
  wall: ShownWall,
): { readonly picture: HeldPicture; readonly text: string } | undefined {
  const legend = legendOf(wall)
  const measured = whitePaper({ width: legendWidth, height: 1 }, ratios.legend)
  const height = measured ? Math.ceil(legendHeight(measured.pen, legend, legendWidth, false)) : 0
  const paper = whitePaper({ width: legendWidth, height }, ratios.legend)
  if (!paper) return undefined
  drawLegend(paper.pen, { x: 0, y: 0, width: legendWidth, height }, legend, undefined)
  const text = legend.marks.map((mark) => markText(mark, legend.isoStepUm)).join('; ')
  return { picture: heldPicture(paper.canvas, { width: legendWidth, height }), text }
}

function ratioFor(pictures: number): number {
  const fitting = Math.sqrt(pixelsOfAll / (pictures * size.width * size.height))
  return Math.min(ratios.most, Math.max(ratios.least, fitting))
}

/** A browser that writes no WebP gives a PNG: larger, and as good. */
function heldPicture(
  canvas: HTMLCanvasElement,
  { width, height }: { readonly width: number; readonly height: number },
): HeldPicture {
  return { address: canvas.toDataURL('image/webp', 0.8), width, height }
}
